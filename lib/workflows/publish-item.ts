import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { sha256 } from "../platform/sha256.ts";
import type { ApprovalGate } from "../publication/approval.ts";
import type { AssessedItem } from "../publication/assess-item.ts";
import { validSnapshot } from "../publication/build-snapshot.ts";
import { nextLogEntry } from "../publication/log-entry.ts";
import type { LogEntry } from "../publication/snapshot.ts";
import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { type Db, inTransaction } from "../store/database.ts";
import { type ItemDraft, itemDraft } from "../store/item-draft.ts";
import { setItemState } from "../store/items.ts";
import { appendPublication, lastEntry, saveReportedValue } from "../store/publications.ts";
import { isBlindTo } from "../store/retests.ts";
import { dropClaim, dropStartedRevision } from "../store/reviews.ts";
import { indexSnapshot } from "../store/search-index.ts";
import { categoryLabels, labelOf } from "../wording/labels.ts";

export const publishInput = z.object({
  itemId: z.string().min(1),
  /** Null: the first revision, or the revision that was started. */
  kind: z.enum(["correction", "update", "withdrawal"]).nullable().default(null),
  reason: z.string().trim().max(600).nullable().default(null),
});

/**
 * Publishes an item: reconciles every part, builds the snapshot, chains it into the log, indexes it, marks the item
 * published or withdrawn. One transaction: all of it happens, or none.
 *
 * Refused: without the approvals that the registry asks for (`needs-approval`, `approval-outdated` where the draft moved after one), while
 * somebody re-tests it blind (`retest-open`; a withdrawal shows no figure and goes through), and whatever `buildSnapshot` refuses.
 */
export async function publishItemWorkflow(
  context: Context,
  input: z.input<typeof publishInput>,
): Promise<Outcome<LogEntry>> {
  const { itemId, kind, reason } = publishInput.parse(input);
  const now = context.clock();
  return inTransaction(context.db, async (tx) => {
    const blind = context.person !== null && (await isBlindTo(tx, context.person.id, itemId));
    const permitted = requirePermission(context.person, "publish-item", { blind });
    if (!permitted.ok) return permitted;
    const previous = await lastEntry(tx);
    // A clock set back must not put an entry before the one it follows.
    const at = previous && Date.parse(previous.publishedAt) > now.getTime() ? new Date(previous.publishedAt) : now;
    const draft = await itemDraft(tx, itemId, { now: at, ...(kind === null ? {} : { revision: { kind, reason } }) });
    if (!draft) return refused({ code: "unknown-item", found: itemId });
    const problems = [...draft.problems, ...notYet(draft)];
    if (problems.length > 0) return refused(...problems);
    const built = validSnapshot(draft.snapshot);
    if (!built.ok) return built;
    const snapshot = built.value;
    const { entry, text } = nextLogEntry(snapshot, previous, sha256);
    await saveValues(tx, draft.assessed, now);
    const batchIds = [...new Set(draft.record.readings.map((r) => r.batchId))].sort();
    await appendPublication(tx, { entry, json: text, itemId, publishedById: permitted.value.id, batchIds });
    await indexSnapshot(tx, snapshot, labelOf(categoryLabels, snapshot.item.category));
    await setItemState(tx, itemId, snapshot.kind === "withdrawal" ? "withdrawn" : "published");
    await dropStartedRevision(tx, itemId);
    await dropClaim(tx, itemId);
    await recordAct(tx, {
      at: now,
      actor: permitted.value,
      action: "publish-item",
      record: "publication",
      recordId: String(entry.seq),
      itemId,
      detail: { revision: entry.revision, kind: entry.kind, reviewed: snapshot.review.reviewed },
    });
    return done(entry);
  });
}

const gateProblem: Record<ApprovalGate["state"], string | null> = {
  enough: null,
  unreviewed: null,
  lacking: "needs-approval",
  moved: "approval-outdated",
};

function notYet({ gate, openRetest, snapshot }: ItemDraft): Problem[] {
  const code = gateProblem[gate.state];
  return [
    ...(openRetest && snapshot.kind !== "withdrawal" ? [{ code: "retest-open" }] : []),
    ...(code ? [{ code, found: String(gate.given), allowed: String(gate.needed) }] : []),
  ];
}

async function saveValues(tx: Db, assessed: AssessedItem, at: Date): Promise<void> {
  for (const part of assessed.specimens.flatMap((s) => s.parts))
    for (const { mode, reconciled } of part.results) await saveReportedValue(tx, part.id, mode ?? "", reconciled, at);
}
