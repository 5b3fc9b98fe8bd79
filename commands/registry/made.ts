import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { sha256 } from "../../lib/platform/sha256.ts";
import type { Snapshot } from "../../lib/publication/snapshot.ts";
import { openDatabase } from "../../lib/store/database.ts";
import { scenario } from "../../sample-data/scenario.ts";
import { sampleSnapshot } from "../../tests/support/sample-snapshot.ts";
import { fillRegistry } from "./fill.ts";
import { inventedItem } from "./invented-items.ts";

const root = join(import.meta.dirname, "..", "..");
/** What a made registry depends on: it is made anew when any of it changes. */
const sources = [
  ...["commands/registry/fill.ts", "commands/registry/invented-items.ts", "lib/store/search-index.ts"],
  ...["lib/search", "prisma/sqlite/migrations", "tests/support/sample-snapshot.ts"],
];

/**
 * A data folder with the invented scenario's items and so many generated ones, ten readings each; kept in .cache, since
 * a hundred thousand take minutes to lay in.
 */
export async function madeRegistry(size: number): Promise<string> {
  const folder = join(root, ".cache", "registries", String(size));
  const stamp = stampOf();
  if (existsSync(join(folder, "stamp")) && readFileSync(join(folder, "stamp"), "utf8") === stamp) return folder;
  const unfinished = `${folder}.part`;
  for (const old of [folder, unfinished]) rmSync(old, { recursive: true, force: true });
  mkdirSync(unfinished, { recursive: true });
  const file = join(unfinished, "registry.db");
  const migrated = spawnSync(process.execPath, [join(root, "commands", "migrate.mjs"), file], { encoding: "utf8" });
  if (migrated.status !== 0) throw new Error(migrated.stderr);
  const db = openDatabase(file);
  const start = performance.now();
  await fillRegistry(db, itemsOf(size), (done) => {
    if (process.stderr.isTTY) process.stderr.write(`\r${done} of ${size} items laid in`);
  });
  await db.$queryRaw`PRAGMA wal_checkpoint(TRUNCATE)`;
  await db.$disconnect();
  const seconds = Math.round((performance.now() - start) / 1000);
  console.log(`${size} generated items and ${scenario.items.length} of the scenario laid in within ${seconds} s`);
  writeFileSync(join(unfinished, "stamp"), stamp);
  renameSync(unfinished, folder);
  return folder;
}

const stampOf = (): string =>
  sha256(
    sources
      .flatMap((path) => filesAt(join(root, path)))
      .map((file) => sha256(readFileSync(file, "utf8")))
      .join(" "),
  );

const filesAt = (path: string): string[] =>
  statSync(path).isDirectory()
    ? readdirSync(path)
        .sort()
        .flatMap((name) => filesAt(join(path, name)))
    : [path];

function* itemsOf(size: number): Generator<Snapshot> {
  yield* scenarioItems();
  for (let n = 0; n < size; n++) yield inventedItem(n);
}

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
