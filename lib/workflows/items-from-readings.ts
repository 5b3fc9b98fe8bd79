import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { ageGroups, itemCategories, materials } from "../quantity/item-words.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { slugOf } from "../quantity/slug.ts";
import { recordAct } from "../store/audit.ts";
import { type Db, inTransaction } from "../store/database.ts";
import { addComponent, addSpecimen, createItem, slugTaken } from "../store/items.ts";
import { listReadings, type ReadingFilter, type StoredReading, spotOf, writeAssignments } from "../store/readings.ts";
import { deleteItem, isBareDraft } from "../store/removed.ts";

const text = (max: number) => z.string().trim().min(1).max(max);

export const fromReadingsInput = z.object({
  by: z.enum(["sample", "note"]),
  batchId: z.string().min(1).nullable(),
  howGot: text(400),
  whoPaid: text(200),
  ageGroup: z.enum(ageGroups).default("unknown"),
  rows: z
    .array(
      z.object({
        /** What the file wrote; the readings that carry it. */
        group: z.string().min(1),
        item: text(120),
        part: text(120),
        category: z.enum(itemCategories),
        material: z.enum(materials),
        form: z.enum(["bulk", "coating"]),
      }),
    )
    .min(1)
    .max(200),
});
export type FromReadings = z.infer<typeof fromReadingsInput>;

export type MadeItems = {
  items: { id: string; name: string; slug: string }[];
  readings: number;
  parts: number;
};

/**
 * Makes items with their objects and parts out of what a file called its samples (or wrote as notes), and puts the unassigned readings
 * on them, each at the spot its file names. Rows of one item's name become parts of one item. One transaction: all, or nothing.
 *
 * Refused: two rows of one item with the same part, an item called two kinds of object, a group without unassigned readings.
 */
export async function itemsFromReadingsWorkflow(
  context: Context,
  input: z.input<typeof fromReadingsInput>,
): Promise<Outcome<MadeItems>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const asked = fromReadingsInput.parse(input);
  const byName = new Map<string, FromReadings["rows"]>();
  for (const row of asked.rows) byName.set(fold(row.item), [...(byName.get(fold(row.item)) ?? []), row]);
  for (const rows of byName.values()) {
    const parts = rows.map((row) => fold(row.part));
    const twice = rows.find((_, at) => parts.indexOf(parts[at]!) !== at);
    if (twice) return refused({ code: "part-named-twice", found: twice.part, allowed: twice.item });
    const other = rows.find((row) => row.category !== rows[0]?.category);
    if (other) return refused({ code: "item-of-two-kinds", found: other.item });
  }
  return inTransaction(context.db, async (tx) => {
    const waiting = new Map<string, StoredReading[]>();
    for (const { group } of asked.rows) waiting.set(group, await listReadings(tx, filterOf(asked, group), 20_000));
    // Looked at before anything is written: what is refused leaves nothing behind.
    const gone = asked.rows.find(({ group }) => waiting.get(group)?.length === 0);
    if (gone) return refused({ code: "group-without-readings", found: gone.group });
    const made: MadeItems = { items: [], readings: 0, parts: 0 };
    for (const rows of byName.values()) await makeItem(tx, asked, rows, waiting, permitted.value.id, made);
    for (const { id, name } of made.items) {
      const of = { record: "item", recordId: id, itemId: id, detail: { name, from: "the names in a file" } };
      await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "create-item", ...of });
    }
    return done(made);
  });
}

const fold = (name: string): string => name.toLowerCase().replace(/\s+/g, " ");

const filterOf = ({ by, batchId }: FromReadings, group: string): ReadingFilter => ({
  unassigned: true,
  ...(batchId ? { batchId } : {}),
  ...(by === "sample" ? { sample: group } : { note: group }),
});

async function makeItem(
  tx: Db,
  asked: FromReadings,
  rows: FromReadings["rows"],
  waiting: Map<string, StoredReading[]>,
  personId: string,
  made: MadeItems,
): Promise<void> {
  const [first] = rows;
  if (!first) return;
  const base = slugOf(first.item);
  let slug = base;
  for (let n = 2; await slugTaken(tx, slug); n += 1) slug = `${base}-${n}`;
  const item = await createItem(tx, {
    ...{ aliases: [], marks: "", maker: null, gtin: null, foodContact: false, mouthable: false, description: "" },
    ...{ name: first.item, category: first.category, ageGroup: asked.ageGroup, slug, createdById: personId },
  });
  const { howGot, whoPaid } = asked;
  const specimenId = await addSpecimen(tx, item.id, {
    ...{ label: "object 1", howGot, whoPaid, gotOn: null, dateCode: null, madeOn: null, condition: null },
  });
  made.items.push({ id: item.id, name: item.name, slug });
  for (const { group, part, material, form } of rows) {
    const measures = { thicknessMm: null, smallestDimensionMm: null, areaCm2: null, massG: null };
    const component = await addComponent(tx, specimenId, { name: part, material, form, accessible: true, ...measures });
    const readings = waiting.get(group) ?? [];
    const spots = new Map<string, string>();
    for (const label of new Set(readings.flatMap((r) => r.spotText?.trim() || [])))
      spots.set(label, await spotOf(tx, component.id, label));
    await writeAssignments(
      tx,
      readings.map((r) => ({
        readingId: r.id,
        componentId: component.id,
        spotId: spots.get(r.spotText?.trim() ?? "") ?? null,
      })),
    );
    made.parts += 1;
    made.readings += readings.length;
  }
}

/** Takes items made in one step back, while nothing but their readings hangs on them; the readings wait again. */
export async function undoItemsWorkflow(context: Context, itemIds: string[]): Promise<Outcome<number>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    for (const id of itemIds) if (!(await isBareDraft(tx, id))) return refused({ code: "item-in-use", found: id });
    for (const id of itemIds) {
      await deleteItem(tx, id);
      const of = { record: "item", recordId: id, itemId: id };
      await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "undo-create-item", ...of });
    }
    return done(itemIds.length);
  });
}
