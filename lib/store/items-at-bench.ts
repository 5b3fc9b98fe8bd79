import type { Db } from "./database.ts";
import { holdsText } from "./dialect.ts";
import { type ItemRecord, type ItemState, itemOf } from "./items.ts";

/** Which items are asked for: those whose name holds these letters, of this state. */
export type ItemsAsked = { find?: string | undefined; state?: ItemState | undefined };

const where = (db: Db, { find, state }: ItemsAsked) => ({
  ...(find === undefined ? {} : { name: holdsText(db, find) }),
  ...(state === undefined ? {} : { state }),
});

/** Some of the items, those last worked on first, and how many there are in all. */
export async function itemsAtBench(
  db: Db,
  asked: ItemsAsked,
  { start = 0, take }: { start?: number; take: number },
): Promise<{ items: ItemRecord[]; total: number }> {
  const [rows, total] = await Promise.all([
    db.item.findMany({ where: where(db, asked), orderBy: [{ updatedAt: "desc" }, { id: "asc" }], skip: start, take }),
    db.item.count({ where: where(db, asked) }),
  ]);
  return { items: rows.map(itemOf), total };
}

/** The names of these items. */
export async function itemNames(db: Db, ids: readonly string[]): Promise<Map<string, string>> {
  const rows = await db.item.findMany({ where: { id: { in: [...new Set(ids)] } }, select: { id: true, name: true } });
  return new Map(rows.map(({ id, name }) => [id, name]));
}

const withItem = { specimen: { include: { item: { select: { id: true, name: true, state: true } } } } } as const;
type PartRow = { id: string; name: string; specimen: { label: string; item: { name: string } } };
const labelOf = ({ name, specimen }: PartRow): string => `${specimen.item.name} — ${specimen.label}: ${name}`;

/**
 * Parts that readings can be put on, by item and part, and of how many items they are: of the `most` last worked on that have not
 * been withdrawn and whose name holds the letters of `find`.
 */
export async function partsToPutOn(
  db: Db,
  find: string | undefined,
  most: number,
): Promise<{ parts: { id: string; label: string }[]; items: number; total: number }> {
  const asked = { ...where(db, { find }), state: { not: "withdrawn" } };
  const [items, total] = await Promise.all([
    db.item.findMany({
      where: asked,
      orderBy: [{ updatedAt: "desc" }, { id: "asc" }],
      take: most,
      select: { id: true },
    }),
    db.item.count({ where: asked }),
  ]);
  const rows = await db.component.findMany({
    where: { specimen: { itemId: { in: items.map(({ id }) => id) } } },
    include: withItem,
    orderBy: [{ specimen: { item: { name: "asc" } } }, { position: "asc" }],
  });
  return { parts: rows.map((row) => ({ id: row.id, label: labelOf(row) })), items: items.length, total };
}

/** These parts, each by its item, object and name. */
export async function partLabels(db: Db, ids: readonly string[]): Promise<Map<string, string>> {
  const rows = await db.component.findMany({ where: { id: { in: [...new Set(ids)] } }, include: withItem });
  return new Map(rows.map((row) => [row.id, labelOf(row)]));
}
