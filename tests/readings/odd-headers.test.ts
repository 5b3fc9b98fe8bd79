import { describe, expect, it } from "vitest";
import { usesOf } from "@/lib/readings/column-uses.ts";
import { markEvidence } from "@/lib/readings/decimal-evidence.ts";
import { decodeBytes } from "@/lib/readings/decode-bytes.ts";
import { nameOfBinary } from "@/lib/readings/file-signatures.ts";
import { findDelimiter } from "@/lib/readings/find-delimiter.ts";
import { localMoment } from "@/lib/readings/local-moment.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { readCell } from "@/lib/readings/read-cell.ts";
import { readHeaderCell } from "@/lib/readings/read-header-cell.ts";
import { orderEvidence, readClock, readMoment } from "@/lib/readings/read-moment.ts";
import { readTable } from "@/lib/readings/read-table.ts";
import { findUnit } from "@/lib/readings/unit-words.ts";
import { must } from "./read-text.ts";

const proposed = (text: string) => proposeMapping(must(readTable(text)));

describe("what a time column holds is told by its cells", () => {
  const roles = (header: string, cell: string) => proposed(`${header},Sample,Pb (ppm)\n${cell},mug,12\n`).mapping.roles;
  it.each([
    ["days alone under Time", "Time", "2026-05-03", "date"],
    ["days alone under Date/Time", "Date/Time", "2026-05-03", "date"],
    ["both under Time", "Time", "2026-05-03 10:00", "dateTime"],
    ["a time of day with its word", "Time", "9:05 Uhr", "time"],
    ["a time of day with its zone", "Time", "10:05:30 GMT", "time"],
    ["a day with the month's name", "Time", "3 May 2026 10:05", "dateTime"],
  ] as const)("%s", (_, header, cell, role) => {
    expect(roles(header, cell)).toMatchObject({ date: null, time: null, dateTime: null, [role]: header });
  });
});

describe("columns that belong to a figure", () => {
  it("one error to a value: the second is not used", () => {
    const { columns, mapping } = proposed("Sample,Pb (ppm),Pb error,Pb error\nmug,12,3,4\n");
    expect(mapping.elements.map((e) => e.error)).toEqual(["Pb error"]);
    expect(columns.filter((c) => !c.used).map((c) => c.column)).toEqual(["Pb error (2)"]);
  });
  it.each([
    ["Pb error (ppm)", "ppm", null],
    ["Pb error (mg/cm²)", "mg/cm²", "coating-areal"],
  ])("the unit of the value from %s", (header, unit, quantity) => {
    const [figure] = proposed(`Sample,Pb,${header}\nmug,12,3\n`).mapping.elements;
    expect(figure).toMatchObject({ value: "Pb", error: header, unit, unitText: unit, quantity });
  });
  it("an error that names its element may stand before the value", () => {
    expect(proposed("Sample,Pb error,Pb (ppm)\nmug,3,12\n").mapping.elements).toMatchObject([
      { value: "Pb (ppm)", error: "Pb error" },
    ]);
  });
  it("the nearest value before it, of several", () => {
    const { mapping } = proposed("Sample,Pb (ppm),Pb (mg/cm²),Pb error\nmug,12,3,1\n");
    expect(mapping.elements.map((e) => [e.value, e.error])).toEqual([
      ["Pb (ppm)", null],
      ["Pb (mg/cm²)", "Pb error"],
    ]);
  });
  it("the nearest before it rather than one behind it", () => {
    const { mapping } = proposed("Sample,Pb (mg/cm²),Pb error,Pb (ppm)\nmug,3,1,12\n");
    expect(mapping.elements.map((e) => [e.value, e.error])).toEqual([
      ["Pb (mg/cm²)", "Pb error"],
      ["Pb (ppm)", null],
    ]);
  });
  it("two columns of one element and kind: the first; its own before its oxide's", () => {
    const twice = proposed("Sample,Pb (ppm),Lead (ppm)\nmug,12,13\n");
    expect(twice.mapping.elements.map((e) => e.value)).toEqual(["Pb (ppm)"]);
    expect(twice.notices).toEqual([{ code: "second-column-of-element", column: "Lead (ppm)" }]);
    const oxide = proposed("Sample,PbO (ppm),Pb (ppm)\nmug,12,13\n");
    expect(oxide.mapping.elements.map((e) => e.value)).toEqual(["Pb (ppm)"]);
  });
  it.each([
    ["12 ppm", "ppm", null],
    ["12 mg/cm²", "mg/cm²", "coating-areal"],
  ])("the unit from cells that all carry it: %s", (cell, unit, quantity) => {
    expect(proposed(`Sample,Pb\nmug,${cell}\nbib,ND\n`).mapping.elements[0]).toMatchObject({ unit, quantity });
  });
  it("a column Element that holds no elements makes no long table", () => {
    const { mapping } = proposed("Sample,Element,Result (ppm),Pb (ppm)\nmug,handle,12,3\nmug,lid,13,4\n");
    expect(mapping).toMatchObject({ shape: "wide", long: null });
    expect(mapping.elements.map((e) => e.value)).toEqual(["Pb (ppm)"]);
  });
  it("a long table without a unit anywhere", () => {
    const table = must(readTable("Sample,Element,Result\nmug,Pb,12\n"));
    const { mapping } = proposeMapping(table);
    expect(mapping.long).toMatchObject({ value: "Result", unit: null, unitColumn: null });
    expect(usesOf(table, mapping).map((use) => use.use)).toEqual(["sample", "element", "value"]);
  });
});

