import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { answerQuestions } from "@/lib/readings/answer-questions.ts";
import { decodeBytes } from "@/lib/readings/decode-bytes.ts";
import { settleAndAsk } from "@/lib/readings/open-questions.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { readRows } from "@/lib/readings/read-rows.ts";
import { readTable } from "@/lib/readings/read-table.ts";
import { hostileFiles } from "@/sample-data/hostile-files.ts";

/** What becomes of each hostile file: refused with a code, or read with every row accounted for. Never an exception. */
type Fate = { refused: string[] } | { accepted: number; setAside: string[] };

function fateOf(bytes: Uint8Array): Fate {
  const decoded = decodeBytes(bytes);
  if (!decoded.ok) return { refused: decoded.problems.map((p) => p.code) };
  const table = readTable(decoded.value.text);
  if (!table.ok) return { refused: table.problems.map((p) => p.code) };
  const { mapping } = settleAndAsk(table.value, proposeMapping(table.value).mapping);
  const answered = answerQuestions(mapping, {
    k: 1,
    timeZone: "Europe/Berlin",
    quantity: "bulk-mass-fraction",
    notAvailable: "not-measured",
  });
  if (!answered.ok) return { refused: answered.problems.map((p) => p.code) };
  const read = readRows(table.value, answered.value, { now: Date.parse("2026-11-24T12:00:00Z") });
  if (!read.ok) return { refused: read.problems.map((p) => p.code) };
  const { account, setAside, readings } = read.value;
  expect(account.accepted + account.setAside + account.blank + account.header).toBe(account.total);
  for (const r of readings.flatMap((one) => one.results)) {
    expect(r.value === null || Number.isFinite(r.value.value)).toBe(true);
  }
  return { accepted: account.accepted, setAside: setAside.flatMap((s) => s.problems.map((p) => p.code)) };
}

describe("hostile files", () => {
  it.each(hostileFiles)("$name ($about) are the bytes on disk", ({ name, bytes }) => {
    const path = fileURLToPath(new URL(`../../sample-data/files/hostile/${name}`, import.meta.url));
    expect(Buffer.compare(readFileSync(path), Buffer.from(bytes))).toBe(0);
  });

  it("each have their answer", () => {
    const fates = Object.fromEntries(hostileFiles.map(({ name, bytes }) => [name, fateOf(bytes)]));
    expect(fates).toEqual({
      "empty.csv": { refused: ["file-empty"] },
      "only-spaces.csv": { refused: ["file-blank"] },
      "header-only.csv": { refused: ["no-rows"] },
      "truncated.csv": { refused: ["quote-not-closed"] },
      "cut-inside-a-letter.csv": { accepted: 3, setAside: ["row-width"] },
      "utf16-without-mark.csv": { accepted: 3, setAside: [] },
      "mixed-separators.csv": { refused: ["mixed-separators"] },
      "both-decimal-marks.csv": { refused: ["ask-decimal"] },
      "formulas.csv": { accepted: 0, setAside: ["formula", "formula", "formula", "formula"] },
      "bidi-controls.csv": {
        accepted: 0,
        setAside: ["direction-control", "control-character", "not-a-number", "direction-control"],
      },
      // "NaN", taken as not measured, leaves a row with nothing in it.
      "monstrous-numbers.csv": {
        accepted: 0,
        setAside: ["number-too-large", "number-too-small", "nothing-measured", "not-a-number", "not-a-number"],
      },
      "nul-bytes.csv": { refused: ["nul-bytes"] },
      "two-tables.csv": { refused: ["two-tables"] },
      "year-1900.csv": { accepted: 1, setAside: ["date-too-early", "date-in-future"] },
      "one-unit-missing.csv": { refused: ["ask-unit"] },
      "picture-renamed.csv": { refused: ["file-not-text"] },
    });
  });
});
