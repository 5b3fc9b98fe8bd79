import { describe, expect, it } from "vitest";
import { answerQuestions } from "@/lib/readings/answer-questions.ts";
import type { Mapping } from "@/lib/readings/mapping.ts";
import { settleAndAsk } from "@/lib/readings/open-questions.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { mendRow, readRows } from "@/lib/readings/read-rows.ts";
import { readTable } from "@/lib/readings/read-table.ts";
import { askedIn, codesOf, inShort, must, now, readText, usual } from "./read-text.ts";

/** All files here are invented. */
const fates = (header: string, cells: string, answers = usual) => {
  const read = readText(`Sample,${header}\nmug,${cells}\n`, answers);
  return read.readings.length > 0 ? read.readings[0]!.results.map(inShort).join("; ") : codesOf(read).join(" ");
};
const opened = (text: string, answers = usual) => {
  const table = must(readTable(text));
  const mapping = must(answerQuestions(settleAndAsk(table, proposeMapping(table).mapping).mapping, answers));
  return { table, mapping };
};

describe("a figure's companions", () => {
  it.each([
    ["a formula as an error", "Pb (ppm),±", "12,=1+1", "formula"],
    ["an error that is a value with an error", "Pb (ppm),±", "12,3 ± 1", "error-unreadable"],
    ["a non-detect as an error", "Pb (ppm),±", "12,<3", "error-unreadable"],
    ["another unit in the error", "Pb (ppm),±", "12,0.1 %", "unit-conflict"],
    ["the same unit in the error", "Pb (ppm),±", "12,3 ppm", "Pb=12±3/2 ppm"],
    ["a limit of 0 for a non-detect", "Pb (ppm),Pb LOD", "<LOD,0", "limit-not-positive"],
    ["an error of 0 inside the cell", "Pb (ppm)", "12 ± 0", "error-not-positive"],
    ["no flag", "Pb (ppm),Pb <", "12,", "Pb=12 ppm"],
    ["a flag that says detected", "Pb (ppm),Pb <", "12,detected", "Pb=12 ppm"],
    ["a formula as a flag", "Pb (ppm),Pb <", "12,=A1", "formula"],
    ["0 beside ND states no limit", "Pb (ppm),Pb <", "0,ND", "limit-missing"],
    ["nothing beside ND is a non-detect", "Pb (ppm),Pb LOD,Pb <", ",5,ND", "Pb<5 ppm"],
    ["an empty limit column leaves the error column", "Pb (ppm),±,Pb LOD", "<LOD,7,", "Pb<7 ppm"],
    ["a dash in the error column states no limit", "Pb (ppm),±", "<LOD,-", "limit-missing"],
    ["n/a in the limit column leaves the error column", "Pb (ppm),±,Pb LOD", "<LOD,7,n/a", "Pb<7 ppm"],
    ["n/a with digits in the error column", "Pb (ppm),±", "<LOD,n/a 1", "error-unreadable"],
    ["words that mean not measured in the limit column", "Pb (ppm),±,Pb LOD", "<LOD,7,not measured", "Pb<7 ppm"],
  ])("%s", (_, header, cells, expected) => {
    expect(fates(header, cells)).toBe(expected);
  });
  it("a row that ends before a nameless last column has nothing in it", () => {
    const table = must(readTable("Sample,Pb (ppm),\nmug,12\nbib,13,2\n"));
    const proposed = proposeMapping(table).mapping;
    const mapping = {
      ...proposed,
      elements: proposed.elements.map((entry) => ({ ...entry, error: "column 3", k: 2 as const })),
    };
    const read = must(readRows(table, must(answerQuestions(mapping, usual)), { now }));
    expect(read.readings.map((r) => r.results.map(inShort))).toEqual([["Pb=12 ppm"], ["Pb=13±2/2 ppm"]]);
  });
  it("a remembered mapping without the unit as written gives the unit itself", () => {
    const { table, mapping } = opened("Sample,Pb (PPM)\nmug,12\n");
    const spelt = { ...mapping, elements: mapping.elements.map((entry) => ({ ...entry, unitText: null })) };
    expect(must(readRows(table, mapping)).readings[0]!.results[0]!.unitText).toBe("PPM");
    expect(must(readRows(table, spelt)).readings[0]!.results[0]!.unitText).toBe("ppm");
  });
  it("a unit in the cell speaks where neither header nor column does", () => {
    const [result] = readText("Sample,Pb\nmug,12 mg/kg\nbib,ND (5 mg/kg)\n").readings[0]!.results;
    expect(result).toMatchObject({ unit: "mg/kg", unitText: "mg/kg", value: { text: "12" } });
  });
});

