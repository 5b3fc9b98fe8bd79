import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { sha256 } from "../platform/sha256.ts";
import { assessItem } from "../publication/assess-item.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { inTransaction } from "../store/database.ts";
import { type ItemState, setItemState } from "../store/items.ts";
import { addReview } from "../store/publications.ts";
import { workingItem } from "../store/working-item.ts";

/** The tester hands an item to the review desk. */
export async function submitItemWorkflow(context: Context, itemId: string): Promise<Outcome<ItemState>> {
  const permitted = requirePermission(context.person, "submit-item");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const working = await workingItem(tx, itemId, context.clock().toISOString().slice(0, 10));
    if (!working) return refused({ code: "unknown-item", found: itemId });
    if (working.readings.length === 0) return refused({ code: "no-readings", found: working.item.name });
    await setItemState(tx, itemId, "submitted");
    return done("submitted" as const);
  });
}

export const reviewInput = z.object({
  itemId: z.string().min(1),
  decision: z.enum(["approved", "sent-back"]),
  note: z.string().trim().max(2000).default(""),
  /** The digest of what the reviewer was shown; an item changed since then is not approved. */
  shownDigest: z.string().length(64),
});

/** A reviewer who loaded none of the readings approves an item as shown, or sends it back with a note. */
export async function reviewItemWorkflow(
  context: Context,
  input: z.input<typeof reviewInput>,
): Promise<Outcome<ItemState>> {
  const { itemId, decision, note, shownDigest } = reviewInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    const working = await workingItem(tx, itemId, context.clock().toISOString().slice(0, 10));
    const permitted = requirePermission(context.person, "review-item", { authors: working?.authors ?? [] });
    if (!permitted.ok) return permitted;
    if (!working) return refused({ code: "unknown-item", found: itemId });
    if (working.item.state !== "submitted") return refused({ code: "not-submitted", found: working.item.state });
    const { inputsDigest } = assessItem(working.assess, sha256);
    if (inputsDigest !== shownDigest)
      return refused({ code: "stale-draft", found: shownDigest.slice(0, 12), allowed: inputsDigest.slice(0, 12) });
    if (decision === "sent-back" && note.length < 8)
      return refused({ code: "reason-missing", where: { field: "note" } });
    await addReview(tx, { itemId, reviewerId: permitted.value.id, decision, note, inputsDigest, at: context.clock() });
    const state: ItemState = decision === "approved" ? "approved" : "draft";
    await setItemState(tx, itemId, state);
    return done(state);
  });
}
