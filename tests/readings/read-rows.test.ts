import { describe, expect, it } from "vitest";
import { answerQuestions } from "@/lib/readings/answer-questions.ts";
import { settleAndAsk } from "@/lib/readings/open-questions.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { mendRow, readRows, readRowsInChunks } from "@/lib/readings/read-rows.ts";
import { readTable } from "@/lib/readings/read-table.ts";
import { codesOf, inShort, must, now, readText, usual } from "./read-text.ts";

/** All files here are invented. */
const resultsOf = (text: string, answers = usual) =>
  readText(text, answers).readings.map((r) => r.results.map(inShort).join("; "));
const oneCell = (header: string, cells: string, answers = usual) =>
  resultsOf(`Sample,${header}\nmug,${cells}\n`, answers)[0];
const fateOf = (header: string, cells: string, answers = usual) =>
  codesOf(readText(`Sample,${header}\nmug,${cells}\n`, answers));

describe("a whole reading", () => {
  const text = [
    "Gerät;Bank 3",
    "Messung;Datum;Uhrzeit;Messdauer;Modus;Probe;Teil;Messpunkt;Bemerkung;Pb;±;Cd;±",
    ";;;s;;;;;;mg/kg;mg/kg;mg/kg;mg/kg",
    '17;03.05.2026;14:05:06;30,5;Glasur;"Becher ""blau""";Rand;A1;ok;1.234,50;12,5;<NWG;7,5',
  ].join("\n");
  it("walks back to its row with everything as written", () => {
    const { readings, account } = readText(text, { ...usual, timeZone: "Europe/Berlin" });
    expect(account).toEqual({ total: 4, accepted: 1, setAside: 0, blank: 0, header: 3 });
    expect(readings).toEqual([
      {
        ...{ row: 4, number: "17", takenAtText: "03.05.2026 14:05:06", takenAt: "2026-05-03T14:05:06+02:00" },
        ...{ takenOn: "2026-05-03", offsetMinutes: 120, secondsCounted: 30.5, mode: "Glasur" },
        ...{ sample: 'Becher "blau" / Rand', spot: "A1", note: "ok", serial: null, operator: null },
        results: [
          {
            ...{
              element: "Pb",
              quantity: "bulk-mass-fraction",
              unit: "mg/kg",
              unitText: "mg/kg",
              belowDetection: false,
            },
            value: { text: "1.234,50", value: 1234.5, decimals: 2 },
            error: { text: "12,5", value: 12.5, decimals: 1 },
            ...{ k: 2, detectionLimit: null, column: "Pb" },
          },
          {
            ...{
              element: "Cd",
              quantity: "bulk-mass-fraction",
              unit: "mg/kg",
              unitText: "mg/kg",
              belowDetection: true,
            },
            ...{
              value: null,
              error: null,
              k: null,
              detectionLimit: { text: "7,5", value: 7.5, decimals: 1 },
              column: "Cd",
            },
          },
        ],
      },
    ]);
  });
});

describe("non-detects find their limit", () => {
  it.each([
    ["in the cell", "Pb (ppm),±,Pb LOD", "<12,3,5", "Pb<12 ppm"],
    ["in the limit column", "Pb (ppm),±,Pb LOD", "<LOD,3,5", "Pb<5 ppm"],
    ["in the limit column behind a sign", "Pb (ppm),±,Pb LOD", "ND,3,<5", "Pb<5 ppm"],
    ["in the error column", "Pb (ppm),±", "<LOD,7", "Pb<7 ppm"],
    ["in the error column behind a sign", "Pb (ppm),±", "<LOD,±7", "Pb<7 ppm"],
    ["beside a flag", "Pb (ppm),Pb <", "12,<", "Pb<12 ppm"],
  ])("%s", (_, header, cells, expected) => {
    expect(oneCell(header, cells)).toBe(expected);
  });
  it("in a default the tester gives, or the row is set aside, or kept without one as told", () => {
    expect(oneCell("Pb (ppm)", "ND", { ...usual, defaultLimits: { Pb: "5" } })).toBe("Pb<5 ppm");
    expect(oneCell("Pb (ppm)", "ND", { ...usual, noLimit: "keep" })).toBe("Pb<? ppm");
    expect(fateOf("Pb (ppm)", "ND")).toEqual(["limit-missing"]);
    expect(fateOf("Pb (ppm),±", "ND,7", { ...usual, errorOfNonDetect: "ignore" })).toEqual(["limit-missing"]);
  });
});

