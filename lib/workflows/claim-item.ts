import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { itemDraft } from "../store/item-draft.ts";
import { isBlindTo } from "../store/retests.ts";
import { claimOf, dropClaim, writeClaim } from "../store/reviews.ts";

export const claimInput = z.object({ itemId: z.string().min(1), interests: z.string().trim().min(4).max(600) });

/** A reviewer takes an item up and says what ties them to the maker. Of two at once the first has it; the second is told who. */
export async function claimItemWorkflow(context: Context, input: z.input<typeof claimInput>): Promise<Outcome<null>> {
  const { itemId, interests } = claimInput.parse(input);
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
    await dropClaim(tx, itemId);
    await writeClaim(tx, { itemId, reviewerId: person.id, interests, claimedAt: now });
    const of = { record: "item", recordId: itemId, itemId };
    await recordAct(tx, { at: now, actor: person, action: "claim-item", ...of, detail: { interests } });
    return done(null);
  });
}

/** Gives a claim up: the reviewer who has it, or the owner for somebody who is away. */
export async function releaseItemWorkflow(context: Context, itemId: string): Promise<Outcome<null>> {
  const permitted = requirePermission(context.person, "review-item");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const claim = await claimOf(tx, itemId);
    if (!claim) return refused({ code: "not-claimed" });
    const person = permitted.value;
    if (claim.reviewerId !== person.id && person.role !== "owner")
      return refused({ code: "claimed-by-another", found: claim.reviewerName });
    await dropClaim(tx, itemId);
    const of = { record: "item", recordId: itemId, itemId };
    const detail = { of: claim.reviewerName };
    await recordAct(tx, { at: context.clock(), actor: person, action: "release-item", ...of, detail });
    return done(null);
  });
}
