import { readFileSync } from "node:fs";
import { expect } from "vitest";

/**
 * Holds a result to a figure as its source prints it: within half a unit of the last printed digit. `units` widens that
 * where the source is known to have cut digits off or to have rounded on the way; the test then says so.
 */
export function printed(what: string, got: number | null | undefined, text: string, units = 0.5): void {
  const match = /^-?\d*\.?(\d*)(?:[eE]([-+]?\d+))?$/.exec(text);
  if (!match) throw new Error(`not a printed number: ${text}`);
  const lastDigit = 10 ** (Number(match[2] ?? 0) - (text.includes(".") ? (match[1] as string).length : 0));
  const expected = Number(text);
  // The last term is for the rounding of the comparison itself, where a result lies exactly between two printed ones.
  const allowed = units * lastDigit + 4 * Number.EPSILON * Math.abs(expected);
  expect(typeof got, what).toBe("number");
  const difference = Math.abs((got as number) - expected);
  expect(difference <= allowed, `${what}: got ${got}, printed ${text}, off by ${difference}`).toBe(true);
}

/** Several at once: names, results and printed figures of one list. */
export function printedList(what: string, got: readonly (number | null)[], texts: string, units = 0.5): void {
  const figures = texts.split(" ");
  expect(got.length, what).toBe(figures.length);
  for (const [i, text] of figures.entries()) printed(`${what}[${i}]`, got[i], text, units);
}

type WorkedExamples = {
  lew: number[];
  mavro: number[];
  michelson: number[];
  lottery: number[];
  silver: number[][];
  silicon: number[][];
  rosner: number[];
  gear: number[][];
  operators: number[][][];
  coal: number[][][];
  creosote: number[][][];
  glucose: Record<"A" | "B" | "C" | "D" | "E", number[][]>;
  glucoseHK: Record<"A" | "B" | "C" | "D" | "E", { h: number[]; k: number[] }>;
  rings: number[][];
  bottles: number[][];
  montgomery: number[];
  criticalValues: { columns: string[]; rows: number[][] };
};

/** Inputs of worked examples that are too long to stand in a test. */
export const worked = JSON.parse(
  readFileSync(new URL("./data/worked-examples.json", import.meta.url), "utf8"),
) as WorkedExamples;

/** Readings with the group they belong to, as `repeatability` takes them. */
export const byLab = (labs: readonly (readonly number[])[]): { lab: number; y: number }[] =>
  labs.flatMap((values, lab) => values.map((y) => ({ lab, y })));
