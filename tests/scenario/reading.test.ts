import { describe, expect, it } from "vitest";
import type { ElementResult } from "@/lib/readings/reading.ts";
import { spoilt } from "@/sample-data/file-writers.ts";
import { makeFiles } from "@/sample-data/make-files.ts";
import { scenario } from "@/sample-data/scenario.ts";
import type { ScenarioFile } from "@/sample-data/scenario-types.ts";
import type { ShotResult } from "@/sample-data/simulate-shots.ts";
import { readScenarioFile } from "./read-scenario.ts";

/** Each invented file is read by lib/readings with the answers that scenario.ts states, and gives back what was written. */
const made = new Map(makeFiles().map((f) => [f.name, f]));
const files = scenario.files.map((file) => ({ name: file.name, file, result: readScenarioFile(file) }));

describe.each(files)("$name", ({ file, result }) => {
  it("is recognised: encoding, delimiter, decimal mark, shape, header", () => {
    const { answers } = file;
    expect({
      encoding: result.encoding,
      delimiter: result.table.delimiter,
      decimal: result.mapping.decimal,
      shape: result.mapping.shape,
      headerLine: result.table.headerLine,
    }).toEqual({
      encoding: answers.encoding,
      delimiter: answers.delimiter,
      decimal: answers.decimal,
      shape: answers.shape === "reading-per-row" ? "wide" : "long",
      headerLine: answers.headerRow,
    });
  });

  it("names sample and spot in the columns that scenario.ts says", () => {
    expect(result.mapping.sample).toEqual([file.answers.sampleColumn]);
    expect(result.mapping.roles.spot).toBe(file.answers.spotColumn);
  });

  it("asks nothing that scenario.ts does not answer", () => {
    const answered = ["k", "time-zone", "quantity", ...(file.answers.unit ? ["unit"] : [])];
    for (const q of result.questions) expect(answered).toContain(q.id);
  });

  it("accounts for every row as scenario.ts says", () => {
    expect(result.account).toEqual(file.rows);
    expect(result.readings.length).toBe(file.shots);
  });

  it("gives back every shot that was written: number, sample, spot, seconds, time, values, limits", () => {
    const lost = file.name === "ugly-day.csv" ? new Set(spoilt.map((s) => s.shot)) : new Set<number>();
    const shots = made.get(file.name)!.shots.filter((_, i) => !lost.has(i));
    result.readings.forEach((reading, i) => {
      const shot = shots[i]!;
      expect(Number(reading.number!.replace(/\D/g, ""))).toBe(shot.number);
      expect([reading.sample, reading.spot, reading.mode]).toEqual([shot.sample, shot.spot, shot.mode]);
      expect(reading.secondsCounted).toBe(shot.seconds);
      expect(reading.takenAt!.slice(0, 19)).toBe(shot.at.toISOString().slice(0, 19));
      // A line break inside a remark is read as a space; the raw file keeps it.
      expect(reading.note ?? "").toBe(shot.remark.replace(/\s+/g, " "));
      expect(reading.results.map((r) => r.element).sort()).toEqual(shot.results.map((r) => r.element).sort());
      for (const written of shot.results) {
        expectSame(reading.results.find((r) => r.element === written.element)!, written, file);
      }
    });
  });

  it("sets aside the spoilt cells and the summary rows, and nothing else", () => {
    const codes = result.setAside.flatMap((row) => row.problems.map((p) => p.code));
    const summaries = codes.filter((c) => c === "summary-row").length;
    expect(summaries).toBe(file.name === "ugly-day.csv" || file.name.startsWith("pruefbuch") ? 2 : 0);
    expect(codes.length - summaries).toBe(file.name === "ugly-day.csv" ? spoilt.length : 0);
  });
});

/** Equal to half a unit of the last digit written, in the unit written. */
function expectSame(result: ElementResult, written: ShotResult, file: ScenarioFile): void {
  const scale = result.unit === "%" ? 1e-4 : 1;
  expect(result.belowDetection).toBe(!written.detected);
  expect(result.quantity).toBe(file.answers.quantity);
  const near = (read: { value: number; decimals: number } | null, meant: number) =>
    expect(Math.abs(read!.value - meant * scale)).toBeLessThanOrEqual(0.5 * 10 ** -read!.decimals + 1e-9);
  if (!written.detected) {
    near(result.detectionLimit, written.limit);
    return;
  }
  near(result.value, written.value);
  near(result.error, written.u * file.answers.errorK);
  expect(result.k).toBe(file.answers.errorK);
}