describe("a header's words", () => {
  it("a flag column by its own word", () => {
    expect(readHeaderCell("Qualifier").is).toBe("flag");
  });
  it("In is indium only where it names the column", () => {
    expect(readHeaderCell("In (ppm)")).toMatchObject({ is: "value", chemical: { symbol: "In" } });
    expect(readHeaderCell("Pb In (ppm)")).toMatchObject({ is: "value", chemical: { symbol: "Pb" } });
    expect(readHeaderCell("Pb in (ppm)")).toMatchObject({ is: "value", chemical: { symbol: "Pb" } });
  });
  it("units in capitals are units; a long s is no s", () => {
    expect(findUnit("Pb (PPM)")).toMatchObject({ word: { unit: "ppm" }, written: "PPM" });
    expect(findUnit("Pb (maſs %)")).toBeNull();
  });
});

describe("cells that say too much or too little", () => {
  const point = { decimal: "point", thousands: false } as const;
  it.each([
    ["± 3", "not-a-number"],
    ["< 5 apples", "not-a-number"],
    ["< 1.2.3", "number-ambiguous"],
    ["1.2.3 ppm", "number-ambiguous"],
    ["1 ± 2 ± 3", "not-a-number"],
    ["1x ± 2", "not-a-number"],
    ["1 ± 2x", "not-a-number"],
    ["3 ppm ± 1 %", "unit-conflict"],
  ])("%s", (cell, code) => {
    expect(readCell(cell, point)).toEqual({ is: "trouble", code });
  });
  it("a unit beside the value or beside the error is the unit of both", () => {
    const said = { is: "number", number: { text: "3" }, error: { text: "1" }, unitText: "ppm" };
    expect(readCell("3 ppm ± 1", point)).toMatchObject(said);
    expect(readCell("3 ± 1 ppm", point)).toMatchObject(said);
    expect(readCell("3 ppm ± 1 ppm", point)).toMatchObject(said);
  });
});

describe("marks of numbers", () => {
  it.each([
    ["1.2,3,4", "none", null],
    ["1,234,567", "decimal-point", ","],
    ["1.234.567", "decimal-comma", "."],
    ["1,23,4", "none", null],
  ])("%s", (digits, shows, groups) => {
    expect(markEvidence(digits)).toEqual({ shows, groups });
  });
});

