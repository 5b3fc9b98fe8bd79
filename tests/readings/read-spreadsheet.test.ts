import { describe, expect, it } from "vitest";
import { openFile } from "@/lib/readings/open-file.ts";
import { readSpreadsheet, type Sheet } from "@/lib/readings/read-spreadsheet.ts";
import { odsFile, type SheetPlan, xlsxFile } from "@/sample-data/workbook-files.ts";
import { zipFile } from "@/sample-data/zip-file.ts";

/** The workbooks are written by hand from ECMA-376 and OASIS OpenDocument 1.3, not by the library that reads them. */
async function sheetsOf(bytes: Uint8Array): Promise<Sheet[]> {
  const read = await readSpreadsheet(bytes);
  if (!read?.ok) throw new Error(`not read: ${JSON.stringify(read)}`);
  return read.value;
}
const codesOf = async (bytes: Uint8Array) => {
  const read = await readSpreadsheet(bytes);
  return read === null ? null : read.ok ? [] : read.problems.map((p) => p.code);
};
const shots: SheetPlan = {
  name: "Readings",
  rows: [
    ["Shot", "Sample", "Pb (ppm)", "±2σ"],
    [1, "mug", 12.5, 1.2],
    [2, "mug", "<9,1", ""],
  ],
};

describe("a sheet is taken as it is shown", () => {
  it("XLSX: numbers by their format, text letter by letter", async () => {
    const [sheet] = await sheetsOf(
      xlsxFile([
        {
          name: "A & B",
          rows: [
            ["Sample", "Pb (ppm)", "note"],
            ["mug <1>", { xml: '<c r="REF" s="3"><v>12.5</v></c>' }, "<9,1"],
            ["mug 2", { xml: '<c r="REF" s="4"><v>1234.5</v></c>' }, "ND"],
            ["mug 3", { xml: '<c r="REF" t="e"><v>#DIV/0!</v></c>' }, ""],
          ],
        },
      ]),
    );
    expect(sheet).toMatchObject({ name: "A & B", hidden: false, lines: [1, 2, 3, 4] });
    expect(sheet!.records.slice(1)).toEqual([
      ["mug <1>", "12.50", "<9,1"],
      ["mug 2", "1,234.50", "ND"],
      ["mug 3", "#DIV/0!", ""],
    ]);
  });
  // Day numbers by ECMA-376 18.17.4.1: 46298 is 3 October 2026 from 1900; the same day is 44836 from 1904.
  it.each([
    [false, 46298.5],
    [true, 44836.5],
  ])("XLSX dates, counted from 1904: %s", async (from1904, day) => {
    const cell = (style: number) => ({ xml: `<c r="REF" s="${style}"><v>${day}</v></c>` });
    const [sheet] = await sheetsOf(
      xlsxFile(
        [
          {
            name: "x",
            rows: [
              ["by region", "by format"],
              [cell(1), cell(2)],
            ],
          },
        ],
        { from1904 },
      ),
    );
    expect(sheet!.records[1]).toEqual(["2026-10-03 12:00:00", "03/10/2026 12:00"]);
    expect(sheet!.notes).toEqual([{ what: "dates-by-region", count: 1 }]);
  });
  it("ODS: the text its writer was shown, dates and decimal commas too", async () => {
    const shown = (kind: string, text: string) => ({
      xml: `<table:table-cell office:value-type="${kind}"><text:p>${text}</text:p></table:table-cell>`,
    });
    const [sheet] = await sheetsOf(
      odsFile([
        {
          name: "Messung",
          rows: [
            ["Zeit", "Probe", "Pb (ppm)"],
            [
              shown('date" office:date-value="2026-10-03T14:05:00', "03.10.26 14:05"),
              "Tasse",
              shown('float" office:value="12.5', "12,50"),
            ],
          ],
        },
      ]),
    );
    expect(sheet!.records[1]).toEqual(["03.10.26 14:05", "Tasse", "12,50"]);
  });
  it("formulas: the value last worked out; one that never was gives itself", async () => {
    const [sheet] = await sheetsOf(
      xlsxFile([
        {
          name: "x",
          rows: [
            ["a", "b"],
            [{ xml: '<c r="REF"><f>1+2</f><v>3</v></c>' }, { xml: '<c r="REF"><f>SUM(A1:A9)</f></c>' }],
          ],
        },
      ]),
    );
    expect(sheet!.records[1]).toEqual(["3", "=SUM(A1:A9)"]);
    expect(sheet!.notes).toEqual([{ what: "formulas", count: 2 }]);
  });
  it("merged downwards: a text belongs to each row, a number to one; across: to its first column", async () => {
    const [sheet] = await sheetsOf(
      xlsxFile([
        {
          name: "x",
          rows: [
            ["Sample", "Pb", "Cd"],
            ["mug", 12, "note"],
            ["", "", 4],
            ["", 14, 5],
          ],
          merges: ["A2:A4", "B2:B3", "C1:D1"],
        },
      ]),
    );
    expect(sheet!.records).toEqual([
      ["Sample", "Pb", "Cd"],
      ["mug", "12", "note"],
      ["mug", "", "4"],
      ["mug", "14", "5"],
    ]);
  });
  it("hidden rows and sheets are read, and told", async () => {
    const sheets = await sheetsOf(
      xlsxFile([
        { ...shots, hiddenRows: [3] },
        { ...shots, name: "Old", hidden: true },
      ]),
    );
    expect(sheets.map(({ name, hidden, notes }) => ({ name, hidden, notes }))).toEqual([
      { name: "Readings", hidden: false, notes: [{ what: "hidden-rows", count: 1 }] },
      { name: "Old", hidden: true, notes: [] },
    ]);
    const [ods] = await sheetsOf(odsFile([{ ...shots, hiddenRows: [2] }]));
    expect(ods!.notes).toEqual([{ what: "hidden-rows", count: 1 }]);
    expect(ods!.records).toHaveLength(3);
  });
});

