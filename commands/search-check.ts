/**
 * npm run search-check [-- --items 1000,10000,100000]
 *
 * Fills a registry with the invented scenario's items and so many generated ones, asks what people would type, and prints how
 * often the item asked for is among the first three, how often a thing that is not there finds nothing, and the times of search and suggestions
 * beside the bare full-text query in the same run. Ends non-zero below 95 % right.
 */

import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { z } from "zod";
import type { Snapshot } from "../lib/publication/snapshot.ts";
import { readQuestion } from "../lib/search/read-question.ts";
import { type Database, openDatabase } from "../lib/store/database.ts";
import { searchPublished, suggestItems } from "../lib/store/search.ts";
import { scenario } from "../sample-data/scenario.ts";
import { sampleSnapshot } from "../tests/support/sample-snapshot.ts";
import { randomFrom } from "./coverage/random.ts";
import { fillRegistry } from "./registry/fill.ts";
import { inventedItem } from "./registry/invented-items.ts";
import { askedFor } from "./registry/mangle.ts";

const here = import.meta.dirname;
const lists = z
  .object({ find: z.array(z.object({ q: z.string(), slug: z.string() })), none: z.array(z.string()) })
  .parse(JSON.parse(readFileSync(join(here, "registry", "queries.json"), "utf8")));

const { values } = parseArgs({ options: { items: { type: "string", default: "1000" } } });
const sizes = values.items.split(",").map((text) => z.coerce.number().int().min(100).max(1_000_000).parse(text));

let wrong = 0;
for (const size of sizes) wrong += await check(size);
process.exitCode = wrong > 0 ? 1 : 0;

function* scenarioItems(): Generator<Snapshot> {
  const base = sampleSnapshot();
  for (const { slug, name, aliases, marks, maker, gtin, category, ageGroup, description } of scenario.items)
    yield {
      ...base,
      slug,
      publishedAt: "2024-12-31T00:00:00.000Z",
      photos: [],
      item: {
        ...{ ...base.item, name, aliases, marks, maker, category, ageGroup, description },
        gtin: gtin === null ? null : gtin.padStart(14, "0"),
      },
    };
}

function* items(size: number): Generator<Snapshot> {
  yield* scenarioItems();
  for (let n = 0; n < size; n++) yield inventedItem(n);
}

async function check(size: number): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), "assay-search-"));
  const file = join(folder, "registry.db");
  const migrated = spawnSync(process.execPath, [join(here, "migrate.mjs"), file], { encoding: "utf8" });
  if (migrated.status !== 0) throw new Error(migrated.stderr);
  const db = openDatabase(file);
  const start = performance.now();
  await fillRegistry(db, items(size), (done) => {
    if (process.stderr.isTTY) process.stderr.write(`\r${done} of ${size} items laid in`);
  });
  console.log(
    `\n${size} generated items and ${scenario.items.length} of the scenario, laid in within ${Math.round((performance.now() - start) / 1000)} s`,
  );
  const wrong = await rightness(db, size);
  await speeds(db, size);
  await db.$disconnect();
  rmSync(folder, { recursive: true, force: true });
  return wrong;
}

/** 84 questions for the scenario's items, 40 for generated ones, 40 for things that are not there. */
async function rightness(db: Database, size: number): Promise<number> {
  const random = randomFrom(4);
  const generated = Array.from({ length: 40 }, () => {
    const item = inventedItem(Math.floor(random.uniform() * size));
    return { q: askedFor(random, item), slug: item.slug };
  });
  const missed: string[] = [];
  for (const { q, slug } of [...lists.find, ...generated]) {
    const first = (await searchPublished({ q, limit: 3 }, db)).hits.map((hit) => hit.entry.slug);
    if (!first.includes(slug)) missed.push(`  “${q}” should find ${slug}; found ${first.join(", ") || "nothing"}`);
  }
  for (const q of lists.none) {
    const { total, hits } = await searchPublished({ q, limit: 3 }, db);
    if (total > 0) missed.push(`  “${q}” should find nothing; found ${hits.map((hit) => hit.entry.slug).join(", ")}`);
  }
  const asked = lists.find.length + generated.length + lists.none.length;
  const right = asked - missed.length;
  console.log(`${right} of ${asked} questions right (${((100 * right) / asked).toFixed(1)} %; goal 95 %)`);
  for (const line of missed) console.log(line);
  return right / asked >= 0.95 ? 0 : 1;
}

/** 500 varied questions: common words, letters, marks, slips, codes, nonsense; each beside the same words as a bare index query. */
async function speeds(db: Database, size: number): Promise<void> {
  const random = randomFrom(9);
  const common = ["mug", "red", "pattern", "a", "p", "blue plate", "spoon with ivy", "number", "snail", "1950s"];
  const questions = Array.from({ length: 500 }, (_, i) => {
    if (i % 5 === 0) return common[(i / 5) % common.length] as string;
    if (i % 5 === 1) return lists.find[i % lists.find.length]?.q ?? "";
    if (i % 25 === 2) return lists.none[i % lists.none.length] ?? "";
    return askedFor(random, inventedItem(Math.floor(random.uniform() * size)));
  });
  const bare = await timesOf(questions, async (q) => {
    const words = readQuestion(q).groups.map(({ word }) => `"${word}"*`);
    if (words.length > 0)
      await db.$queryRaw`SELECT rowid FROM item_search WHERE item_search MATCH ${words.join(" ")} ORDER BY rank LIMIT 20`;
  });
  const search = await timesOf(questions, (q) => searchPublished({ q }, db));
  const suggest = await timesOf(questions, (q) => suggestItems(q, 8, db));
  console.log(`500 questions, ms          median     p95   worst   p95 beside the bare index query`);
  for (const [name, times] of [
    ["bare index query", bare],
    ["search", search],
    ["suggestions", suggest],
  ] as const) {
    const at = (share: number) => times[Math.min(times.length - 1, Math.floor(share * times.length))] ?? 0;
    console.log(
      `  ${name.padEnd(24)} ${at(0.5).toFixed(1).padStart(6)} ${at(0.95).toFixed(1).padStart(7)} ${at(1).toFixed(1).padStart(7)}   ${(at(0.95) / (bare[475] ?? 1)).toFixed(2)} ×`,
    );
  }
}

async function timesOf(questions: string[], ask: (q: string) => Promise<unknown>): Promise<number[]> {
  for (const q of questions.slice(0, 20)) await ask(q);
  const times: number[] = [];
  for (const q of questions) {
    const start = performance.now();
    await ask(q);
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b);
}
