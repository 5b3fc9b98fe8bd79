import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { findItem, setItemState } from "../store/items.ts";
import { latestPublished } from "../store/published.ts";
import { isBlindTo } from "../store/retests.ts";
import { dropStartedRevision, revisionKinds, startedRevision, writeStartedRevision } from "../store/reviews.ts";

export const revisionInput = z.object({
  itemId: z.string().min(1),
  kind: z.enum(revisionKinds),
  reason: z.string().trim().max(600).default(""),
});

/**
 * Starts a new revision of a published item: the correction of an error, an update with new readings, or a withdrawal, with its reason in
 * words. Nothing is public until it is reviewed as the registry asks, and published. Started again, it takes the new kind and reason.
 */
export async function startRevisionWorkflow(
  context: Context,
  input: z.input<typeof revisionInput>,
): Promise<Outcome<null>> {
  const { itemId, kind, reason } = revisionInput.parse(input);
  const now = context.clock();
  return inTransaction(context.db, async (tx) => {
    const item = await findItem(tx, itemId);
    const blind = context.person !== null && (await isBlindTo(tx, context.person.id, itemId));
    const permitted = requirePermission(context.person, "start-revision", item ? { state: item.state, blind } : {});
    if (!permitted.ok) return permitted;
    if (!item) return refused({ code: "unknown-item", found: itemId });
    const newest = await latestPublished(item.slug, tx);
    if (!newest) return refused({ code: "not-published", found: item.name });
    if (reason.length < 8) return refused({ code: "reason-missing", where: { field: "reason" } });
    if (newest.entry.kind === "withdrawal" && kind !== "update")
      return refused({ code: "already-withdrawn", found: item.name });
    await writeStartedRevision(tx, itemId, { kind, reason, startedById: permitted.value.id, startedAt: now });
    // An approval was of something else.
    if (item.state === "approved") await setItemState(tx, itemId, "draft");
    const of = { record: "item", recordId: itemId, itemId };
    await recordAct(tx, { at: now, actor: permitted.value, action: "start-revision", ...of, detail: { kind, reason } });
    return done(null);
  });
}

/** Drops a revision that was started; what is public stays as it is. */
export async function dropRevisionWorkflow(context: Context, itemId: string): Promise<Outcome<null>> {
  return inTransaction(context.db, async (tx) => {
    const item = await findItem(tx, itemId);
    const permitted = requirePermission(context.person, "start-revision", item ? { state: item.state } : {});
    if (!permitted.ok) return permitted;
    if (!item) return refused({ code: "unknown-item", found: itemId });
    if (!(await startedRevision(tx, itemId))) return refused({ code: "no-revision-started", found: item.name });
    const newest = await latestPublished(item.slug, tx);
    await dropStartedRevision(tx, itemId);
    await setItemState(tx, itemId, newest?.entry.kind === "withdrawal" ? "withdrawn" : "published");
    const of = { record: "item", recordId: itemId, itemId };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "drop-revision", ...of });
    return done(null);
  });
}
