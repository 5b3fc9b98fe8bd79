import { describe, expect, it } from "vitest";
import { openFile } from "@/lib/readings/open-file.ts";
import { workbookKind } from "@/lib/readings/open-spreadsheet.ts";
import { readSpreadsheet } from "@/lib/readings/read-spreadsheet.ts";
import { unpackEntry, type ZipEntry, zipEntries } from "@/lib/readings/zip-entries.ts";
import { type Cell, odsFile, type SheetPlan, xlsxFile } from "@/sample-data/workbook-files.ts";
import { zipFile } from "@/sample-data/zip-file.ts";

/** All files here are invented, and written by hand from the open standards. */
const codes = async (bytes: Uint8Array) => {
  const read = await readSpreadsheet(bytes);
  return read === null ? null : read.ok ? [] : read.problems.map((p) => p.code);
};
const recordsOf = async (bytes: Uint8Array) => {
  const read = await readSpreadsheet(bytes);
  if (!read?.ok) throw new Error(`not read: ${JSON.stringify(read)}`);
  return read.value.map((sheet) => sheet.records);
};
const xml = (text: string): Cell => ({ xml: text });
const shots: SheetPlan = {
  name: "Readings",
  rows: [
    ["Sample", "Pb (ppm)"],
    ["mug", 12.5],
  ],
};

describe("a zip's directory", () => {
  const whole = zipFile([
    { name: "a", data: "hello hello hello" },
    { name: "b", data: "there", stored: true },
  ]);
  /** The same bytes with some of them changed; the directory begins where the end record says. */
  const changed = (change: (view: DataView, directory: number) => void): Uint8Array => {
    const copy = Uint8Array.from(whole);
    const view = new DataView(copy.buffer);
    change(view, view.getUint32(copy.length - 6, true));
    return copy;
  };
  it("lists what is in it", () => {
    expect(zipEntries(whole)!.map(({ name, size, method }) => [name, size, method])).toEqual([
      ["a", 17, 8],
      ["b", 5, 0],
    ]);
  });
  it("leaves a size to the directory where the entry says so, and only then", () => {
    const streamed = changed((view) => {
      view.setUint16(6, 8, true);
      view.setUint32(22, 0, true);
    });
    expect(zipEntries(streamed)!.map((entry) => entry.size)).toEqual([17, 5]);
    expect(zipEntries(changed((view) => view.setUint32(22, 0, true)))).toBeNull();
    const both = changed((view) => {
      view.setUint16(6, 8, true);
      view.setUint32(22, 16, true);
    });
    expect(zipEntries(both)).toBeNull();
  });
  it.each<[string, (view: DataView, directory: number) => void]>([
    ["an entry of the directory without its mark", (view, directory) => view.setUint32(directory, 0, true)],
    ["a directory that begins beyond the end", (view) => view.setUint32(view.byteLength - 6, 1e9, true)],
    ["an entry that begins beyond the end", (view, directory) => view.setUint32(directory + 42, 1e9, true)],
    ["an entry without its own mark", (view) => view.setUint32(0, 0, true)],
    ["packed bytes beyond the end", (view, directory) => view.setUint32(directory + 20, 1e9, true)],
  ])("is none with %s", (_, change) => {
    expect(zipEntries(changed(change))).toBeNull();
  });
  it("is none of bytes without an end record", () => {
    expect(zipEntries(new Uint8Array(100_000))).toBeNull();
    expect(zipEntries(new Uint8Array(3))).toBeNull();
  });

  describe("and its entries", () => {
    const [packed, stored] = zipEntries(whole) as [ZipEntry, ZipEntry];
    const state = async (entry: ZipEntry, limit = 1000) => (await unpackEntry(whole, entry, limit)).state;
    it("come out as they went in", async () => {
      const out = await unpackEntry(whole, packed, 1000);
      expect(out.state === "ok" && new TextDecoder().decode(out.bytes)).toBe("hello hello hello");
      expect(await state(stored)).toBe("ok");
    });
    it("are refused above the limit, by what they say and by what they are", async () => {
      expect(await state(packed, 16)).toBe("too-large");
      expect(await state({ ...packed, size: 4 }, 16)).toBe("too-large");
      expect(await state({ ...packed, size: 4 })).toBe("broken");
    });
    it("are broken where the size, the packing or the bytes are not as told", async () => {
      expect(await state({ ...packed, size: 18 })).toBe("broken");
      expect(await state({ ...packed, method: 12 })).toBe("broken");
      expect(await state({ ...stored, size: 4 })).toBe("broken");
      expect(await state({ ...packed, start: packed.start + 1 })).toBe("broken");
    });
  });
});

