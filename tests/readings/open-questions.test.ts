import { describe, expect, it } from "vitest";
import { answerQuestions } from "@/lib/readings/answer-questions.ts";
import { mappingSchema } from "@/lib/readings/mapping.ts";
import { settleAndAsk } from "@/lib/readings/open-questions.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { readRows } from "@/lib/readings/read-rows.ts";
import { readTable } from "@/lib/readings/read-table.ts";
import { askedIn, codesOf, inShort, must, readText, usual } from "./read-text.ts";

const settled = (text: string) => {
  const table = must(readTable(text));
  return settleAndAsk(table, proposeMapping(table).mapping);
};
const column = (...cells: string[]): string => `Sample;Pb (ppm)\n${cells.map((cell) => `mug;${cell}\n`).join("")}`;

describe("the decimal mark is recognised or asked, never guessed", () => {
  it.each([
    [["12,5", "3"], "comma"],
    [["12.5", "3"], "point"],
    [["0,125"], "comma"],
    [["1.234,5", "1.234"], "comma"],
    [["1,234.5"], "point"],
    [["1.234.567"], "comma"],
    [["1234,567"], "comma"],
    [["12", "<3"], null],
  ])("%j: %s", (cells, decimal) => {
    const { mapping, questions } = settled(column(...cells));
    expect(mapping.decimal).toBe(decimal);
    expect(questions.map((q) => q.id)).toEqual(["quantity"]);
  });

  it.each([[["1,234"]], [["1.234", "2.345"]], [["12,5", "12.5"]]])("%j is asked", (cells) => {
    const { mapping, questions } = settled(column(...cells));
    expect([mapping.decimal, questions.map((q) => q.id)]).toEqual([null, ["decimal", "quantity"]]);
    expect(questions[0]!.examples[0]).toEqual({ row: 2, column: "Pb (ppm)", text: cells[0] });
  });

  it("an answer reads the same digits as the person was shown", () => {
    const value = (decimal: "comma" | "point") =>
      readText(column("1,234"), { ...usual, decimal }).readings[0]!.results[0]!.value!.value;
    expect([value("comma"), value("point")]).toEqual([1.234, 1234]);
  });

  it("the other mark beside a known one is asked unless the file shows it groups", () => {
    expect(askedIn(column("12,5", "1.234"))).toContain("thousands");
    expect(askedIn(column("12,5", "1.234", "1.234,5"))).not.toContain("thousands");
    const no = readText(column("12,5", "1.234"), { ...usual, thousands: "no" });
    expect([no.readings.length, codesOf(no)]).toEqual([1, ["number-ambiguous"]]);
  });

  it("contradicting rows are set aside once the person has chosen", () => {
    const read = readText(column("12,5", "12.5"), { ...usual, decimal: "comma" });
    expect([read.readings.length, codesOf(read)]).toEqual([1, ["number-ambiguous"]]);
  });

  it("a remembered mark that the file contradicts throughout is asked again", () => {
    const table = must(readTable(column("12.5", "13.5")));
    const remembered = { ...proposeMapping(table).mapping, decimal: "comma" as const };
    expect(settleAndAsk(table, remembered).questions.map((q) => q.id)).toContain("decimal");
  });
});