describe("moments", () => {
  it.each(["noon", "10:00+99:00", "13:00 PM"])("%s is no time of day", (text) => {
    expect(readClock(text)).toBeNull();
  });
  it("a date that is none in either order shows neither", () => {
    expect(orderEvidence("13/14/2026")).toBe("unneeded");
  });
  it("a long text is no moment", () => {
    expect(readMoment(`2026-05-03${" ".repeat(60)}10:00`, null)).toBeNull();
  });
  it.each([
    [{ date: "2026-09-12", time: "09:40", zone: "Europe/Berlin" }, "2026-09-12T09:40:00+02:00"],
    [{ date: "2026-09-12", time: "09:40:59", zone: "+05:30" }, "2026-09-12T09:40:00+05:30"],
    [{ date: "2026-09-12", time: "00:00", zone: "Europe/Lisbon" }, "2026-09-12T00:00:00+01:00"],
  ])("a day, a time and a zone together: %o", (said, moment) => {
    expect(localMoment(said)).toEqual({ ok: true, value: moment });
  });
  it.each([
    [{ date: "", time: "09:40", zone: "Europe/Berlin" }, "moment-incomplete", "09:40 Europe/Berlin"],
    [{ date: "2026", time: "09:40", zone: "Europe/Berlin" }, "moment-incomplete", "2026 09:40 Europe/Berlin"],
    [{ date: "2026-09", time: "09:40", zone: "Europe/Berlin" }, "moment-incomplete", "2026-09 09:40 Europe/Berlin"],
    [{ date: "2026-09-12", time: "", zone: "Europe/Berlin" }, "moment-incomplete", "2026-09-12 Europe/Berlin"],
    [{ date: "2026-09-12", time: "9h:x", zone: "Europe/Berlin" }, "moment-incomplete", "2026-09-12 9h:x Europe/Berlin"],
    [{ date: "2026-09-12", time: "09:40", zone: "" }, "moment-incomplete", "2026-09-12 09:40"],
    [{ date: "2026-09-12", time: "09:40", zone: "Moon/Base" }, "moment-incomplete", "2026-09-12 09:40 Moon/Base"],
    [{ date: "2026-10-25", time: "02:30", zone: "Europe/Berlin" }, "moment-twice", "2026-10-25 02:30 Europe/Berlin"],
    [{ date: "2026-03-29", time: "02:30", zone: "Europe/Berlin" }, "moment-never", "2026-03-29 02:30 Europe/Berlin"],
  ])("refused: %o", (said, code, found) => {
    expect(localMoment(said)).toEqual({ ok: false, problems: [{ code, found }] });
  });
});

describe("bytes", () => {
  const bytes = (...parts: (number | string)[]) =>
    Uint8Array.from(parts.flatMap((part) => (typeof part === "number" ? [part] : [...Buffer.from(part, "latin1")])));
  it("UTF-16 cut inside its last character keeps the rest and a mark", () => {
    const whole = Buffer.from("Pb;µg\n12;3", "utf16le");
    const read = must(decodeBytes(Uint8Array.from([0xff, 0xfe, ...whole, 0x34])));
    expect(read).toEqual({ text: "Pb;µg\n12;3\ufffd", encoding: "utf-16le" });
  });
  it("UTF-16 that is cut and broken is no text", () => {
    const read = decodeBytes(Uint8Array.from([0xff, 0xfe, 0x00, 0xd8, 0x41, 0x00, 0x41]));
    expect(read.ok ? "" : read.problems[0]!.code).toBe("encoding-unknown");
  });
  it.each([
    ["a WebP image", bytes("RIFF", 1, 0, 0, 0, "WEBPVP8 ")],
    [null, bytes("RIFF", 1, 0, 0, 0, "WAVEfmt ")],
    ["a BMP image", bytes("BM", 54, 1, 0, 0, 0, 0, 0, 0)],
    [null, bytes("BM;Pb (ppm)")],
    [null, bytes("BM", 54, 1, 0, 0, 0, 7)],
    [null, bytes("BM", 54, 1, 0, 0, 0, 0, 7)],
  ])("are named: %s", (name, given) => {
    expect(nameOfBinary(given)).toBe(name);
  });
});

describe("tables", () => {
  it("a text of one line without an end is judged by its beginning", () => {
    expect(findDelimiter(`Sample;Pb (ppm);${"note;".repeat(20_000)}`)).toBe(";");
  });
  it("a header that comes again may be as wide as its names, or wider by nothing", () => {
    const kinds = (text: string) => must(readTable(text)).rows.map((row) => row.kind);
    expect(kinds("Sample,Pb (ppm)\nmug,12\nSample,Pb (ppm),\n")).toEqual(["header", "data", "repeated-header"]);
    expect(kinds("Sample,Pb (ppm),\nmug,12,\nSample,Pb (ppm)\n")).toEqual(["header", "data", "repeated-header"]);
  });
  it("other words of a header in the last row have no table under them", () => {
    const table = must(readTable("Sample,Pb (ppm)\nmug,12\nSample,Cd (ppm)\n"));
    expect(table.rows.map((row) => row.kind)).toEqual(["header", "data", "data"]);
  });
});
