import { type Answers, answerQuestions } from "@/lib/readings/answer-questions.ts";
import { settleAndAsk } from "@/lib/readings/open-questions.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { type ReadRows, readRows } from "@/lib/readings/read-rows.ts";
import { readTable } from "@/lib/readings/read-table.ts";
import type { ElementResult } from "@/lib/readings/reading.ts";

export const must = <T>(outcome: { ok: true; value: T } | { ok: false; problems: unknown }): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
export const now = Date.parse("2026-11-24T12:00:00Z");
export const usual: Answers = { k: 2, timeZone: "Europe/Lisbon", quantity: "bulk-mass-fraction" };

/** Text → rows, as a tester would who accepts the proposal and gives these answers. */
export function readText(text: string, answers: Answers = usual): ReadRows {
  const table = must(readTable(text));
  const { mapping } = settleAndAsk(table, proposeMapping(table).mapping);
  return must(readRows(table, must(answerQuestions(mapping, answers)), { now }));
}

export const askedIn = (text: string): string[] => {
  const table = must(readTable(text));
  return settleAndAsk(table, proposeMapping(table).mapping).questions.map((question) => question.id);
};

/** "Pb=12.5±3/2 ppm", "Cd<7 ppm", "Cd<? ppm": one result in one line, for comparison. */
export const inShort = (result: ElementResult): string => {
  const figure = result.belowDetection
    ? `<${result.detectionLimit?.text ?? "?"}`
    : `=${result.value!.text}${result.error ? `±${result.error.text}/${result.k}` : ""}`;
  return `${result.element}${figure} ${result.unit}`;
};
export const codesOf = ({ setAside }: ReadRows): string[] => setAside.flatMap((row) => row.problems.map((p) => p.code));