describe("what bytes are a workbook", () => {
  it("a broken zip that speaks of no sheet is none", () => {
    expect(workbookKind(Buffer.from("PK\u0003\u0004 holiday pictures"))).toBeNull();
    expect(workbookKind(Buffer.from("PK\u0003\u0004 xl/worksheets"))).toBe("broken");
  });
  it("letters that begin like the mark of a password are not it", () => {
    const older = (text: string) =>
      Buffer.concat([Buffer.from([0xd0, 0xcf, 0x11, 0xe0]), Buffer.from(text, "utf16le")]);
    expect(workbookKind(older("Empty, EncryptedPackage"))).toBe("encrypted");
    expect(workbookKind(older("Empty, Encrypted"))).toBeNull();
  });
  it("a part that says it is small and fills what is left is a bomb", async () => {
    const media = Array.from({ length: 99 }, (_, n) => ({ name: `xl/media/${n}`, data: "0".repeat(1_000_000) }));
    const bytes = xlsxFile([shots], {
      more: [
        ...media,
        { name: "xl/media/99", data: "0".repeat(990_000) },
        { name: "xl/media/100", data: "0".repeat(1_000_000), claim: 10 },
      ],
    });
    expect(await codes(bytes)).toEqual(["spreadsheet-unpacks-too-large"]);
  });
  it("many rows hidden at once, as a sheet ends, are not told as hidden rows", async () => {
    const hidden = (count: number) =>
      odsFile([
        {
          ...shots,
          rows: [
            ...shots.rows,
            [
              xml(
                `</table:table-row><table:table-row table:visibility="collapse" table:number-rows-repeated="${count}"><table:table-cell/>`,
              ),
            ],
          ],
        },
      ]);
    const notes = async (bytes: Uint8Array) => {
      const read = await readSpreadsheet(bytes);
      return read?.ok ? read.value[0]!.notes : read;
    };
    expect(await notes(hidden(3))).toEqual([{ what: "hidden-rows", count: 3 }]);
    expect(await notes(hidden(1_000_000))).toEqual([]);
  });
});

describe("cells of other kinds", () => {
  it("a day by region has no time of day; a cell with a format alone is blank", async () => {
    const [records] = await recordsOf(
      xlsxFile([
        { name: "x", rows: [["Date"], [xml('<c r="REF" s="1"><v>46298</v></c>')], [xml('<c r="REF" s="1"/>')]] },
      ]),
    );
    expect(records).toEqual([["Date"], ["2026-10-03"]]);
  });
  it("a day of an OpenDocument cell that brings no text is written as a day", async () => {
    const dated = (value: string) =>
      xml(`<table:table-cell office:value-type="date" office:date-value="${value}"></table:table-cell>`);
    const [records] = await recordsOf(odsFile([{ name: "x", rows: [["Date"], [dated("2026-10-03")]] }]));
    expect(records![1]![0]).toMatch(/^2026-10-03/);
  });
  it("rows between that hold nothing are blank", async () => {
    const [records] = await recordsOf(
      xlsxFile([{ name: "x", rows: [["a", "b"], [xml('<c r="REF" s="3"/>')], ["c", "d"]] }]),
    );
    expect(records).toEqual([
      ["a", "b"],
      ["", ""],
      ["c", "d"],
    ]);
  });
  it("a text merged over rows fills only rows that hold something, and no cell that has its own text", async () => {
    const [records] = await recordsOf(
      xlsxFile([
        {
          name: "x",
          rows: [["a", "b", "c"], ["1", "", "mug"], ["2"], [""], ["3", "", "own"]],
          merges: ["C2:C5", "B2:B3", "A9:A12"],
        },
      ]),
    );
    expect(records).toEqual([
      ["a", "b", "c"],
      ["1", "", "mug"],
      ["2", "", "mug"],
      ["", "", ""],
      ["3", "", "own"],
    ]);
  });
});