describe("blank, 0, - and n/a", () => {
  it("a blank is not measured, never zero", () => {
    expect(oneCell("Pb (ppm),±,Cd (ppm)", "12,,")).toBe("Pb=12 ppm");
    expect(fateOf("Pb (ppm),Cd (ppm)", ",")).toEqual(["nothing-measured"]);
  });
  it.each([
    ["number", "Pb=0 ppm; Cd=1 ppm"],
    ["not-detected", "Pb<9 ppm; Cd=1 ppm"],
    ["not-measured", "Cd=1 ppm"],
  ] as const)("0 means %s where the tester says so", (zero, expected) => {
    expect(oneCell("Pb (ppm),Cd (ppm)", "0,1", { ...usual, zero, defaultLimits: { Pb: "9" } })).toBe(expected);
  });
  it("0 with an error is a number", () => {
    expect(oneCell("Pb (ppm),±", "0,3")).toBe("Pb=0±3/2 ppm");
  });
  it.each(["dash", "notAvailable"] as const)("%s means what the tester says", (mark) => {
    const cell = mark === "dash" ? "-" : "n/a";
    expect(oneCell("Pb (ppm),Cd (ppm)", `${cell},1`, { ...usual, [mark]: "not-measured" })).toBe("Cd=1 ppm");
    expect(fateOf("Pb (ppm),Cd (ppm)", `${cell},1`, { ...usual, [mark]: "not-detected" })).toEqual(["limit-missing"]);
  });
});

describe("errors, units, oxides", () => {
  it.each([
    ["a negative value is kept as written", "Pb (ppm),±", "-2,3", "Pb=-2±3/2 ppm"],
    ["an error with its sign", "Pb (ppm),±", "12,± 3", "Pb=12±3/2 ppm"],
    ["an error inside the cell", "Pb (ppm)", "12 ± 3", "Pb=12±3/2 ppm"],
    ["an error that is not stated", "Pb (ppm),±", "12,-", "Pb=12 ppm"],
    ["a unit said twice", "Pb (ppm)", "12 ppm", "Pb=12 ppm"],
    ["a limit of 0 beside a detected value", "Pb (ppm),LOD", "12,0.00", "Pb=12 ppm"],
  ])("%s", (_, header, cells, expected) => {
    expect(oneCell(header, cells)).toBe(expected);
  });
  it.each([
    ["a negative error", "Pb (ppm),±", "12,-3", "error-not-positive"],
    ["an error of 0", "Pb (ppm),±", "12,0", "error-not-positive"],
    ["an error that is no number", "Pb (ppm),±", "12,many", "error-unreadable"],
    ["a limit that is no number", "Pb (ppm),LOD", "12,few", "limit-unreadable"],
    ["another unit in the cell", "Pb (ppm)", "0.12 %", "unit-conflict"],
    ["a value above the range", "Pb (ppm)", ">9000", "above-range"],
    ["a flag that says nothing known", "Pb (ppm),Pb <", "12,perhaps", "flag-unreadable"],
  ])("%s sets the row aside", (_, header, cells, code) => {
    expect(fateOf(header, cells)).toEqual([code]);
  });
  it("an oxide's figure becomes the element's, its text stays", () => {
    const [result] = readText("Sample,PbO (%),±,LOD\nmug,1.00,0.10,0.05\n").readings[0]!.results;
    const factor = 207.2 / 223.199; // atomic weights of lead and oxygen: CIAAW 2021, abridged
    expect(result).toMatchObject({ element: "Pb", oxide: "PbO", value: { text: "1.00" }, error: { text: "0.10" } });
    expect(result!.value!.value).toBeCloseTo(factor, 12);
    expect(result!.error!.value).toBeCloseTo(0.1 * factor, 12);
    expect(result!.detectionLimit!.value).toBeCloseTo(0.05 * factor, 12);
  });
});

