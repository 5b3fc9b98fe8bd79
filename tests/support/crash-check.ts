import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { sha256 } from "@/lib/platform/sha256.ts";
import type { Database } from "@/lib/store/database.ts";
import type { Acknowledged } from "./crash-load.ts";
import { rowsOfAFile } from "./crash-load.ts";

/** Files of the load alone: in theirs every row taken in is a reading, which is not so in files with a row for each element. */
const ofTheLoad = { OR: [{ source: "hand" }, { fileName: "crash.csv" }] };

/** What is wrong after a kill: of the acknowledged what is lost, and what is half done whether it was acknowledged or not. */
export type CrashFaults = { lost: string[]; halfDone: string[] };

export async function crashFaults(db: Database, dataDir: string, done: Acknowledged): Promise<CrashFaults> {
  const lost: string[] = [];
  for (const id of done.photos) {
    const files = await db.photoFile.findMany({ where: { photoId: id } });
    if (files.length === 0) lost.push(`photo ${id}`);
    for (const { key, sha256: recorded } of files) {
      const at = join(dataDir, "photos", key);
      if (!existsSync(at) || sha256(readFileSync(at)) !== recorded) lost.push(`file ${key} of photo ${id}`);
    }
  }
  const readings = new Map(
    (await db.reading.groupBy({ by: ["batchId"], _count: { _all: true } })).map((g) => [g.batchId, g._count._all]),
  );
  for (const id of done.sheets)
    if (readings.get(id) !== 5) lost.push(`sheet ${id}: ${readings.get(id) ?? 0} of 5 readings`);
  for (const id of done.files)
    if (readings.get(id) !== rowsOfAFile) lost.push(`file ${id}: ${readings.get(id) ?? 0} of ${rowsOfAFile} readings`);
  const published = await db.publication.findMany({ select: { seq: true, itemId: true, slug: true, revision: true } });
  const named = new Set(published.map(({ itemId, revision }) => `${itemId} ${revision}`));
  for (const { itemId, revision } of done.publications)
    if (!named.has(`${itemId} ${revision}`)) lost.push(`revision ${revision} of ${itemId}`);

  const halfDone: string[] = [];
  for (const { id, state, rowsAccepted } of await db.importBatch.findMany({ where: ofTheLoad })) {
    const stored = readings.get(id) ?? 0;
    if (state === "uploaded" ? stored !== 0 : state === "imported" && stored !== rowsAccepted)
      halfDone.push(`import ${id} is ${state} with ${stored} of ${rowsAccepted} readings`);
  }
  // A publication is one whole: its number, the item's state, what it stands on.
  const items = await db.item.findMany({ select: { id: true, slug: true, state: true } });
  const sources = new Set((await db.publicationSource.findMany()).map((s) => s.publicationSeq));
  for (const { id, slug, state } of items) {
    const mine = published
      .filter((p) => p.itemId === id)
      .map((p) => p.revision)
      .sort((a, b) => a - b);
    if (mine.some((revision, n) => revision !== n + 1)) halfDone.push(`${slug} has revisions ${mine.join(", ")}`);
    if (state === "published" && mine.length === 0) halfDone.push(`${slug} is published without a revision`);
    if (state === "draft" && mine.length > 0) halfDone.push(`${slug} is a draft with ${mine.length} revisions`);
  }
  for (const { seq, slug } of published)
    if (!sources.has(seq)) halfDone.push(`entry ${seq} of ${slug} stands on nothing`);
  return { lost, halfDone };
}
