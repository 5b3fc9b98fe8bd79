import { expect, it } from "vitest";
import { answerQuestions } from "@/lib/readings/answer-questions.ts";
import { decodeBytes } from "@/lib/readings/decode-bytes.ts";
import { settleAndAsk } from "@/lib/readings/open-questions.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { readRows } from "@/lib/readings/read-rows.ts";
import { readTable } from "@/lib/readings/read-table.ts";
import { must, now, usual } from "./read-text.ts";

/** Invented: 100,000 rows of 40 columns, three in ten results not detected, one row in a thousand spoilt. */
function longFile(rows: number): Uint8Array {
  const symbols = "Pb Cd As Hg Cr Sb Ba Se Zn Cu Ni Sn".split(" ");
  const header = [
    "Reading No",
    "Date",
    "Time",
    "Sample",
    ...symbols.flatMap((s) => [`${s} (ppm)`, `${s} ±2σ`, `${s} LOD`]),
  ];
  const lines = [header.join(",")];
  for (let at = 0; at < rows; at++) {
    const moment = new Date(Date.UTC(2025, 0, 1) + at * 60_000).toISOString();
    const results = symbols.flatMap((_, n) =>
      (at + n * 7) % 10 < 3 ? ["<LOD", "", "4.25"] : [`${((at * 31 + n * 17) % 9999) / 10 + 1.1}`, "2.75", "4.25"],
    );
    if (at % 1000 === 999) results[0] = "spoilt";
    lines.push([at + 1, moment.slice(0, 10), moment.slice(11, 19), `"Mug ${at % 500}"`, ...results].join(","));
  }
  return new TextEncoder().encode(`${lines.join("\n")}\n`);
}

it("100,000 rows of 40 columns are read, every row accounted for, with progress on the way", {
  timeout: 120_000,
}, () => {
  const table = must(readTable(must(decodeBytes(longFile(100_000))).text));
  const { mapping } = settleAndAsk(table, proposeMapping(table).mapping);
  const seen: number[] = [];
  const options = { now, onProgress: (done: number) => seen.push(done) };
  const { account, readings } = must(readRows(table, must(answerQuestions(mapping, usual)), options));
  expect(account).toEqual({ total: 100_001, accepted: 99_900, setAside: 100, blank: 0, header: 1 });
  expect(readings.length).toBe(99_900);
  expect(readings.at(-2)!.results.length).toBe(12);
  expect(seen.length).toBeGreaterThan(40);
});
