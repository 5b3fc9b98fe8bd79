import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { ageGroups, itemCategories, materials } from "../quantity/item-words.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { slugOf } from "../quantity/slug.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { addComponent, addSpecimen, createItem, slugTaken } from "../store/items.ts";
import { answerGiven, keepAnswer } from "../store/sent-once.ts";

const text = (max: number) => z.string().trim().max(max);

export const tableStartInput = z.object({
  /** Made by the phone: the same sheet sent twice makes one item. */
  sendId: z.uuid(),
  item: z.object({
    name: text(120).min(1),
    category: z.enum(itemCategories),
    ageGroup: z.enum(ageGroups),
    foodContact: z.boolean(),
    mouthable: z.boolean(),
    marks: text(1000),
  }),
  object: z.object({ label: text(120).min(1), howGot: text(400).min(1), whoPaid: text(200).min(1) }),
  part: z.object({ name: text(120).min(1), material: z.enum(materials), form: z.enum(["bulk", "coating"]) }),
});
const started = z.object({ itemId: z.string(), partId: z.string() });
export type TableStart = z.infer<typeof started>;

/**
 * Makes an item with its object and one part, as written down at the table: all of it or none. Sent again under the same
 * `sendId`, it answers as the first time.
 *
 * Refused: `sent-by-another`.
 */
export async function startAtTableWorkflow(
  context: Context,
  input: z.input<typeof tableStartInput>,
): Promise<Outcome<TableStart>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const { sendId, item, object, part } = tableStartInput.parse(input);
  const { id: userId } = permitted.value;
  return inTransaction(context.db, async (tx) => {
    const answered = await answerGiven(tx, sendId, userId, "start-at-table");
    if (answered === "foreign") return refused({ code: "sent-by-another" });
    if (answered) return done(started.parse(JSON.parse(answered)));
    const base = slugOf(item.name);
    let slug = base;
    for (let n = 2; await slugTaken(tx, slug); n += 1) slug = `${base}-${n}`;
    const rest = { aliases: [], maker: null, gtin: null, description: "" };
    const { id: itemId } = await createItem(tx, { ...item, ...rest, slug, createdById: userId });
    const unsaid = { gotOn: null, dateCode: null, madeOn: null, condition: null };
    const specimenId = await addSpecimen(tx, itemId, { ...object, ...unsaid });
    const measures = { thicknessMm: null, smallestDimensionMm: null, areaCm2: null, massG: null };
    const { id: partId } = await addComponent(tx, specimenId, { ...part, accessible: true, ...measures });
    const of = { record: "item", recordId: itemId, itemId, detail: { name: item.name } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "create-item", ...of });
    const answer = JSON.stringify({ itemId, partId });
    await keepAnswer(tx, { id: sendId, userId, action: "start-at-table", answer, createdAt: context.clock() });
    return done({ itemId, partId });
  });
}
