import { readFileSync } from "node:fs";
import { expect } from "vitest";

/** The reference cases: inputs and expected answers from general statistics packages, with tool and source each. */
export type Tolerance = {
  rel?: number;
  abs?: number;
  exact?: boolean;
  exact_parts_rel?: number;
  monte_carlo_se?: number;
};
export type Case = {
  id: string;
  kind: string;
  name: string;
  // biome-ignore lint/suspicious/noExplicitAny: the shape of a case differs by kind and is checked by its runner
  inputs: any;
  // biome-ignore lint/suspicious/noExplicitAny: as above
  expected: any;
  tolerance: Tolerance;
  tool: string;
  source: string;
};

const file = JSON.parse(readFileSync(new URL("./data/cases.json", import.meta.url), "utf8")) as { cases: Case[] };

export const casesOfKind = (kind: string): Case[] => file.cases.filter((c) => c.kind === kind);
export const kindsOf = (letters: string): string[] =>
  [...new Set(file.cases.map((c) => c.kind))].filter((kind) => letters.includes(kind[0] ?? "-"));
export const titleOf = (c: Case): string => `${c.id} · ${c.name} · ${c.tool} · ${c.source}`;

/** Within the case's own tolerance: |got − expected| ≤ max(abs, rel·|expected|). A null is expected as null or ∞ (undefined). */
export const near = (what: string, got: unknown, expected: number | null, tolerance: Tolerance): void => {
  if (expected === null) {
    expect(got === null || got === undefined || got === Number.POSITIVE_INFINITY, `${what} must be undefined`).toBe(
      true,
    );
    return;
  }
  expect(typeof got, what).toBe("number");
  const allowed = Math.max(tolerance.abs ?? 0, (tolerance.rel ?? 0) * Math.abs(expected));
  const difference = Math.abs((got as number) - expected);
  expect(
    difference <= allowed,
    `${what}: got ${got}, expected ${expected}, off by ${difference}, allowed ${allowed}`,
  ).toBe(true);
};

export const nearPair = (what: string, got: unknown, expected: (number | null)[], tolerance: Tolerance): void => {
  expect(Array.isArray(got), what).toBe(true);
  for (const [i, end] of expected.entries()) near(`${what}[${i}]`, (got as number[])[i], end, tolerance);
};