describe("what the file does not say is asked", () => {
  it.each([
    ["k of errors without coverage", "Sample,Pb (ppm),±\nmug,12,3\n", ["k", "quantity"]],
    ["no k where the header says it", "Sample,Pb (ppm),±2σ\nmug,12,3\n", ["quantity"]],
    ["k of an error inside the cell", "Sample,Pb (ppm)\nmug,12 ± 3\n", ["k", "quantity"]],
    ["a unit missing for one column", "Sample,Pb (ppm),Cd\nmug,12,3\n", ["unit", "quantity"]],
    ["no unit where every cell has it", "Sample,Pb\nmug,12 mg/cm2\nbib,3 mg/cm²\n", []],
    ["no kind where the unit says it", "Sample,Pb (µg/cm²)\nmug,12\n", []],
    ["the zone of times without offset", "Date,Sample,Pb (ppm)\n2026-05-01 10:00,mug,12\n", ["quantity", "time-zone"]],
    ["no zone where offsets stand", "Date,Sample,Pb (ppm)\n2026-05-01T10:00+02:00,mug,12\n", ["quantity"]],
    ["no zone of dates without times", "Date,Sample,Pb (ppm)\n2026-05-01,mug,12\n", ["quantity"]],
    ["the order of day and month", "Date,Sample,Pb (ppm)\n03/04/2026,mug,12\n", ["quantity", "date-order"]],
    ["no order where one date shows it", "Date,Sample,Pb (ppm)\n03/04/2026,mug,1\n13/04/2026,mug,1\n", ["quantity"]],
    ["what 0 means", "Sample,Pb (ppm)\nmug,0\n", ["quantity", "zero"]],
    ["not what 0 ± 3 means", "Sample,Pb (ppm),±2σ\nmug,0,3\n", ["quantity"]],
    ["what - and n/a mean", "Sample,Pb (ppm)\nmug,-\nbib,n/a\ntoy,1\n", ["quantity", "dash", "not-available"]],
    ["about non-detects without limit", "Sample,Pb (ppm)\nmug,ND\ntoy,1\n", ["quantity", "no-limit"]],
  ])("%s", (_, text, questions) => {
    expect(askedIn(text)).toEqual(questions);
  });

  it("only the missing limit does not block", () => {
    const { questions } = settled("Sample,Pb (ppm)\nmug,ND\nbib,-\ntoy,1\n");
    expect(questions.filter((q) => !q.blocking).map((q) => q.id)).toEqual(["no-limit"]);
  });

  it("reading is refused while a question is open, with place and answers", () => {
    const table = must(readTable("Sample,Pb (ppm),Cd\nmug,12,3\n"));
    expect(readRows(table, proposeMapping(table).mapping)).toMatchObject({
      ok: false,
      problems: [
        { code: "ask-unit", where: { row: 2, column: "Cd" }, found: "3" },
        { code: "ask-quantity", where: { column: "Pb (ppm)" } },
      ],
    });
  });
});

describe("answers", () => {
  it("by column and for all", () => {
    const text = "Sample,Pb,Pb error,Cd,Cd error\nmug,12,3,4,1\n";
    const answers = {
      k: { "Pb error": 1 as const, "Cd error": 3 as const },
      unit: { Pb: "%", Cd: "ug/cm2" },
      quantity: "bulk-mass-fraction" as const,
    };
    expect(readText(text, answers).readings[0]!.results.map(inShort)).toEqual(["Pb=12±3/1 %", "Cd=4±1/3 µg/cm²"]);
  });
  it("by mode, where one file holds bulk and coating", () => {
    const text = "Mode,Sample,Pb (ppm)\nplastic,bib,12\npaint,toy,13\n";
    const quantityByMode = { plastic: "bulk-mass-fraction", paint: "coating-mass-fraction" } as const;
    const { readings } = readText(text, { quantityByMode });
    expect(readings.map((r) => r.results[0]!.quantity)).toEqual(["bulk-mass-fraction", "coating-mass-fraction"]);
  });
  it("of zones and units that do not exist are refused", () => {
    const { mapping } = settled("Date,Sample,Pb\n2026-05-01 10:00,mug,12\n");
    const answered = answerQuestions(mapping, { timeZone: "Nowhere/Atoll", unit: "furlong" });
    expect(answered).toMatchObject({ problems: [{ code: "time-zone-unknown" }, { code: "unit-unknown" }] });
  });
  it("make a mapping that is a plain value", () => {
    const { mapping } = settled("Date,Sample,Pb\n2026-05-01 10:00,mug,12\n");
    expect(mappingSchema.parse(JSON.parse(JSON.stringify(mapping)))).toEqual(mapping);
  });
});
