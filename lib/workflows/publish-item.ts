import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { sha256 } from "../platform/sha256.ts";
import { approvalOf } from "../publication/approval.ts";
import { type AssessedItem, assessItem } from "../publication/assess-item.ts";
import { buildSnapshot } from "../publication/build-snapshot.ts";
import { nextLogEntry } from "../publication/log-entry.ts";
import type { LogEntry } from "../publication/snapshot.ts";
import { workingItemOf } from "../publication/working-item-of.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { type Db, inTransaction } from "../store/database.ts";
import { setItemState } from "../store/items.ts";
import { peopleByIds } from "../store/people.ts";
import {
  appendPublication,
  lastEntry,
  nextRevision,
  registry,
  reviewsOf,
  saveReportedValue,
} from "../store/publications.ts";
import { indexSnapshot } from "../store/search.ts";
import { workingItem } from "../store/working-item.ts";
import { categoryLabels, labelOf } from "../wording/labels.ts";

export const publishInput = z.object({
  itemId: z.string().min(1),
  kind: z.enum(["correction", "update"]).nullable().default(null), // null: the first revision
  reason: z.string().trim().max(600).nullable().default(null),
});

/**
 * Publishes an item: reconciles every part, builds the snapshot, chains it into the log, indexes it, marks the item
 * published. One transaction: all of it happens, or none.
 */
export async function publishItemWorkflow(
  context: Context,
  input: z.input<typeof publishInput>,
): Promise<Outcome<LogEntry>> {
  const permitted = requirePermission(context.person, "publish-item");
  if (!permitted.ok) return permitted;
  const { itemId, kind, reason } = publishInput.parse(input);
  const now = context.clock();
  return inTransaction(context.db, async (tx) => {
    const working = await workingItem(tx, itemId, now.toISOString().slice(0, 10));
    if (!working) return refused({ code: "unknown-item", found: itemId });
    const assessed = assessItem(working.assess, sha256);
    const previous = await lastEntry(tx);
    // A clock set back must not put an entry before the one it follows.
    const publishedAt = previous && previous.publishedAt > now.toISOString() ? previous.publishedAt : now.toISOString();
    const revision = await nextRevision(tx, working.item.slug);
    const testers = (await peopleByIds(tx, working.authors)).map(({ name }) => ({ name }));
    const built = buildSnapshot(
      workingItemOf(working, assessed, {
        registry: await registry(tx),
        revision,
        kind: revision === 1 ? "first" : (kind ?? "update"),
        reason: revision === 1 ? null : reason,
        publishedAt,
        testers,
        review: approvalOf(await reviewsOf(tx, itemId), assessed.inputsDigest),
      }),
    );
    if (!built.ok) return built;
    const { entry, text } = nextLogEntry(built.value, previous, sha256);
    await saveValues(tx, assessed, now);
    const batchIds = [...new Set(working.readings.map((r) => r.batchId))].sort();
    await appendPublication(tx, { entry, json: text, itemId, publishedById: permitted.value.id, batchIds });
    await indexSnapshot(tx, built.value, labelOf(categoryLabels, built.value.item.category));
    await setItemState(tx, itemId, "published");
    return done(entry);
  });
}

async function saveValues(tx: Db, assessed: AssessedItem, at: Date): Promise<void> {
  for (const part of assessed.specimens.flatMap((s) => s.parts))
    for (const { mode, reconciled } of part.results) await saveReportedValue(tx, part.id, mode ?? "", reconciled, at);
}
