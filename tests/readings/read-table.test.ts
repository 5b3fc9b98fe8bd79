import { describe, expect, it } from "vitest";
import { readTable } from "@/lib/readings/read-table.ts";
import { headerFingerprint } from "@/lib/readings/table.ts";
import { must } from "./read-text.ts";

const kindsOf = (text: string) => must(readTable(text)).rows.map((row) => `${row.line} ${row.kind}`);

describe("readTable finds", () => {
  it.each([
    ["commas", "Sample,Pb (ppm),±\nmug,12.5,3\n", ","],
    ["semicolons with decimal commas as often as semicolons", "Sample;Pb (ppm);±\nmug;12,5;3,1\nbib;1,5;0,1\n", ";"],
    ["tabs", "Sample\tPb (ppm)\t±\nmug, red\t12.5\t3\n", "\t"],
    ["a stated separator", "sep=;\nSample;Pb (ppm)\nmug;12\n", ";"],
  ])("%s", (_, text, delimiter) => {
    expect(must(readTable(text)).delimiter).toBe(delimiter);
  });

  it("header below preamble, units row, quoted line ends, blank rows, repeated header and units, summaries", () => {
    const text = [
      "Instrument: bench 1",
      "Serial,77",
      "",
      "Reading No,Sample,Pb,±",
      ",,ppm,ppm",
      '1,"mug,\nred",12,3',
      ",,,",
      "Reading No,Sample,Pb,±",
      ",,ppm,ppm",
      "2,bib,4,1",
      "Mean,,8,",
      "Total,,16,",
    ].join("\n");
    expect(kindsOf(`${text}\n`)).toEqual([
      ...["1 preamble", "2 preamble", "3 blank", "4 header", "5 units", "6 data", "8 blank"],
      ...["9 repeated-header", "10 repeated-header", "11 data", "12 summary", "13 summary"],
    ]);
  });

  it("a summary row in the middle, but no sample called Total there", () => {
    expect(kindsOf("Sample,Pb (ppm)\nTotal,1\nmug,2\nStd. Dev.,1\nbib,3\n")).toEqual([
      ...["1 header", "2 data", "3 data", "4 summary", "5 data"],
    ]);
  });

  it("rows that are too short or too long, but forgives empty cells at the end", () => {
    expect(kindsOf("Sample,Pb (ppm),Cd (ppm)\nmug,1\nbib,1,2,,\ntoy,1,2,3\n")).toEqual([
      ...["1 header", "2 width", "3 data", "4 width"],
    ]);
  });

  it("names for columns without one and for columns that share one", () => {
    expect(must(readTable("Sample,Pb,±,Cd,±,\nmug,1,1,2,2,x\n")).columns).toEqual([
      ...["Sample", "Pb", "±", "Cd", "± (2)", "column 6"],
    ]);
  });

  it("the columns of a table whose header it does not know", () => {
    const table = must(readTable("Alpha,Beta,Gamma\nmug,1,2\nbib,3,4\n"));
    expect([table.headerLine, table.columns]).toEqual([1, ["Alpha", "Beta", "Gamma"]]);
  });
});

describe("readTable refuses", () => {
  it.each([
    ["no header", "hello\nworld\n", { code: "header-not-found" }],
    ["a header alone", "Sample,Pb (ppm)\n", { code: "no-rows", where: { row: 1 } }],
    [
      "a second table with another header, naming its line",
      "Sample,Pb (ppm)\nmug,12\n\nStandard,Certified value,Pb (ppm)\nblock,100,99\n",
      { code: "two-tables", where: { row: 4 }, allowed: "line 1" },
    ],
    [
      "a second table that knows more words than the first",
      "Sample,Pb (ppm)\nmug,12\n\nSample,Spot,Cd (ppm),Pb (ppm)\nblock,a,100,99\n",
      { code: "two-tables", where: { row: 4 }, allowed: "line 1" },
    ],
    [
      "a second table of unknown words",
      "Sample,Pb (ppm)\nmug,12\n\nStreet,House,Colour\nInvented Row,1,red\n",
      { code: "two-tables", where: { row: 4 } },
    ],
    [
      "separators that change",
      "Sample;Pb (ppm);Cd (ppm)\nmug;12;3\nbib,13,4\n",
      { code: "mixed-separators", where: { row: 3 }, found: "comma", allowed: "semicolon" },
    ],
    ["a quotation mark never closed", 'Sample,Pb\nmug,1\n"bib,3\n', { code: "quote-not-closed", where: { row: 3 } }],
    [
      "a stray quotation mark that swallows rows",
      `Sample,Pb\n"mug,1\n${"bib,2\n".repeat(60)}"toy",3\n`,
      { code: "quote-runs-on", where: { row: 2 } },
    ],
  ])("%s", (_, text, problem) => {
    expect(readTable(text)).toMatchObject({ ok: false, problems: [problem] });
  });

  it("no footnotes for a second table", () => {
    expect(readTable("Sample,Pb (ppm),±\nmug,12,1\n\nTested by,A person\nDate,2026-05-01\n").ok).toBe(true);
  });
});

describe("headerFingerprint", () => {
  const of = (text: string) => headerFingerprint(must(readTable(text)));
  it("is the same for the same header, other rows, white space and preamble", () => {
    expect(of("Sample , Pb (ppm),\nmug,1,\n")).toBe(of("Made by us\nSample,Pb (ppm)\nbib,2\n"));
  });
  it("differs where a name or a unit differs", () => {
    const texts = ["Sample,Pb\nmug,1\n", "Sample,Cd\nmug,1\n", "Sample,Pb\n,ppm\nmug,1\n", "Sample,Pb\n,%\nmug,1\n"];
    expect(new Set(texts.map(of)).size).toBe(4);
  });
});

describe("plain tables as statistics programs write them", () => {
  it.each([
    ["nameless row numbers", '"","copper"\n"1",2.9\n"2",3.1\n', ["column 1", "copper"]],
    ["one column", "Pb (ppm)\n12\n13\n", ["Pb (ppm)"]],
  ])("%s", (_, text, columns) => {
    const table = must(readTable(text));
    expect([table.columns, table.rows.length]).toEqual([columns, 3]);
  });
});