describe("parts of a workbook that are no table", () => {
  /** The workbook with one part changed, or left out where the change gives nothing. */
  async function altered(bytes: Uint8Array, change: (name: string, text: string) => string | null) {
    const parts = [];
    for (const entry of zipEntries(bytes)!) {
      const part = await unpackEntry(bytes, entry, 1e8);
      const data = part.state === "ok" ? change(entry.name, new TextDecoder().decode(part.bytes)) : null;
      if (data !== null) parts.push({ name: entry.name, data });
    }
    return zipFile(parts);
  }
  const two = xlsxFile([shots, { name: "Other", rows: [["x"]] }]);
  it("a chart on a sheet of its own is a blank sheet", async () => {
    const bytes = await altered(two, (name, text) =>
      name.endsWith("sheet2.xml")
        ? '<chartsheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetViews/></chartsheet>'
        : text.replace('/worksheet" Target="worksheets/sheet2.xml"', '/chartsheet" Target="worksheets/sheet2.xml"'),
    );
    expect(await recordsOf(bytes)).toEqual([
      [
        ["Sample", "Pb (ppm)"],
        ["mug", "12.5"],
      ],
      [],
    ]);
  });
  it("a sheet that is listed and not there is not left out without a word", async () => {
    expect(await codes(await altered(two, (name, text) => (name.endsWith("sheet2.xml") ? null : text)))).toEqual([
      "spreadsheet-broken",
    ]);
  });
  it("a workbook of no sheets is blank", async () => {
    const none = await openFile(xlsxFile([]));
    expect(none.ok ? "" : none.problems[0]!.code).toBe("file-blank");
  });
  it("OpenDocument cells that bring no text give their values", async () => {
    const bare = (kind: string) => xml(`<table:table-cell office:value-type="${kind}"></table:table-cell>`);
    const [records] = await recordsOf(
      odsFile([
        {
          name: "x",
          rows: [
            [bare('float" office:value="12.5'), bare('boolean" office:boolean-value="true'), bare("string"), "end"],
          ],
        },
      ]),
    );
    expect(records).toEqual([["12.5", "true", "", "end"]]);
  });
});

describe("workbooks that are too much", () => {
  it("sheets that are small enough each, and too many cells together", async () => {
    const far: SheetPlan = { name: "x", rows: [["a", "b"], [xml('<c r="BZZ900"><v>1</v></c>')]] };
    expect(await codes(xlsxFile([far]))).toEqual([]);
    expect(await codes(xlsxFile([far, { ...far, name: "y" }]))).toEqual(["spreadsheet-too-many-cells"]);
  }, 60_000);
  it("one long text that many rows share", async () => {
    const long = "mug ".repeat(8_000);
    const rows: Cell[][] = [["Sample", "Pb (ppm)"], [long, 1], ...Array.from({ length: 2_000 }, () => ["", 1])];
    const bytes = xlsxFile([{ name: "x", rows, merges: ["A2:A2002"] }]);
    expect(await codes(bytes)).toEqual(["spreadsheet-broken"]);
  }, 60_000);
});

describe("which sheet is taken", () => {
  const cover: SheetPlan = { name: "Cover", rows: [["Measured by a volunteer"]] };
  const blank: SheetPlan = { name: "Blank", rows: [] };
  const opened = async (sheets: SheetPlan[], sheet?: string) => {
    const file = await openFile(xlsxFile(sheets), sheet === undefined ? {} : { sheet });
    return file.ok ? file.value.sheet : file.problems.map((p) => p.code);
  };
  it("a hidden one where no other holds a table", async () => {
    expect(await opened([cover, { ...shots, hidden: true }])).toBe("Readings");
  });
  it("where none holds a table, the first that is shown says why", async () => {
    expect(await opened([{ ...blank, hidden: true }, cover])).toEqual(["header-not-found"]);
    expect(await opened([{ ...cover, hidden: true }])).toEqual(["header-not-found"]);
    expect(await opened([blank])).toEqual(["file-blank"]);
    expect(await opened([shots, cover], "Cover")).toEqual(["header-not-found"]);
  });
});

describe("a text of one column", () => {
  const text = (lines: string) => new TextEncoder().encode(lines);
  it("is read where the caller asks for it", async () => {
    const names = text("whatever\nmug\n12\n");
    const plain = await openFile(names);
    expect(plain.ok ? "" : plain.problems[0]!.code).toBe("header-not-found");
    const single = await openFile(names, { oneColumn: true });
    expect(single.ok && single.value.table.columns).toEqual(["whatever"]);
  });
  it("is refused with the first reason where it is none either", async () => {
    const none = await openFile(text("12\n13\n"), { oneColumn: true });
    expect(none.ok ? "" : none.problems[0]!.code).toBe("header-not-found");
  });
});