describe("dates", () => {
  const fate = (date: string, answers = usual) => readText(`Date,Sample,Pb (ppm)\n${date},mug,12\n`, answers);
  it.each([
    ["01.01.1900", "date-too-early"],
    ["2026-12-24", "date-in-future"],
    ["31.06.2026", "date-unreadable"],
    ["2026-10-25 01:30", "time-twice"],
    ["2026-03-29 01:30", "time-never"],
  ])("%s is set aside: %s", (date, code) => {
    expect(codesOf(fate(date))).toEqual([code]);
  });
  it.each([
    ["2026-05-03", null, "2026-05-03"],
    ["2026-05-03 23:30", "2026-05-03T23:30:00+01:00", "2026-05-03"],
    ["2026-05-03T23:30:00-05:00", "2026-05-03T23:30:00-05:00", "2026-05-03"],
  ])("%s is taken at %s", (date, takenAt, takenOn) => {
    expect(fate(date).readings[0]).toMatchObject({ takenAt, takenOn });
  });
  it("a zone column speaks for its row", () => {
    const { readings, setAside } = readText(
      "Date,Time,Time zone,Sample,Pb (ppm)\n2026-05-03,10:00,Asia/Tokyo,mug,1\n2026-05-03,10:00,+01:00,mug,1\n2026-05-03,10:00,noon,mug,1\n",
    );
    expect(readings.map((r) => r.takenAt)).toEqual(["2026-05-03T10:00:00+09:00", "2026-05-03T10:00:00+01:00"]);
    expect(setAside[0]!.problems).toMatchObject([{ code: "time-zone-unknown", column: "Time zone", found: "noon" }]);
  });
});

describe("rows that do not become readings", () => {
  it("name row, column, what was found and what was expected", () => {
    const { setAside } = readText("Sample,Pb (ppm),±\nmug,12\n\u202egum,1e400,-1\nMean,3,1\n");
    expect(setAside).toEqual([
      {
        ...{ row: 2, cells: ["mug", "12"] },
        problems: [
          { code: "row-width", column: null, found: "2 cells", expected: "3 cells, as in the header on line 1" },
        ],
      },
      {
        ...{ row: 3, cells: ["\u202egum", "1e400", "-1"] },
        problems: [
          expect.objectContaining({ code: "direction-control", column: "Sample", found: "U+202Egum" }),
          expect.objectContaining({ code: "number-too-large", column: "Pb (ppm)", found: "1e400" }),
        ],
      },
      {
        row: 4,
        cells: ["Mean", "3", "1"],
        problems: [expect.objectContaining({ code: "summary-row", found: "Mean" })],
      },
    ]);
  });
  it("can be mended by the same rules", () => {
    const table = must(readTable("Sample,Pb (ppm)\nmug,twelve\n"));
    const mapping = must(answerQuestions(settleAndAsk(table, proposeMapping(table).mapping).mapping, usual));
    expect(mendRow(table, mapping, 2, ["mug", "12"], { now })).toMatchObject({
      ok: true,
      reading: { row: 2, sample: "mug" },
    });
    expect(mendRow(table, mapping, 2, ["mug", "<0"], { now })).toMatchObject({
      setAside: { problems: [{ code: "limit-not-positive" }] },
    });
    expect(mendRow(table, mapping, 2, ["mug"], { now })).toMatchObject({
      setAside: { problems: [{ code: "row-width" }] },
    });
    // A decimal where the file never showed its mark: asked, not guessed.
    expect(mendRow(table, mapping, 2, ["mug", "1.5"], { now })).toMatchObject({
      setAside: { problems: [{ code: "decimal-mark-unknown" }] },
    });
  });
});

