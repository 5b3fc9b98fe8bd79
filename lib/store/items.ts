import { z } from "zod";
import type { Db } from "./database.ts";
import { type PhotoRecord, photoInclude, photoOf, photoOrder } from "./photos.ts";

/** Items, specimens and components as the bench works on them. */
export type ItemFields = {
  name: string;
  aliases: string[];
  marks: string;
  maker: string | null;
  gtin: string | null;
  category: string;
  ageGroup: string;
  foodContact: boolean;
  mouthable: boolean;
  description: string;
};
export type SpecimenFields = {
  label: string;
  howGot: string;
  whoPaid: string;
  gotOn: string | null;
  dateCode: string | null;
  madeOn: string | null;
  condition: string | null;
};
export type ComponentFields = {
  name: string;
  material: string;
  form: "bulk" | "coating";
  accessible: boolean;
  thicknessMm: number | null;
  smallestDimensionMm: number | null;
  areaCm2: number | null;
  massG: number | null;
};
export const itemStates = ["draft", "submitted", "approved", "published", "withdrawn"] as const;
export type ItemState = (typeof itemStates)[number];
export type ItemRecord = ItemFields & { id: string; slug: string; state: ItemState; createdById: string };
export type ComponentRecord = ComponentFields & { id: string; specimenId: string };
export type SpecimenRecord = SpecimenFields & { id: string; itemId: string; components: ComponentRecord[] };
export type ItemTree = ItemRecord & { specimens: SpecimenRecord[]; photos: PhotoRecord[] };

type ItemRow = Awaited<ReturnType<Db["item"]["findFirstOrThrow"]>>;
type ComponentRow = Awaited<ReturnType<Db["component"]["findFirstOrThrow"]>>;

export const itemOf = (row: ItemRow): ItemRecord => ({
  id: row.id,
  slug: row.slug,
  name: row.name,
  aliases: z.array(z.string()).parse(JSON.parse(row.aliases)),
  marks: row.marks,
  maker: row.maker,
  gtin: row.gtin,
  category: row.category,
  ageGroup: row.ageGroup,
  foodContact: row.foodContact,
  mouthable: row.mouthable,
  description: row.description,
  state: z.enum(itemStates).parse(row.state),
  createdById: row.createdById,
});

const componentOf = (row: ComponentRow): ComponentRecord => ({
  id: row.id,
  specimenId: row.specimenId,
  name: row.name,
  material: row.material,
  form: z.enum(["bulk", "coating"]).parse(row.form),
  accessible: row.accessible,
  thicknessMm: row.thicknessMm,
  smallestDimensionMm: row.smallestDimensionMm,
  areaCm2: row.areaCm2,
  massG: row.massG,
});

const columns = (input: ItemFields) => ({ ...input, aliases: JSON.stringify(input.aliases) });

export async function createItem(
  tx: Db,
  input: ItemFields & { slug: string; createdById: string },
): Promise<ItemRecord> {
  const { slug, createdById, ...fields } = input;
  return itemOf(await tx.item.create({ data: { ...columns(fields), slug, createdById } }));
}

export async function updateItem(tx: Db, id: string, fields: ItemFields): Promise<ItemRecord> {
  return itemOf(await tx.item.update({ where: { id }, data: columns(fields) }));
}

export async function setItemState(tx: Db, id: string, state: ItemState): Promise<void> {
  await tx.item.update({ where: { id }, data: { state } });
}

/** Addresses under /items that are pages of their own: an item of that name could not be reached (a test holds the list). */
const notItems = ["compare", "suggestions"];

export const slugTaken = async (db: Db, slug: string): Promise<boolean> =>
  notItems.includes(slug) || (await db.item.count({ where: { slug } })) > 0;

export async function addSpecimen(tx: Db, itemId: string, fields: SpecimenFields): Promise<string> {
  const last = await tx.specimen.aggregate({ where: { itemId }, _max: { position: true } });
  const position = (last._max.position ?? -1) + 1;
  return (await tx.specimen.create({ data: { ...fields, itemId, position } })).id;
}

