import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { answerQuestions } from "@/lib/readings/answer-questions.ts";
import { openFile } from "@/lib/readings/open-file.ts";
import { settleAndAsk } from "@/lib/readings/open-questions.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { readRows } from "@/lib/readings/read-rows.ts";
import { hostileFiles } from "@/sample-data/hostile-files.ts";

/** What becomes of each hostile file: refused with a code, or read with every row accounted for. Never an exception. */
type Fate = { refused: string[] } | { accepted: number; setAside: string[] };

async function fateOf(bytes: Uint8Array): Promise<Fate> {
  const opened = await openFile(bytes);
  if (!opened.ok) return { refused: opened.problems.map((p) => p.code) };
  const { table } = opened.value;
  const { mapping } = settleAndAsk(table, proposeMapping(table).mapping);
  const answered = answerQuestions(mapping, {
    k: 1,
    timeZone: "Europe/Berlin",
    quantity: "bulk-mass-fraction",
    notAvailable: "not-measured",
  });
  if (!answered.ok) return { refused: answered.problems.map((p) => p.code) };
  const read = readRows(table, answered.value, { now: Date.parse("2026-11-24T12:00:00Z") });
  if (!read.ok) return { refused: read.problems.map((p) => p.code) };
  const { account, setAside, readings } = read.value;
  expect(account.accepted + account.setAside + account.blank + account.header).toBe(account.total);
  for (const r of readings.flatMap((one) => one.results)) {
    expect(r.value === null || Number.isFinite(r.value.value)).toBe(true);
  }
  return { accepted: account.accepted, setAside: setAside.flatMap((s) => s.problems.map((p) => p.code)) };
}

describe("hostile files", () => {
  it.each(hostileFiles)("$name ($about) are the bytes on disk", async ({ name, bytes }) => {
    const path = fileURLToPath(new URL(`../../sample-data/files/hostile/${name}`, import.meta.url));
    const onDisk = readFileSync(path);
    // Another version of zlib packs a workbook otherwise; what becomes of it is the same.
    if (/\.(?:xlsx|ods)$/.test(name)) expect(await fateOf(onDisk)).toEqual(await fateOf(bytes));
    else expect(Buffer.compare(onDisk, Buffer.from(bytes))).toBe(0);
  });

  it("each have their answer", async () => {
    const fates = Object.fromEntries(
      await Promise.all(hostileFiles.map(async ({ name, bytes }) => [name, await fateOf(bytes)] as const)),
    );
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
      "locked.ods": { refused: ["spreadsheet-encrypted"] },
      "broken.xlsx": { refused: ["spreadsheet-broken"] },
      "bomb.xlsx": { refused: ["spreadsheet-unpacks-too-large"] },
      "bomb-that-lies.xlsx": { refused: ["spreadsheet-broken"] },
      "one-cell-repeated.ods": { refused: ["spreadsheet-too-many-cells"] },
      "formula-never-worked-out.xlsx": { accepted: 1, setAside: ["formula"] },
    });
  });
});
