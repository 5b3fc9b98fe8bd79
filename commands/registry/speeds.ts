import { readQuestion } from "../../lib/search/read-question.ts";
import type { Database } from "../../lib/store/database.ts";
import { searchPublished, suggestItems } from "../../lib/store/search.ts";
import { randomFrom } from "../coverage/random.ts";
import { inventedItem } from "./invented-items.ts";
import { knownQueries } from "./known-queries.ts";
import { askedFor } from "./mangle.ts";

export type Spread = { median: number; p95: number; worst: number; slowest: string };
export type Speeds = { bare: Spread; search: Spread; suggestions: Spread };

/** Common words, single letters, a question of 10,000 characters: what costs most. */
const hard = [
  ...["mug", "red", "pattern", "a", "p", "blue plate", "spoon with ivy", "number", "snail", "1950s"],
  "red mug with daisy pattern ".repeat(400).slice(0, 10_000),
];

/** 500 varied questions: common words, letters, marks, slips, codes, nonsense. The same ones for the same size. */
export function variedQuestions(size: number): string[] {
  const random = randomFrom(9);
  return Array.from({ length: 500 }, (_, i) => {
    if (i % 5 === 0) return hard[(i / 5) % hard.length] as string;
    if (i % 5 === 1) return knownQueries.find[i % knownQueries.find.length]?.q ?? "";
    if (i % 25 === 2) return knownQueries.none[i % knownQueries.none.length] ?? "";
    return askedFor(random, inventedItem(Math.floor(random.uniform() * size)));
  });
}

/** The process's own time: SQLite answers in it, and waiting for other work on the machine counts for nobody. */
function processorMs(since?: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(since);
  return (user + system) / 1000;
}

/** Milliseconds of search and suggestions beside the bare index query for the same words, in one run and in turn. */
export async function measuredSpeeds(db: Database, size: number): Promise<Speeds> {
  const bareQuery = async (q: string) => {
    const words = readQuestion(q).groups.map(({ word }) => `"${word}"*`);
    if (words.length > 0)
      await db.$queryRaw`SELECT rowid FROM item_search WHERE item_search MATCH ${words.join(" ")} ORDER BY rank LIMIT 20`;
  };
  const asks = {
    bare: bareQuery,
    search: (q: string) => searchPublished({ q }, db),
    suggestions: (q: string) => suggestItems(q, 8, db),
  };
  const questions = variedQuestions(size);
  for (const q of questions.slice(0, 20)) for (const ask of Object.values(asks)) await ask(q);
  const times: Record<keyof typeof asks, { q: string; ms: number }[]> = { bare: [], search: [], suggestions: [] };
  for (const q of questions)
    for (const [name, ask] of Object.entries(asks) as [keyof typeof asks, (q: string) => Promise<unknown>][]) {
      const start = process.cpuUsage();
      await ask(q);
      times[name].push({ q, ms: processorMs(start) });
    }
  return { bare: spreadOf(times.bare), search: spreadOf(times.search), suggestions: spreadOf(times.suggestions) };
}

function spreadOf(times: { q: string; ms: number }[]): Spread {
  const sorted = [...times].sort((a, b) => a.ms - b.ms);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
  return { median: at(0.5).ms, p95: at(0.95).ms, worst: at(1).ms, slowest: at(1).q };
}

export async function printSpeeds(db: Database, size: number): Promise<Speeds> {
  const speeds = await measuredSpeeds(db, size);
  console.log("500 questions, processor ms  median     p95   worst   p95 beside the bare index query");
  const names = { bare: "bare index query", search: "search", suggestions: "suggestions" } as const;
  for (const [key, name] of Object.entries(names) as [keyof Speeds, string][]) {
    const { median, p95, worst, slowest } = speeds[key];
    console.log(
      `  ${name.padEnd(24)} ${median.toFixed(1).padStart(8)} ${p95.toFixed(1).padStart(7)} ${worst.toFixed(1).padStart(7)}   ${(p95 / speeds.bare.p95).toFixed(2)} ×   slowest: ${slowest.slice(0, 40)}`,
    );
  }
  return speeds;
}