describe("a mended row meets what the file never showed", () => {
  const mend = (header: string, row: string, cells: string[], change: (mapping: Mapping) => Mapping = (m) => m) => {
    const { table, mapping } = opened(`${header}\n${row}\n`);
    const mended = mendRow(table, change(mapping), 2, cells, { now });
    return mended.ok ? mended.reading.results.map(inShort) : mended.setAside.problems.map((p) => [p.code, p.column]);
  };
  it("marks that nobody was asked about", () => {
    expect(mend("Sample,Pb (ppm)", "mug,12", ["mug", "-"])).toEqual([["dash-unclear", "Pb (ppm)"]]);
    expect(mend("Sample,Pb (ppm)", "mug,12", ["mug", "n/a"])).toEqual([["not-available-unclear", "Pb (ppm)"]]);
    expect(mend("Sample,Pb (ppm)", "mug,12", ["mug", "0"])).toEqual([["zero-unclear", "Pb (ppm)"]]);
  });
  it("an error inside the cell, where none was before", () => {
    const withoutK = (mapping: Mapping): Mapping => ({
      ...mapping,
      decimal: "point",
      elements: mapping.elements.map((entry) => ({ ...entry, k: null })),
    });
    expect(mend("Sample,Pb (ppm)", "mug,12", ["mug", "12 ± 3"], withoutK)).toEqual([["k-unknown", "Pb (ppm)"]]);
  });
  it("a mode of which nobody said whether it reads bulk or coating", () => {
    const byMode = (mapping: Mapping): Mapping => ({
      ...mapping,
      decimal: "point",
      quantityByMode: { glass: "bulk-mass-fraction" },
      elements: mapping.elements.map((entry) => ({ ...entry, quantity: null })),
    });
    expect(mend("Sample,Mode,Pb (ppm)", "mug,glass,12", ["mug", "glass", "12"], byMode)).toEqual(["Pb=12 ppm"]);
    expect(mend("Sample,Mode,Pb (ppm)", "mug,glass,12", ["mug", "metal", "12"], byMode)).toEqual([
      ["quantity-unknown", "Pb (ppm)"],
    ]);
  });
  it("a quantity that its unit cannot be of", () => {
    const areal = (mapping: Mapping): Mapping => ({
      ...mapping,
      elements: mapping.elements.map((entry) => ({ ...entry, quantity: "coating-areal" })),
    });
    expect(mend("Sample,Pb (ppm)", "mug,12", ["mug", "12"], areal)).toEqual([["quantity-unknown", "Pb (ppm)"]]);
  });
  it("a time in a zone that nobody named, a date whose order nobody showed", () => {
    const header = "Date,Sample,Pb (ppm)";
    const nowhere = (mapping: Mapping): Mapping => ({ ...mapping, timeZone: null });
    const at = (date: string) => mend(header, "2026-05-03,mug,12", [date, "mug", "12"], nowhere);
    expect(at("2026-05-03 10:00")).toEqual([["time-zone-unknown", "Date"]]);
    expect(at("04/03/2026")).toEqual([["date-order-unknown", "Date"]]);
    expect(at("2026-05-03 10:00+01:00")).toEqual(["Pb=12 ppm"]);
  });
});

describe("words of a row", () => {
  const one = (header: string, cells: string) => codesOf(readText(`${header}\n${cells}\n`));
  it.each([
    ["seconds that are no number", "Sample,Live time (s),Pb (ppm)", "mug,long,12", "seconds-unreadable"],
    ["seconds below zero", "Sample,Live time (s),Pb (ppm)", "mug,-3,12", "seconds-unreadable"],
    ["a clock time that is none", "Date,Time,Sample,Pb (ppm)", "2026-05-03,25:61,mug,12", "date-unreadable"],
    [
      "a clock time with a hidden direction",
      "Date,Time,Sample,Pb (ppm)",
      "2026-05-03,10:00\u202e,mug,12",
      "direction-control",
    ],
    ["a date with a hidden direction", "Date,Sample,Pb (ppm)", "2026-05-0\u202e3,mug,12", "direction-control"],
    ["an element that is a formula", "Sample,Element,Result (ppm)", "mug,Pb,1\nbib,=A1,2", "formula"],
  ])("%s", (_, header, cells, code) => {
    expect(one(header, cells)).toEqual([code]);
  });
  it("seconds with their unit beside them", () => {
    expect(readText("Sample,Live time,Pb (ppm)\nmug,30 sec,12\n").readings[0]!.secondsCounted).toBe(30);
  });
  it("a clock time of its own column goes with the day beside it", () => {
    const [reading] = readText("Date,Time,Sample,Pb (ppm)\n2026-05-03,9:05 Uhr,mug,12\n").readings;
    expect(reading).toMatchObject({ takenAt: "2026-05-03T09:05:00+01:00", takenAtText: "2026-05-03 9:05 Uhr" });
  });
  it("a quotation mark in a wrong place sets its row aside", () => {
    const read = readText('Sample,Pb (ppm)\n"mug"x",12\nbib,13\n');
    expect(codesOf(read)).toEqual(["quote-malformed"]);
    expect(read.readings.map((r) => r.sample)).toEqual(["bib"]);
  });
});

