import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { resultOf as addUp, grid, simulateBlock, simulateCell } from "@/commands/coverage/cells.ts";
import { blockKey, keepBlock, keptBlocks } from "@/commands/coverage/kept-blocks.ts";
import { randomFrom } from "@/commands/coverage/random.ts";
import { shortfalls } from "@/commands/coverage/table.ts";
import { verdictAgainst } from "@/commands/coverage/verdict.ts";
import { decide, heldOf } from "@/lib/limits/decide.ts";
import { decisive } from "@/lib/reconcile/reconcile.ts";
import type { ShotInput } from "@/lib/reconcile/types.ts";
import { inputOf, missed, resultOf, seen } from "../reconcile/shots.ts";

const decisiveOf = (shots: ShotInput[]) => decisive(inputOf(shots));

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
    const clear = decisiveOf([seen(100, 2), seen(101, 2), seen(99, 2)]);
    expect([50, 100, 150].map((limit) => verdictAgainst(clear, limit))).toEqual(["above", "open", "below"]);
    const unseen = decisiveOf([missed(10), missed(8)]);
    expect([5, 15, 27].map((limit) => verdictAgainst(unseen, limit))).toEqual(["open", "open", "below"]);
    const uneven = decisiveOf([seen(120, 4), seen(60, 3), seen(210, 6), seen(95, 3), seen(150, 5)]);
    const upper = uneven.interval?.[1] ?? 0;
    expect([upper * 0.99, upper * 1.01].map((limit) => verdictAgainst(uneven, limit))).toEqual(["open", "below"]);
  });
  it("asks for what decides alone, and that is what the whole of reconcile says", () => {
    const random = randomFrom(3);
    for (let part = 0; part < 60; part++) {
      const u = [1, 15, 30][part % 3] as number;
      const shots = Array.from({ length: 2 + (part % 6) }, () => {
        const value = 100 * Math.exp(0.1 * (part % 8) * random.normal()) + u * random.normal();
        return part % 2 === 0 && value < 90 ? missed(90) : seen(value, u);
      });
      const contributions =
        part % 4 === 0 ? [{ code: "calibration", relative: 0.05, type: "B", source: "stated" } as const] : [];
      const [brief, whole] = [decisive(inputOf(shots, { contributions })), resultOf(shots, { contributions })];
      expect(brief).toEqual(Object.fromEntries(Object.keys(brief).map((key) => [key, heldOf(whole)[key as "value"]])));
      for (const value of [50, 90, 110, 200]) {
        const limit = { value, failsAt: ">" } as const;
        expect(decide(brief, limit)).toEqual(decide(heldOf(whole), limit));
      }
    }
  });
  it("makes the same blocks in any order, and adds them up", () => {
    const cell = { shape: "lognormal", spots: 3, spread: 0.3, u: 0.15, below: 0.2 } as const;
    const [second, first] = [simulateBlock(cell, 1, 30), simulateBlock(cell, 0, 30)];
    expect(simulateBlock(cell, 1, 30)).toEqual(second);
    expect(second).not.toEqual(first);
    const both = addUp(cell, [first, second]);
    expect(both.trials).toBe(60);
    expect(both.stated).toBe((first.stated + second.stated) / 60);
    expect(both.covered).toBe((first.covered + second.covered) / (first.stated + second.stated));
  });
  it("keeps finished blocks in a file, goes on from it, and refuses one of another version", () => {
    const directory = mkdtempSync(join(tmpdir(), "coverage-"));
    const file = join(directory, "blocks.jsonl");
    const ask = { cell: { shape: "even", spots: 3, spread: 0, u: 0.03, below: 0 }, block: 0, trials: 20 } as const;
    const block = { ask, tally: simulateBlock(ask.cell, 0, 20) };
    expect(keptBlocks(file)?.size).toBe(0);
    keepBlock(file, block);
    keepBlock(file, { ask: { ...ask, block: 1 }, tally: simulateBlock(ask.cell, 1, 20) });
    const kept = keptBlocks(file);
    expect([...(kept?.keys() ?? [])]).toEqual(["even 3 0 0.03 0 0 20", "even 3 0 0.03 0 1 20"]);
    expect(kept?.get(blockKey(ask))).toEqual(block);
    writeFileSync(file, readFileSync(file, "utf8").replace(/"method":"[^"]*"/, '"method":"0"'));
    expect(keptBlocks(file)).toBeNull();
    rmSync(directory, { recursive: true });
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
