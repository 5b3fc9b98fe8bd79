/**
 * npm run search-check [-- --items 1000,10000,100000]
 *
 * Fills a registry with the invented scenario's items and so many generated ones, asks what people would type, and prints how
 * often the item asked for is among the first three, how often a thing that is not there finds nothing, and the times of search and suggestions
 * beside the bare full-text query in the same run. Ends non-zero below 95 % right.
 */

import { join } from "node:path";
import { parseArgs } from "node:util";
import { z } from "zod";
import { type Database, openDatabase } from "../lib/store/database.ts";
import { searchPublished } from "../lib/store/search.ts";
import { scenario } from "../sample-data/scenario.ts";
import { randomFrom } from "./coverage/random.ts";
import { inventedItem } from "./registry/invented-items.ts";
import { knownQueries as lists } from "./registry/known-queries.ts";
import { madeRegistry } from "./registry/made.ts";
import { askedFor } from "./registry/mangle.ts";
import { printSpeeds } from "./registry/speeds.ts";

const { values } = parseArgs({ options: { items: { type: "string", default: "1000" } } });
const sizes = values.items.split(",").map((text) => z.coerce.number().int().min(100).max(1_000_000).parse(text));

let wrong = 0;
for (const size of sizes) wrong += await check(size);
process.exitCode = wrong > 0 ? 1 : 0;

async function check(size: number): Promise<number> {
  const db = openDatabase(join(await madeRegistry(size), "registry.db"));
  console.log(`\n${size} generated items and ${scenario.items.length} of the scenario`);
  const wrong = await rightness(db, size);
  await printSpeeds(db, size);
  await db.$disconnect();
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
