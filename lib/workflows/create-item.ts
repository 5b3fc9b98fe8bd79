import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { readGtin } from "../quantity/gtin.ts";
import { ageGroups, itemCategories } from "../quantity/item-words.ts";
import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { slugOf } from "../quantity/slug.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { createItem, findItem, type ItemFields, type ItemRecord, slugTaken, updateItem } from "../store/items.ts";

const text = (max: number) => z.string().trim().max(max);

export const itemInput = z.object({
  name: text(120).min(1),
  aliases: z.array(text(120)).max(20).default([]),
  marks: text(1000).default(""),
  maker: text(120).nullable().default(null),
  gtin: text(40).nullable().default(null),
  category: z.enum(itemCategories),
  ageGroup: z.enum(ageGroups),
  foodContact: z.boolean().default(false),
  mouthable: z.boolean().default(false),
  description: text(4000).default(""),
});
export type ItemInput = z.input<typeof itemInput>;

function gtinProblem(gtin: string | null): Problem | null {
  if (gtin === null || gtin === "") return null;
  const read = readGtin(gtin);
  if (read.state === "ok") return null;
  const where = { field: "gtin" };
  return read.state === "not-a-code"
    ? { code: "gtin-not-a-code", where, found: read.found, allowed: "8, 12, 13 or 14 digits" }
    : { code: "gtin-check-digit", where, found: read.found, allowed: read.expected };
}

function normalised(input: ItemInput): Outcome<ItemFields> {
  const fields = itemInput.parse(input);
  const problem = gtinProblem(fields.gtin);
  if (problem) return refused(problem);
  const gtin = fields.gtin ? readGtin(fields.gtin) : null;
  return done({ ...fields, gtin: gtin?.state === "ok" ? gtin.gtin : null });
}

/** Makes an item. Its address comes from its name, or from `wanted` where somebody asks for one. */
export async function createItemWorkflow(
  context: Context,
  input: ItemInput,
  wanted?: string,
): Promise<Outcome<ItemRecord>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const fields = normalised(input);
  if (!fields.ok) return fields;
  return inTransaction(context.db, async (tx) => {
    const base = slugOf(wanted ?? fields.value.name);
    let slug = base;
    for (let n = 2; await slugTaken(tx, slug); n += 1) slug = `${base}-${n}`;
    const item = await createItem(tx, { ...fields.value, slug, createdById: permitted.value.id });
    const of = { record: "item", recordId: item.id, itemId: item.id };
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: "create-item",
      ...of,
      detail: { name: item.name },
    });
    return done(item);
  });
}

/** Changes what an item is called and described as. A published page keeps its words until a new revision. */
export async function editItemWorkflow(context: Context, id: string, input: ItemInput): Promise<Outcome<ItemRecord>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const fields = normalised(input);
  if (!fields.ok) return fields;
  return inTransaction(context.db, async (tx) => {
    if (!(await findItem(tx, id))) return refused({ code: "unknown-item", found: id });
    const of = { record: "item", recordId: id, itemId: id };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "edit-item", ...of });
    return done(await updateItem(tx, id, fields.value));
  });
}