describe("the long shape", () => {
  const head = "Reading,Date,Sample,Element,Result,±,Unit";
  it("gathers the rows of a shot, wherever they stand, each with its own line and unit", () => {
    const { readings, account } = readText(
      `${head}\n1,2026-05-01,mug,Pb,12,3,ppm\n2,2026-05-01,mug,Pb,13,3,ppm\n1,2026-05-01,mug,Kupfer,0.5,0.1,%\n`,
    );
    expect(account).toEqual({ total: 4, accepted: 3, setAside: 0, blank: 0, header: 1 });
    expect(readings.map((r) => [r.number, r.row, ...r.results.map((one) => `${one.row} ${inShort(one)}`)])).toEqual([
      ["1", 2, "2 Pb=12±3/2 ppm", "4 Cu=0.5±0.1/2 %"],
      ["2", 3, "3 Pb=13±3/2 ppm"],
    ]);
  });
  it("sets aside an element that comes twice, an unknown element, an unknown unit", () => {
    const read = readText(
      `${head}\n1,,mug,Pb,12,3,ppm\n1,,mug,Pb,13,3,ppm\n1,,mug,Xx,1,1,ppm\n1,,mug,Hg,1,1,oz\n1,,mug,Cd,1,1,\n`,
    );
    expect(codesOf(read)).toEqual(["element-twice", "element-unreadable", "unit-unknown", "unit-missing"]);
    expect(read.account).toEqual({ total: 6, accepted: 1, setAside: 4, blank: 0, header: 1 });
  });
  it("keeps each row a reading where neither number nor time tells shots apart", () => {
    const { readings } = readText("Sample,Element,Result (ppm)\nmug,Pb,12\nmug,Pb,13\nmug,Cd,1\n");
    expect(readings.length).toBe(3);
  });
});

describe("progress", () => {
  it("comes after each chunk and ends at the total", () => {
    const table = must(readTable(`Sample,Pb (ppm)\n${"mug,12\n".repeat(10)}`));
    const mapping = must(answerQuestions(settleAndAsk(table, proposeMapping(table).mapping).mapping, usual));
    const seen: number[][] = [];
    must(readRows(table, mapping, { chunkSize: 4, onProgress: (done, total) => seen.push([done, total]) }));
    expect(seen).toEqual([
      [4, 11],
      [8, 11],
      [11, 11],
    ]);
    expect([...readRowsInChunks(table, mapping, { chunkSize: 6 })].length).toBe(2);
  });
});

it("in the wide shape a unit column speaks for the figures whose header has no unit", () => {
  const text =
    "Sample,Units,Mode,Pb,Cd (ppm)\nmug,%,glass,0.5,3\nbib,ppm,plastic,12,4\ntoy,mg/cm2,paint,1,5\ncup,,glass,1,\n";
  const read = readText(text);
  expect(read.readings.map((r) => r.results.map(inShort))).toEqual([
    ["Pb=0.5 %", "Cd=3 ppm"],
    ["Pb=12 ppm", "Cd=4 ppm"],
    ["Pb=1 mg/cm²", "Cd=5 ppm"],
  ]);
  expect(read.readings[2]!.results[0]!.quantity).toBe("coating-areal");
  expect(codesOf(read)).toEqual(["unit-missing"]);
});

it("an answer for all columns without a unit does not overrule a unit column", () => {
  const text = "Sample,Element,Result,Unit\nmug,Pb,0.5,%\nmug,Cd,3,mg/kg\n";
  expect(resultsOf(text, { ...usual, unit: "ppm" })).toEqual(["Pb=0.5 %", "Cd=3 mg/kg"]);
});
