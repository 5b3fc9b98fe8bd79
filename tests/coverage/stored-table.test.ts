import { describe, expect, it } from "vitest";
import { type Cell, grid, simulateBlock } from "@/commands/coverage/cells.ts";
import { tableAsData } from "@/commands/coverage/table-as-data.ts";
import { shortfallsOf } from "@/lib/reconcile/honest-intervals.ts";
import { method } from "@/lib/reconcile/reconcile.ts";
import { defaultPolicy } from "@/lib/reconcile/types.ts";
import { coverageCells, coverageMadeBy, coverageTableIn } from "@/lib/wording/coverage-table.ts";

const nameOf = ({ shape, spots, spread, u, below }: Cell): string => [shape, spots, spread, u, below].join(" ");

describe("the table of honest intervals on the methods page", () => {
  it("was made by the method and the policy in force", () => {
    expect(coverageMadeBy).toEqual({ version: method.version, policy: defaultPolicy.version });
  });
  it("has every cell of the grid once, with the same parts or more in each", () => {
    expect(coverageCells.map(nameOf)).toEqual(grid(false).map(nameOf));
    for (const cell of coverageCells) expect(cell.trials, nameOf(cell)).toBeGreaterThanOrEqual(500);
  });
  it("is written by the command in the shape that is kept", () => {
    const cell = { shape: "even", spots: 3, spread: 0, u: 0.03, below: 0, trials: 10, stated: 1, covered: 1 } as const;
    const rest = { unsafe: 0, medianWidth: 0.15, wrongBelow: [0, 0.1], wrongByBound: 0, wrongAbove: [0, 0] } as const;
    const data = JSON.parse(tableAsData([{ ...cell, ...rest } as never]));
    expect(Object.fromEntries(data.columns.map((name: string, place: number) => [name, data.rows[0][place]]))).toEqual({
      ...cell,
      ...rest,
      wrongBelow: 0.1,
      wrongAbove: 0,
    });
  });
  // A new simulation, with random numbers of its own, of the kinds that were hardest: what is kept must be what the method does now.
  it.each([
    ["lognormal", 3, 1, 0.15, 0.4],
    ["lognormal", 4, 1, 0.03, 0],
    ["gamma", 5, 0.6, 0.3, 0.2],
    ["normal", 10, 0.3, 0.03, 0.5],
    ["even", 5, 0, 0.15, 0.2],
  ] as const)(
    "agrees with simulating %s contents, %d spots, spread %d, u %d, %d unseen anew",
    (shape, spots, spread, u, below) => {
      const cell = { shape, spots, spread, u, below };
      const kept = coverageCells.find((one) => nameOf(one) === nameOf(cell));
      const anew = simulateBlock(cell, 1_000_000, 400);
      // Four standard errors of the difference of two shares: once in some 3,000 cells by chance; seeded, so always or never.
      const agree = (a: number, b: number, na: number, nb: number) => {
        const pooled = (a * na + b * nb) / (na + nb);
        expect(Math.abs(a - b)).toBeLessThanOrEqual(4 * Math.sqrt(pooled * (1 - pooled) * (1 / na + 1 / nb)) + 1e-12);
      };
      if (!kept) throw new Error("the cell is not in the table");
      const stated = kept.stated * kept.trials;
      agree(kept.stated, anew.stated / 400, kept.trials, 400);
      agree(kept.covered, anew.covered / anew.stated, stated, anew.stated);
      agree(kept.unsafe, anew.unsafe / anew.stated, stated, anew.stated);
      agree(kept.wrongBelow, Math.max(...anew.below) / 400, kept.trials, 400);
      expect(Math.log(kept.medianWidth / (anew.medianWidth ?? 0))).toBeLessThan(0.5);
    },
  );
  it("says in words which kinds fall short, with their number of parts, and marks them in their own rows", () => {
    const short = coverageCells.filter((cell) => shortfallsOf(cell).some(({ explained }) => !explained));
    expect(coverageTableIn.en.short).toHaveLength(short.length);
    for (const sentence of coverageTableIn.en.short) expect(sentence).toMatch(/times in 100.*\(\d+ parts\)\.$/);
    const texts = coverageTableIn.en.groups.flatMap(({ lines }) => lines.flatMap(({ cells }) => cells));
    expect(texts).toHaveLength(coverageCells.length);
    expect(texts.filter((text) => text.startsWith("Falls short"))).toHaveLength(short.length);
    expect(texts.every((text) => /held \d+\.\d\u00A0%/.test(text))).toBe(true);
    expect(coverageTableIn.en.lead).toContain(`${coverageCells.length - short.length} meet our aims`);
  });
});
