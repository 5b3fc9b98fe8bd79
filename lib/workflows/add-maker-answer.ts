import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { findItem } from "../store/items.ts";
import { latestPublished } from "../store/published.ts";
import { addMakerAnswer } from "../store/reviews.ts";

export const makerAnswerInput = z.object({
  itemId: z.string().min(1),
  receivedOn: z.iso.date(),
  fromWhom: z.string().trim().min(1).max(200),
  text: z.string().trim().min(1).max(20_000),
});

/** Attaches what a maker answered to a published item: in full, dated, shown apart from the measurement, which it does not change. */
export async function addMakerAnswerWorkflow(
  context: Context,
  input: z.input<typeof makerAnswerInput>,
): Promise<Outcome<string>> {
  const permitted = requirePermission(context.person, "add-maker-answer");
  if (!permitted.ok) return permitted;
  const answer = makerAnswerInput.parse(input);
  const now = context.clock();
  if (answer.receivedOn > now.toISOString().slice(0, 10))
    return refused({ code: "date-ahead", where: { field: "receivedOn" }, found: answer.receivedOn });
  return inTransaction(context.db, async (tx) => {
    const { itemId, fromWhom } = answer;
    const item = await findItem(tx, itemId);
    if (!item) return refused({ code: "unknown-item", found: itemId });
    if (!(await latestPublished(item.slug, tx))) return refused({ code: "not-published", found: item.name });
    const recordId = await addMakerAnswer(tx, { ...answer, addedById: permitted.value.id, createdAt: now });
    const detail = { fromWhom, receivedOn: answer.receivedOn };
    const of = { record: "maker-answer", recordId, itemId };
    await recordAct(tx, { at: now, actor: permitted.value, action: "add-maker-answer", ...of, detail });
    return done(item.slug);
  });
}
