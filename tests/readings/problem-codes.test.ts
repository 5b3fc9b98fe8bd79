import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Problem } from "@/lib/quantity/problem.ts";
import { answerQuestions } from "@/lib/readings/answer-questions.ts";
import { openFile } from "@/lib/readings/open-file.ts";
import { settleAndAsk } from "@/lib/readings/open-questions.ts";
import { fileProblemCodes, mappingProblemCodes, questionCodes, rowProblemNotes } from "@/lib/readings/problem-codes.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { readRows } from "@/lib/readings/read-rows.ts";
import { rowProblemCodes } from "@/lib/readings/row-problem.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { readingProblems } from "@/lib/wording/reading-problems.ts";
import { hostileFiles } from "@/sample-data/hostile-files.ts";
import { now, usual } from "./read-text.ts";

const listed = new Set(
  [fileProblemCodes, mappingProblemCodes, questionCodes, rowProblemNotes].flatMap((codes) => Object.keys(codes)),
);

describe("problem codes", () => {
  it("are all that the room emits, by its source", () => {
    const folder = new URL("../../lib/readings/", import.meta.url);
    const source = readdirSync(folder)
      .filter((name) => name.endsWith(".ts"))
      // The list itself; questions of the mapping; a moment typed into a form, whose sentences are those of sittings.
      .filter((name) => !["problem-codes.ts", "propose-mapping.ts", "local-moment.ts"].includes(name))
      .map((name) => readFileSync(new URL(name, folder), "utf8"))
      .join("\n");
    const emitted = [...source.matchAll(/(?:code: |rowProblem\(\s*|trouble\()"([a-z-]+)"/g)].map((match) => match[1]!);
    expect(emitted.length).toBeGreaterThan(30);
    expect(emitted.filter((code) => !listed.has(code))).toEqual([]);
  });
  it("have one sentence each, and a row's has what was expected", () => {
    expect(new Set(Object.keys(readingProblems))).toEqual(listed);
    expect(new Set(rowProblemCodes)).toEqual(new Set(Object.keys(rowProblemNotes)));
  });
  it.each([...listed])("%s: a sentence that says where and what, without a gap", (code) => {
    const sentence = problemSentence({ code, where: { row: 7, column: "Pb" }, found: "FOUND", allowed: "ALLOWED" });
    expect(sentence).toMatch(/^[A-Z“].*[.]$/s);
    expect(sentence).not.toMatch(/undefined|null|NaN|\?\?|\s{2}/);
    expect(sentence.split(/\s+/).length).toBeLessThan(50);
  });
});

/** The first thing a person is told about a hostile file: refused, or the rows set aside. */
async function told(bytes: Uint8Array): Promise<string[]> {
  const opened = await openFile(bytes);
  const outcome = ((): { problems: Problem[] } => {
    if (!opened.ok) return opened;
    const { table } = opened.value;
    const { mapping } = settleAndAsk(table, proposeMapping(table).mapping);
    const answered = answerQuestions(mapping, { ...usual, k: 1 });
    if (!answered.ok) return answered;
    const read = readRows(table, answered.value, { now });
    if (!read.ok) return read;
    return {
      problems: read.value.setAside.flatMap((row) =>
        row.problems.map((p) => ({
          code: p.code,
          where: { row: row.row, ...(p.column ? { column: p.column } : {}) },
          found: p.found,
          allowed: p.expected,
        })),
      ),
    };
  })();
  return outcome.problems.map(problemSentence);
}

describe("each hostile file has a clear answer", () => {
  it.each(hostileFiles.filter((file) => file.name !== "utf16-without-mark.csv"))("$name: $about", async ({ bytes }) => {
    const sentences = await told(bytes);
    expect(sentences.length).toBeGreaterThan(0);
    for (const sentence of sentences) expect(sentence).toMatch(/[.]$/);
  });
  it("in words, for some", async () => {
    const first = async (name: string) => (await told(hostileFiles.find((file) => file.name === name)!.bytes))[0];
    expect(await first("picture-renamed.csv")).toBe(
      "This is a PNG image, whatever its name says. Save the readings as text with separators (CSV) or as a workbook (XLSX or ODS) and choose that file.",
    );
    expect(await first("two-tables.csv")).toBe(
      "A second table with other columns begins on line 6 (Name, Street, Town); the first has its header on line 1. Put each table into a file of its own.",
    );
    expect(await first("year-1900.csv")).toBe(
      "In row 2, column “Clock”: the date “1900-01-01 00:00:00” is before 1990, when there were no such analysers: the instrument's clock was not set. Correct it, or empty the cell.",
    );
    expect(await first("one-unit-missing.csv")).toBe(
      "In row 2, column “Cd”: the file gives no unit for figures such as “55.0”. Say which it is: ppm, mg/kg, %, µg/cm² or mg/cm².",
    );
  });
});