export async function addComponent(tx: Db, specimenId: string, fields: ComponentFields): Promise<ComponentRecord> {
  const last = await tx.component.aggregate({ where: { specimenId }, _max: { position: true } });
  const position = (last._max.position ?? -1) + 1;
  return componentOf(await tx.component.create({ data: { ...fields, specimenId, position } }));
}

export async function updateSpecimen(tx: Db, id: string, fields: SpecimenFields): Promise<void> {
  await tx.specimen.update({ where: { id }, data: fields });
}

export async function updateComponent(tx: Db, id: string, fields: ComponentFields): Promise<ComponentRecord> {
  return componentOf(await tx.component.update({ where: { id }, data: fields }));
}

/** The ids in their new order, or null where the one that moves is not among them; at an end it stays where it is. */
function moved(ids: string[], id: string, by: "up" | "down"): string[] | null {
  const at = ids.indexOf(id);
  if (at < 0) return null;
  const to = Math.min(Math.max(at + (by === "up" ? -1 : 1), 0), ids.length - 1);
  const others = ids.filter((each) => each !== id);
  return [...others.slice(0, to), id, ...others.slice(to)];
}

const inOrder = { orderBy: [{ position: "asc" as const }, { id: "asc" as const }], select: { id: true } };

export async function moveSpecimen(tx: Db, id: string, by: "up" | "down"): Promise<boolean> {
  const itemId = (await itemIdOfSpecimen(tx, id)) ?? "";
  const order = moved(
    (await tx.specimen.findMany({ where: { itemId }, ...inOrder })).map((s) => s.id),
    id,
    by,
  );
  for (const [position, each] of (order ?? []).entries())
    await tx.specimen.update({ where: { id: each }, data: { position } });
  return order !== null;
}

export async function moveComponent(tx: Db, id: string, by: "up" | "down"): Promise<boolean> {
  const part = await tx.component.findUnique({ where: { id }, select: { specimenId: true } });
  const where = { specimenId: part?.specimenId ?? "" };
  const order = moved(
    (await tx.component.findMany({ where, ...inOrder })).map((c) => c.id),
    id,
    by,
  );
  for (const [position, each] of (order ?? []).entries())
    await tx.component.update({ where: { id: each }, data: { position } });
  return order !== null;
}

export async function itemIdOfSpecimen(db: Db, specimenId: string): Promise<string | null> {
  return (await db.specimen.findUnique({ where: { id: specimenId }, select: { itemId: true } }))?.itemId ?? null;
}

export async function itemIdOfComponent(db: Db, componentId: string): Promise<string | null> {
  const row = await db.component.findUnique({
    where: { id: componentId },
    select: { specimen: { select: { itemId: true } } },
  });
  return row?.specimen.itemId ?? null;
}

export async function findItem(db: Db, id: string): Promise<ItemTree | null> {
  const row = await db.item.findUnique({
    where: { id },
    include: {
      photos: { where: { removedAt: null }, orderBy: photoOrder, include: photoInclude },
      specimens: {
        orderBy: [{ position: "asc" }, { id: "asc" }],
        include: { components: { orderBy: [{ position: "asc" }, { id: "asc" }] } },
      },
    },
  });
  if (!row) return null;
  const specimens = row.specimens.map(({ components, position: _, custody: __, ...s }) => ({
    ...s,
    components: components.map(componentOf),
  }));
  return { ...itemOf(row), specimens, photos: row.photos.map(photoOf) };
}

export async function listItems(db: Db, states?: ItemState[]): Promise<ItemRecord[]> {
  const rows = await db.item.findMany({
    ...(states ? { where: { state: { in: states } } } : {}),
    orderBy: { updatedAt: "desc" },
  });
  return rows.map(itemOf);
}
