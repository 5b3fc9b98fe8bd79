import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { grid, simulateCell } from "@/commands/coverage/cells.ts";
import { randomFrom } from "@/commands/coverage/random.ts";
import { shortfalls } from "@/commands/coverage/table.ts";
import { verdictAgainst } from "@/commands/coverage/verdict.ts";
import { missed, resultOf, seen } from "../reconcile/shots.ts";

describe("the coverage simulation", () => {
  it("covers even parts as often as it says, and never calls them wrongly", () => {
    const cell = simulateCell({ shape: "even", spots: 5, spread: 0, u: 0.03, below: 0 }, 400);
    expect(cell.stated).toBe(1);
    expect(cell.covered).toBeGreaterThan(0.94);
    expect(cell.wrongBelow).toEqual([0, 0]);
    expect(cell.medianWidth).toBeGreaterThan(0.05);
    expect(cell.medianWidth).toBeLessThan(0.12);
    expect(shortfalls(cell)).toEqual([]);
  });
  it("is the same every time for one cell", () => {
    const cell = { shape: "gamma", spots: 3, spread: 0.3, u: 0.15, below: 0.2 } as const;
    expect(simulateCell(cell, 20)).toEqual(simulateCell(cell, 20));
  });
  it("names what falls short, beyond what the number of trials explains", () => {
    const cell = simulateCell({ shape: "even", spots: 3, spread: 0, u: 0.03, below: 0 }, 10);
    expect(
      shortfalls({ ...cell, trials: 10_000, stated: 1, covered: 0.9, unsafe: 0.08, wrongBelow: [0, 0.2] }),
    ).toEqual(["covered 0.900", "unsafe 0.080", 'wrong "below" 0.200 (0.000 from a bound)']);
    expect(shortfalls({ ...cell, trials: 100, stated: 1, covered: 0.91, unsafe: 0.04, wrongBelow: [0, 0] })).toEqual(
      [],
    );
  });
  it("draws contents with the mean and spread it claims", () => {
    const random = randomFrom(7);
    const draws = Array.from({ length: 40_000 }, () => random.gamma(4) / 4);
    const mean = draws.reduce((sum, x) => sum + x, 0) / draws.length;
    const spread = Math.sqrt(draws.reduce((sum, x) => sum + (x - mean) ** 2, 0) / draws.length);
    expect(mean).toBeCloseTo(1, 1);
    expect(spread).toBeCloseTo(0.5, 1);
  });
  it("has every cell of the method's grid, and no normal contents that would lie below zero", () => {
    const cells = grid(false);
    expect(new Set(cells.map((cell) => cell.spots))).toEqual(new Set([3, 4, 5, 7, 10]));
    expect(cells.some((cell) => cell.shape === "normal" && cell.spread > 0.3)).toBe(false);
    expect(Math.max(...cells.map((cell) => cell.spread))).toBe(1);
  });
  it("decides by the method's step 9", () => {
    const clear = resultOf([seen(100, 2), seen(101, 2), seen(99, 2)]);
    expect([50, 100, 150].map((limit) => verdictAgainst(clear, limit))).toEqual(["above", "open", "below"]);
    expect([5, 15, 27].map((limit) => verdictAgainst(resultOf([missed(10), missed(8)]), limit))).toEqual([
      "open",
      "open",
      "below",
    ]);
    const uneven = resultOf([seen(120, 4), seen(60, 3), seen(210, 6), seen(95, 3), seen(150, 5)]);
    const upper = uneven.interval?.[1] ?? 0;
    expect([upper * 0.99, upper * 1.01].map((limit) => verdictAgainst(uneven, limit))).toEqual(["open", "below"]);
  });
  it("runs as a command and refuses a number of trials that is none", () => {
    const root = fileURLToPath(new URL("../..", import.meta.url));
    const run = spawnSync(process.execPath, ["commands/coverage.mjs", "--trials", "none"], {
      cwd: root,
      encoding: "utf8",
    });
    expect(run.status).toBe(2);
    expect(run.stderr).toContain("--trials");
  });
});
