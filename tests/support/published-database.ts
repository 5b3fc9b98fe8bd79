import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { PublishedRevision } from "@/lib/exports/published-revision.ts";
import { type Database, inTransaction } from "@/lib/store/database.ts";
import { appendPublication } from "@/lib/store/publications.ts";
import { indexSnapshot } from "@/lib/store/search-index.ts";
import { categoryLabels, labelOf } from "@/lib/wording/labels.ts";
import { sampleHistory } from "./sample-revisions.ts";
import { freshDatabase, person } from "./test-context.ts";

export const baseUrl = "https://shelf.example";

/** Puts revisions into a database as a publication does: the text, its entry, the search index. The items are invented. */
export async function publishAll(
  db: Database,
  revisions: readonly (PublishedRevision & { text: string })[],
): Promise<void> {
  const tester = (await db.user.findFirst()) ?? (await person(db, "tester"));
  for (const { snapshot, entry, text } of revisions)
    await inTransaction(db, async (tx) => {
      const { slug, item } = snapshot;
      const { category, ageGroup, foodContact, mouthable, name } = item;
      const words = { name, category, ageGroup, foodContact, mouthable, createdById: tester.id };
      await tx.item.upsert({ where: { slug }, create: { id: slug, slug, ...words, state: "published" }, update: {} });
      await appendPublication(tx, { entry, json: text, itemId: slug, publishedById: tester.id, batchIds: [] });
      await indexSnapshot(tx, snapshot, labelOf(categoryLabels, category));
    });
}

/**
 * A registry of its own for one test file: a database of the five sample revisions (or those given) that the route handlers
 * read as theirs. To be called before anything asks for the environment or the database.
 */
export async function publishedRegistry(
  revisions: readonly (PublishedRevision & { text: string })[] = sampleHistory(),
) {
  const { db, url } = freshDatabase();
  const dataDir = mkdtempSync(join(tmpdir(), "assay-data-"));
  Object.assign(process.env, { DATA_DIR: dataDir, DATABASE_URL: url, BASE_URL: baseUrl });
  await publishAll(db, revisions);
  return { db, url, dataDir, revisions };
}

/** A request as a reader would send it. */
export const asked = (path: string, headers: Record<string, string> = {}): Request =>
  new Request(`${baseUrl}${path}`, { headers });