describe("a file's table", () => {
  it("is the sheet asked for, else the first with a table that is not hidden", async () => {
    const bytes = xlsxFile([
      { ...shots, name: "Hidden", hidden: true },
      { name: "Cover", rows: [["Measured by a volunteer"]] },
      shots,
      { ...shots, name: "More" },
    ]);
    const named = async (sheet?: string) => {
      const opened = await openFile(bytes, sheet === undefined ? {} : { sheet });
      return opened.ok ? opened.value.sheet : opened.problems;
    };
    expect(await named()).toBe("Readings");
    expect(await named("More")).toBe("More");
    expect(await named("None")).toMatchObject([
      { code: "sheet-unknown", found: "None", allowed: "Hidden, Cover, Readings, More" },
    ]);
    const opened = await openFile(bytes);
    expect(opened.ok && opened.value.sheets.map((s) => [s.name, s.readable, s.rows])).toEqual([
      ["Hidden", true, 3],
      ["Cover", false, 1],
      ["Readings", true, 3],
      ["More", true, 3],
    ]);
  });
  it("numbers its rows as the sheet does, blank ones above included", async () => {
    const opened = await openFile(xlsxFile([{ name: "x", rows: [[""], ["Made with care"], [""], ...shots.rows] }]));
    expect(opened.ok && opened.value.table.rows.map((r) => `${r.line} ${r.kind}`)).toEqual([
      "1 blank",
      "2 preamble",
      "3 blank",
      "4 header",
      "5 data",
      "6 data",
    ]);
  });
  it("the same table from CSV, XLSX and ODS", async () => {
    const csv = new TextEncoder().encode("Shot;Sample;Pb (ppm);±2σ\n1;mug;12.5;1.2\n2;mug;<9,1;\n");
    const tables = await Promise.all([csv, xlsxFile([shots]), odsFile([shots])].map((bytes) => openFile(bytes)));
    const [first, ...others] = tables.map((t) => t.ok && { header: t.value.table.header, rows: t.value.table.rows });
    expect(first).toBeTruthy();
    for (const other of others) expect(other).toEqual(first);
  });
});

describe("refused, saying why", () => {
  const megabyte = "0".repeat(1_000_000);
  it.each<[string, Uint8Array, string]>([
    ["cut off in the middle", xlsxFile([shots]).subarray(0, 900), "spreadsheet-broken"],
    [
      "XML that ends too soon",
      zipFile([{ name: "xl/workbook.xml", data: "<workbook><sheets>" }]),
      "spreadsheet-broken",
    ],
    ["a password on the zip", zipFile([{ name: "xl/workbook.xml", data: "x", locked: true }]), "spreadsheet-encrypted"],
    [
      "a password on the OpenDocument parts",
      odsFile([shots], { manifest: '<manifest:encryption-data manifest:checksum="x"/>' }),
      "spreadsheet-encrypted",
    ],
    [
      "a bomb that says so",
      xlsxFile([shots], { more: Array.from({ length: 101 }, (_, n) => ({ name: `xl/media/${n}`, data: megabyte })) }),
      "spreadsheet-unpacks-too-large",
    ],
    [
      "a bomb that says it is small",
      xlsxFile([shots], { more: [{ name: "xl/media/a", data: megabyte, claim: 10 }] }),
      "spreadsheet-broken",
    ],
    [
      "one cell repeated over a sheet",
      odsFile([
        {
          name: "x",
          rows: [
            [
              "a",
              {
                xml: '<table:table-cell table:number-columns-repeated="16384" office:value-type="string"><text:p>b</text:p></table:table-cell>',
              },
            ],
            ...Array.from({ length: 200 }, () => [
              {
                xml: '<table:table-cell table:number-columns-repeated="16384" office:value-type="string"><text:p>b</text:p></table:table-cell>',
              },
            ]),
          ],
        },
      ]),
      "spreadsheet-too-many-cells",
    ],
    [
      "a cell at the far corner of the sheet",
      xlsxFile([{ name: "x", rows: [["a", "b"], [{ xml: '<c r="XFD1048576"><v>1</v></c>' }]] }]),
      "spreadsheet-too-many-cells",
    ],
  ])("%s", async (_, bytes, code) => {
    expect(await codesOf(bytes)).toEqual([code]);
  });
  it("entities that multiply are not followed", async () => {
    const lol = '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">]>';
    const read = await readSpreadsheet(
      xlsxFile([
        {
          name: "x",
          rows: [
            ["Sample", "Pb"],
            [{ xml: `<c r="REF" t="inlineStr"><is><t>&b;</t></is></c>${lol}` }, 3],
          ],
        },
      ]),
    );
    expect(JSON.stringify(read).length).toBeLessThan(2000);
  });
  it("an older workbook with a password, and what is no workbook at all", async () => {
    const older = Buffer.concat([
      Buffer.from([0xd0, 0xcf, 0x11, 0xe0]),
      Buffer.alloc(600),
      Buffer.from("EncryptedPackage", "utf16le"),
    ]);
    expect(await codesOf(older)).toEqual(["spreadsheet-encrypted"]);
    expect(await codesOf(Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0, 0]))).toBe(null);
    expect(await codesOf(zipFile([{ name: "word/document.xml", data: "x" }]))).toBe(null);
    expect(await codesOf(Buffer.from("Sample,Pb\n"))).toBe(null);
  });
});