describe("mappings that do not fit", () => {
  const { table, mapping } = opened("Sample,Pb (ppm),PbO (%)\nmug,12,1\n");
  const [entry] = mapping.elements;
  const codes = (change: Partial<Mapping>) => {
    const read = readRows(table, { ...mapping, ...change });
    return read.ok ? [] : read.problems.map((p) => [p.code, p.found]);
  };
  it("are refused by what is wrong with them", () => {
    expect(codes({ elements: [entry!, { ...entry!, value: "PbO (%)" }] })).toEqual([["element-mapped-twice", "Pb"]]);
    expect(codes({ elements: [{ ...entry!, element: "Xx" }] })).toEqual([["element-unknown", "Xx"]]);
    expect(codes({ elements: [] })).toEqual([["no-result-columns", undefined]]);
    expect(codes({ shape: "long", long: null })).toEqual([["no-result-columns", undefined]]);
  });
  it("an oxide that is none, or is of another element, is not taken as the element itself", () => {
    expect(codes({ elements: [{ ...entry!, oxide: "Pb9O" }] })).toEqual([["element-unknown", "Pb9O"]]);
    expect(codes({ elements: [{ ...entry!, oxide: "CdO" }] })).toEqual([["element-unknown", "CdO"]]);
  });
  it("can still be asked about, so that a screen shows them", () => {
    const unknown = { ...mapping, elements: [{ ...entry!, element: "Xx", quantity: null }] };
    expect(settleAndAsk(table, unknown).questions.map((q) => q.id)).toEqual(["quantity"]);
    expect(settleAndAsk(table, { ...mapping, shape: "long", long: null }).questions).toEqual([]);
  });
});

describe("answers by column", () => {
  it("k for errors inside the cells, by the value column", () => {
    const { table } = opened("Sample,Pb (ppm)\nmug,12 ± 3\n");
    const proposed = proposeMapping(table).mapping;
    const answered = must(answerQuestions(proposed, { ...usual, k: { "Pb (ppm)": 3 }, decimal: "point" }));
    expect(answered.elements[0]!.k).toBe(3);
    expect(must(answerQuestions(proposed, { k: { "Cd (ppm)": 3 } })).elements[0]!.k).toBeNull();
  });
  it("a unit that the quantity cannot be of asks for the quantity anew", () => {
    const { mapping } = opened("Sample,Pb (mg/cm²)\nmug,12\n");
    expect(mapping.elements[0]!.quantity).toBe("coating-areal");
    const changed = must(answerQuestions(mapping, { unit: { "Pb (mg/cm²)": "ppm" } }));
    expect(changed.elements[0]).toMatchObject({ unit: "ppm", quantity: null });
    const kept = must(answerQuestions(changed, { unit: { "Pb (mg/cm²)": "mg/kg" }, quantity: "bulk-mass-fraction" }));
    expect(kept.elements[0]).toMatchObject({ unit: "mg/kg", quantity: "bulk-mass-fraction" });
    const again = must(answerQuestions(kept, { unit: { "Pb (mg/cm²)": "%" } }));
    expect(again.elements[0]).toMatchObject({ unit: "%", quantity: "bulk-mass-fraction" });
  });
});

describe("what dates and marks of a whole file show", () => {
  it("a month that comes first", () => {
    const read = readText("Date,Sample,Pb (ppm)\n3/25/2026,mug,12\n3/4/2026,bib,13\n");
    expect(read.readings.map((r) => r.takenOn)).toEqual(["2026-03-25", "2026-03-04"]);
  });
  it("a zone column leaves no question of the zone", () => {
    expect(askedIn("Date,Time,Time zone,Sample,Pb (mg/cm²)\n2026-05-03,10:00,+01:00,mug,12\n")).toEqual([]);
    expect(askedIn("Date,Time,Time zone,Sample,Pb (mg/cm²)\n2026-05-03,10:00,,mug,12\n")).toEqual(["time-zone"]);
  });
  it("a non-detect whose limit stands in its limit column, or in the error column, is no question", () => {
    expect(askedIn("Sample,Pb (mg/cm²),LOD\nmug,ND,5\n")).toEqual([]);
    expect(askedIn("Sample,Pb (mg/cm²),±2σ\nmug,ND,5\n")).toEqual([]);
    expect(askedIn("Sample,Pb (mg/cm²),±2σ\nmug,ND,-\n")).toEqual(["no-limit"]);
  });
});
