import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { itemDraft } from "../store/item-draft.ts";
import { type ItemState, setItemState } from "../store/items.ts";
import { registryTerms } from "../store/registry.ts";
import { isBlindTo } from "../store/retests.ts";
import { addReview, claimOf, dropClaim, reviewDecisions, writeSubmission } from "../store/reviews.ts";

/** A statement of interests: never empty, since "none" is an answer and silence is not. */
export const interestsText = z.string().trim().min(4).max(600);
export const submitInput = z.object({ itemId: z.string().min(1), interests: interestsText });

/** The tester hands an item to the review desk, and says what ties them to the maker, or that nothing does. */
export async function submitItemWorkflow(
  context: Context,
  input: z.input<typeof submitInput>,
): Promise<Outcome<ItemState>> {
  const { itemId, interests } = submitInput.parse(input);
  const now = context.clock();
  return inTransaction(context.db, async (tx) => {
    const draft = await itemDraft(tx, itemId, { now });
    const blind = context.person !== null && (await isBlindTo(tx, context.person.id, itemId));
    const about = draft ? { state: draft.record.item.state, blind } : {};
    const permitted = requirePermission(context.person, "submit-item", about);
    if (!permitted.ok) return permitted;
    if (!draft) return refused({ code: "unknown-item", found: itemId });
    const { item, readings } = draft.record;
    if (readings.length === 0 && draft.started?.kind !== "withdrawal")
      return refused({ code: "no-readings", found: item.name });
    await writeSubmission(tx, itemId, { interests, submittedById: permitted.value.id, submittedAt: now });
    await dropClaim(tx, itemId);
    await setItemState(tx, itemId, "submitted");
    const of = { record: "item", recordId: itemId, itemId };
    await recordAct(tx, { at: now, actor: permitted.value, action: "submit-item", ...of, detail: { interests } });
    return done("submitted" as const);
  });
}

export const reviewInput = z.object({
  itemId: z.string().min(1),
  decision: z.enum(reviewDecisions),
  note: z.string().trim().max(4000).default(""),
  /** The digest of what the reviewer was shown; an item changed since then is not approved. */
  shownDigest: z.string().length(64),
});

/**
 * A reviewer who took none of the readings and has claimed the item approves it as shown, asks for more shots, or sends it back
 * with a note. With fewer approvals than the registry asks for it stays in the queue, free for the next reviewer.
 */
export async function reviewItemWorkflow(
  context: Context,
  input: z.input<typeof reviewInput>,
): Promise<Outcome<ItemState>> {
  const { itemId, decision, note, shownDigest } = reviewInput.parse(input);
  const now = context.clock();
  return inTransaction(context.db, async (tx) => {
    const draft = await itemDraft(tx, itemId, { now });
    const blind = context.person !== null && (await isBlindTo(tx, context.person.id, itemId));
    const about = draft ? { authors: draft.concerned, state: draft.record.item.state, blind } : {};
    const permitted = requirePermission(context.person, "review-item", about);
    if (!permitted.ok) return permitted;
    if (!draft) return refused({ code: "unknown-item", found: itemId });
    const person = permitted.value;
    const claim = await claimOf(tx, itemId);
    if (claim && claim.reviewerId !== person.id)
      return refused({ code: "claimed-by-another", found: claim.reviewerName });
    if (!claim) return refused({ code: "not-claimed" });
    if (draft.digest !== shownDigest)
      return refused({ code: "stale-draft", found: shownDigest.slice(0, 12), allowed: draft.digest.slice(0, 12) });
    if (decision !== "approved" && note.length < 8) return refused({ code: "note-missing", where: { field: "note" } });
    const approvedBefore = draft.reviews.some(
      (r) => r.decision === "approved" && r.inputsDigest === shownDigest && r.reviewerId === person.id,
    );
    if (decision === "approved" && approvedBefore) return refused({ code: "approved-before" });
    const { interests } = claim;
    const review = { itemId, reviewerId: person.id, decision, note, interests, inputsDigest: shownDigest, at: now };
    const recordId = await addReview(tx, review);
    await dropClaim(tx, itemId);
    const { approvalsNeeded } = await registryTerms(tx);
    const enough = draft.gate.given + 1 >= approvalsNeeded;
    const state: ItemState = decision !== "approved" ? "draft" : enough ? "approved" : "submitted";
    await setItemState(tx, itemId, state);
    const detail = { decision, digest: shownDigest.slice(0, 12) };
    await recordAct(tx, { at: now, actor: person, action: "review-item", record: "review", recordId, itemId, detail });
    return done(state);
  });
}
