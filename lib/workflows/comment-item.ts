import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { isBlindTo } from "../store/retests.ts";
import { addComment, findComment, settleComment } from "../store/reviews.ts";
import { type WorkingRecord, workingItem } from "../store/working-item.ts";

export const commentInput = z.object({
  itemId: z.string().min(1),
  /** "item", "component:ID", "value:COMPONENT:ELEMENT" or "reading:ID" */
  about: z.string().min(1).max(200).default("item"),
  text: z.string().trim().min(1).max(2000),
  replyToId: z.string().min(1).nullable().default(null),
});

/** A remark on an item as it stands on the bench, on one of its figures or one row; or an answer to one. Never published. */
export async function commentItemWorkflow(
  context: Context,
  input: z.input<typeof commentInput>,
): Promise<Outcome<string>> {
  const { itemId, about, text, replyToId } = commentInput.parse(input);
  const now = context.clock();
  return inTransaction(context.db, async (tx) => {
    const blind = context.person !== null && (await isBlindTo(tx, context.person.id, itemId));
    const permitted = requirePermission(context.person, "comment-item", { blind });
    if (!permitted.ok) return permitted;
    const record = await workingItem(tx, itemId, now.toISOString().slice(0, 10));
    if (!record) return refused({ code: "unknown-item", found: itemId });
    const parent = replyToId === null ? null : await findComment(tx, replyToId);
    if (replyToId !== null && parent?.itemId !== itemId) return refused({ code: "unknown-comment", found: replyToId });
    const place = parent?.about ?? about;
    if (!isPlace(record, place)) return refused({ code: "unknown-place", found: place });
    const author = permitted.value;
    // Answers hang on the remark itself, not on one another.
    const thread = parent?.replyToId ?? replyToId;
    const comment = { itemId, authorId: author.id, about: place, text, replyToId: thread, createdAt: now };
    const recordId = await addComment(tx, comment);
    const detail = { about: place, answer: thread !== null };
    await recordAct(tx, {
      at: now,
      actor: author,
      action: "comment-item",
      record: "comment",
      recordId,
      itemId,
      detail,
    });
    return done(recordId);
  });
}

/** Whether a remark can be about this: the item, one of its parts, an element read on a part, a reading on it. */
function isPlace({ item, readings }: WorkingRecord, about: string): boolean {
  const [kind, id = "", element = ""] = about.split(":");
  const hasPart = item.specimens.some((s) => s.components.some((c) => c.id === id));
  switch (kind) {
    case "item":
      return about === "item";
    case "component":
      return hasPart;
    case "value":
      return hasPart && readings.some((r) => r.componentId === id && r.results.some((one) => one.element === element));
    case "reading":
      return readings.some((r) => r.id === id);
    default:
      return false;
  }
}

/** A remark is settled by whoever made it, or by the owner. */
export async function settleCommentWorkflow(context: Context, commentId: string): Promise<Outcome<string>> {
  const now = context.clock();
  return inTransaction(context.db, async (tx) => {
    const comment = await findComment(tx, commentId);
    const person = context.person;
    const blind = person !== null && comment !== null && (await isBlindTo(tx, person.id, comment.itemId));
    const permitted = requirePermission(person, "comment-item", { blind });
    if (!permitted.ok) return permitted;
    if (!comment || comment.replyToId !== null) return refused({ code: "unknown-comment", found: commentId });
    if (comment.authorId !== permitted.value.id && permitted.value.role !== "owner")
      return refused({ code: "not-your-comment", found: comment.authorName });
    const { itemId } = comment;
    await settleComment(tx, commentId, { settledById: permitted.value.id, settledAt: now });
    const of = { record: "comment", recordId: commentId, itemId };
    await recordAct(tx, { at: now, actor: permitted.value, action: "settle-comment", ...of });
    return done(itemId);
  });
}
