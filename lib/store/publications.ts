import type { LogEntry } from "../publication/snapshot.ts";
import type { ReconcileResult } from "../reconcile/types.ts";
import type { Db } from "./database.ts";
import { entryOf } from "./published.ts";

/** Writing of snapshots, and reported values. Reviews are in reviews.ts; reading of published snapshots is in published.ts. */

/** The newest entry of the log, which the next one chains to. */
export async function lastEntry(db: Db): Promise<LogEntry | null> {
  const row = await db.publication.findFirst({ orderBy: { seq: "desc" }, omit: { snapshot: true } });
  return row ? entryOf(row) : null;
}

export async function nextRevision(db: Db, slug: string): Promise<number> {
  const last = await db.publication.findFirst({
    where: { slug },
    orderBy: { revision: "desc" },
    select: { revision: true },
  });
  return (last?.revision ?? 0) + 1;
}

export async function appendPublication(
  tx: Db,
  input: { entry: LogEntry; json: string; itemId: string; publishedById: string; batchIds: string[] },
): Promise<void> {
  const { entry, json, itemId, publishedById, batchIds } = input;
  await tx.publication.create({ data: { ...entry, snapshot: json, itemId, publishedById } });
  for (const batchId of batchIds) await tx.publicationSource.create({ data: { publicationSeq: entry.seq, batchId } });
}

export async function saveReportedValue(
  tx: Db,
  componentId: string,
  mode: string,
  result: ReconcileResult,
  at: Date,
): Promise<void> {
  const key = { componentId, element: result.element, quantity: result.quantity, mode };
  const data = {
    method: result.method.name,
    version: result.method.version,
    inputsDigest: result.inputsDigest,
    result: JSON.stringify(result),
    computedAt: at,
  };
  await tx.reportedValue.upsert({
    where: { componentId_element_quantity_mode: key },
    create: { ...key, ...data },
    update: data,
  });
}

export type RegistryRecord = { name: string; invented: boolean; licence: string; contact: string | null };

export async function registry(db: Db): Promise<RegistryRecord> {
  const row = await db.registry.findUnique({ where: { id: 1 } });
  return row
    ? { name: row.name, invented: row.invented, licence: row.licence, contact: row.contact }
    : { name: "Cupboard Assay", invented: false, licence: "CC-BY-4.0", contact: null };
}

export async function saveRegistry(tx: Db, record: RegistryRecord): Promise<void> {
  await tx.registry.upsert({ where: { id: 1 }, create: record, update: record });
}
