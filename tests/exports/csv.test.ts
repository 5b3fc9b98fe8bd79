import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { type Column, csvTable, guarded } from "@/lib/exports/csv-table.ts";
import { readingColumns, readingsCsv } from "@/lib/exports/readings-csv.ts";
import { resultsCsv } from "@/lib/exports/results-csv.ts";
import { sampleFile, sampleSnapshot, sampleWithdrawal } from "../support/sample-snapshot.ts";

const rowsOf = (csv: string): Record<string, string>[] =>
  Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true }).data;

describe("the formula guard (OWASP, CSV Injection), on text columns only", () => {
  it.each([
    ["=1+1", "'=1+1"],
    ["+49 30 1234", "'+49 30 1234"],
    ["-2+3", "'-2+3"],
    ["@SUM(A1)", "'@SUM(A1)"],
    ["\t=1", "'\t=1"],
    ["\r=1", "'\r=1"],
    ["＝1+1", "'＝1+1"],
    ["-5", "-5"],
    ["+0.5e3", "+0.5e3"],
    ["glaze", "glaze"],
    ["", ""],
  ])("%j becomes %j", (text, safe) => {
    expect(guarded(text)).toBe(safe);
  });
  it("leaves negative numbers whole in number columns", () => {
    const columns: Column<number>[] = [
      { name: "x", type: "number", description: "", cell: (x) => x },
      { name: "t", type: "string", description: "", cell: () => "=x" },
    ];
    expect(csvTable(columns, [-1.5, 1e-7])).toBe("x,t\r\n-1.5,'=x\r\n1e-7,'=x\r\n");
  });
  it("refuses anything but digits in a number column", () => {
    const columns: Column<string>[] = [{ name: "x", type: "number", description: "", cell: (x) => x }];
    for (const bad of ["=1", "1,5", "NaN", "Infinity", " 1", ""])
      expect(() => csvTable(columns, [bad])).toThrow(/holds numbers/);
  });
  it("quotes by RFC 4180, and a reader gets back what was written", () => {
    const columns: Column<string>[] = [{ name: "a,b", type: "string", description: "", cell: (x) => x }];
    const texts = ['say "hi"', "two\nlines", "comma, here", "täßle", " spaces "];
    expect(rowsOf(csvTable(columns, texts)).map((r) => r["a,b"])).toEqual(texts);
  });
});

describe("readings.csv", () => {
  const snapshot = sampleSnapshot();
  const rows = rowsOf(readingsCsv(snapshot));
  const all = snapshot.specimens.flatMap((s) => s.parts.flatMap((p) => p.results.flatMap((r) => r.readings)));

  it("has one row for each reading and element, set aside or not", () => {
    expect(rows.map((r) => r["reading_id"])).toEqual(all.map((r) => r.id));
    expect(rows.filter((r) => r["set_aside"] === "true").map((r) => r["set_aside_reason"])).toEqual([
      "The nose slipped off the mug during the shot.",
    ]);
  });
  it("gives every reading's numbers back, each with its unit in a column of its own", () => {
    rows.forEach((row, i) => {
      const reading = all[i]!;
      for (const [column, written] of [
        ["value", reading.value],
        ["error", reading.error],
        ["detection_limit", reading.detectionLimit],
      ] as const) {
        expect(row[column]).toBe(written === null ? "" : written.value.toFixed(written.decimals));
        expect(row[`${column}_unit`]).toBe(written === null ? "" : "ppm");
      }
    });
    expect(rows.find((r) => r["reading_id"] === "r19-Pb")).toMatchObject({ value: "23", error: "3.0", error_k: "2" });
  });
  it("never writes a number for what was not detected", () => {
    const below = rows.filter((r) => r["below_detection"] === "true");
    expect(below.length).toBe(5);
    for (const row of below) expect([row["value"], row["value_unit"], row["value_as_written"]]).toEqual(["", "", ""]);
  });
  it("walks every row back to its file's SHA-256 and row", () => {
    rows.forEach((row, i) => {
      expect(row).toMatchObject({
        file: sampleFile.name,
        file_sha256: sampleFile.sha256,
        file_row: String(all[i]!.row),
      });
    });
  });
  it("guards text that a tester typed, and no number", () => {
    const hostile = structuredClone(snapshot);
    const part = hostile.specimens[0]!.parts[0]!;
    part.name = '=HYPERLINK("http://x.example","y")';
    part.results[0]!.readings[0]!.value = { text: "-12.50", value: -12.5, decimals: 2 };
    const [first] = rowsOf(readingsCsv(hostile));
    expect(first).toMatchObject({ part: `'${part.name}`, value: "-12.50", value_as_written: "-12.50" });
  });
  it("describes every column, and names none twice", () => {
    expect(new Set(readingColumns.map((c) => c.name)).size).toBe(readingColumns.length);
    for (const column of readingColumns) expect(column.description).toBeTruthy();
  });
  it("of a withdrawn item is the header line only", () => {
    expect(readingsCsv(sampleWithdrawal()).split("\r\n")).toHaveLength(2);
  });
});

it("results.csv has one row for each part and element, numbers unrounded", () => {
  const rows = rowsOf(resultsCsv([sampleSnapshot()]));
  expect(rows).toHaveLength(6);
  expect(rows[0]).toMatchObject({
    part: "glaze, outside",
    value: "411.8620090873221",
    stated: "412 ± 35 mg/kg",
    verdict: "above",
    limit: "us-cpsia-lead-100",
    limit_applies: "applies",
  });
  expect(rows.at(-1)).toMatchObject({ state: "not-detected", value: "", below: "5", unit: "mg/kg" });
});
