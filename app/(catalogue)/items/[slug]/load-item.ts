import { connection } from "next/server";
import { cache } from "react";
import { type FieldChange, revisionDifference } from "@/lib/publication/revision-difference.ts";
import type { LogEntry } from "@/lib/publication/snapshot.ts";
import { database } from "@/lib/store/database.ts";
import { latestPublished, type PublishedItem, publishedRevision, revisionsOf } from "@/lib/store/published.ts";
import { type MakerAnswerRecord, makerAnswersOf } from "@/lib/store/reviews.ts";

export type LoadedRevision = {
  item: PublishedItem;
  revisions: LogEntry[];
  newest: LogEntry;
  changes: FieldChange[] | null;
  makerAnswers: MakerAnswerRecord[];
};

/** A revision (the newest without a number) with the history around it; null where there is none. Read once a request. */
export const loadRevision = cache(async (slug: string, revision: number | null): Promise<LoadedRevision | null> => {
  await connection();
  const item = await (revision === null ? latestPublished(slug) : publishedRevision(slug, revision));
  if (!item) return null;
  const revisions = await revisionsOf(slug);
  const newest = revisions.at(-1) ?? item.entry;
  const before = item.entry.revision > 1 ? await publishedRevision(slug, item.entry.revision - 1) : null;
  const changes = before ? revisionDifference(before.snapshot, item.snapshot) : null;
  return { item, revisions, newest, changes, makerAnswers: await makerAnswersOf(database(), slug) };
});
