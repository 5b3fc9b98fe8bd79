import type { Db } from "./database.ts";
import type { Prisma } from "./generated/sqlite/client.ts";

/** Photos of an item, with their files and the spots marked on them. */
export type PhotoFileRecord = { key: string; width: number; height: number; sha256: string };
/** A known length marked on the photo: its ends as shares of width and height, 0…1 from the top left. */
export type PhotoScaleRecord = { x1: number; y1: number; x2: number; y2: number; lengthMm: number };
export type MarkedSpot = {
  id: string;
  componentId: string;
  label: string;
  /** shares of the photo's width and height, from the top left */
  x: number;
  y: number;
  /** the widest window of the analysers that shot it; null where that is not known */
  windowMm: number | null;
};
export type PhotoRecord = {
  id: string;
  itemId: string;
  fileKey: string;
  alt: string;
  width: number;
  height: number;
  sha256: string;
  files: PhotoFileRecord[]; // narrowest first
  originalName: string | null;
  scale: PhotoScaleRecord | null;
  spots: MarkedSpot[];
  removed: boolean;
};

export const photoOrder = [{ position: "asc" }, { id: "asc" }] satisfies Prisma.PhotoOrderByWithRelationInput[];
export const photoInclude = {
  files: { orderBy: { width: "asc" } },
  spots: {
    orderBy: [{ position: "asc" }, { id: "asc" }],
    include: {
      readings: { select: { batch: { select: { instrument: { select: { windowMm: true } } } } } },
    },
  },
} satisfies Prisma.PhotoInclude;

const fetchPhoto = (db: Db, id: string) => db.photo.findUnique({ where: { id }, include: photoInclude });
type PhotoRow = NonNullable<Awaited<ReturnType<typeof fetchPhoto>>>;

export function photoOf(row: PhotoRow): PhotoRecord {
  const { scaleX1: x1, scaleY1: y1, scaleX2: x2, scaleY2: y2, scaleMm: lengthMm } = row;
  return {
    id: row.id,
    itemId: row.itemId,
    fileKey: row.fileKey,
    alt: row.alt,
    width: row.width,
    height: row.height,
    sha256: row.sha256,
    files: row.files.map(({ key, width, height, sha256 }) => ({ key, width, height, sha256 })),
    originalName: row.originalName,
    scale:
      x1 === null || y1 === null || x2 === null || y2 === null || lengthMm === null
        ? null
        : { x1, y1, x2, y2, lengthMm },
    spots: row.spots.flatMap(({ id, componentId, label, x, y, readings }) =>
      x === null || y === null ? [] : [{ id, componentId, label, x, y, windowMm: widestWindow(readings) }],
    ),
    removed: row.removedAt !== null,
  };
}

const widestWindow = (readings: { batch: { instrument: { windowMm: number | null } | null } }[]): number | null =>
  readings.reduce<number | null>((widest, { batch }) => {
    const window = batch.instrument?.windowMm ?? null;
    return window !== null && (widest === null || window > widest) ? window : widest;
  }, null);

export async function findPhoto(db: Db, id: string): Promise<PhotoRecord | null> {
  const row = await fetchPhoto(db, id);
  return row ? photoOf(row) : null;
}

/** Photos that were taken away and can be put back, the last one first. */
export async function removedPhotos(db: Db, itemId: string): Promise<PhotoRecord[]> {
  const rows = await db.photo.findMany({
    where: { itemId, removedAt: { not: null } },
    include: photoInclude,
    orderBy: { removedAt: "desc" },
  });
  return rows.map(photoOf);
}

export type NewPhoto = {
  fileKey: string;
  alt: string;
  width: number;
  height: number;
  sha256: string;
  files: PhotoFileRecord[];
  originalKey: string;
  originalName: string;
  createdById: string;
  createdAt: Date;
};

export async function addPhoto(tx: Db, itemId: string, { files, ...photo }: NewPhoto): Promise<string> {
  const position = await tx.photo.count({ where: { itemId } });
  return (await tx.photo.create({ data: { ...photo, itemId, position, files: { create: files } } })).id;
}

export async function setPhotoAlt(tx: Db, id: string, alt: string): Promise<void> {
  await tx.photo.update({ where: { id }, data: { alt } });
}

export async function setPhotoRemoved(tx: Db, id: string, removedAt: Date | null): Promise<void> {
  await tx.photo.update({ where: { id }, data: { removedAt } });
}

export async function setPhotoScale(tx: Db, id: string, scale: PhotoScaleRecord | null): Promise<void> {
  await tx.photo.update({
    where: { id },
    data: {
      scaleX1: scale?.x1 ?? null,
      scaleY1: scale?.y1 ?? null,
      scaleX2: scale?.x2 ?? null,
      scaleY2: scale?.y2 ?? null,
      scaleMm: scale?.lengthMm ?? null,
    },
  });
}

/** Numbers an item's photos in the order given. */
export async function orderPhotos(tx: Db, ids: readonly string[]): Promise<void> {
  for (const [position, id] of ids.entries()) await tx.photo.update({ where: { id }, data: { position } });
}

/**
 * Whether a file of this key belongs to a photo ("kept"), and whether a published revision names it. An earlier
 * revision counts: its page stays.
 */
export async function standingOfPhotoFile(db: Db, key: string): Promise<"published" | "kept" | "unknown"> {
  const items = await db.photoFile.findMany({ where: { key }, select: { photo: { select: { itemId: true } } } });
  if (items.length === 0) return "unknown";
  const itemId = { in: items.map(({ photo }) => photo.itemId) };
  const named = await db.publication.count({ where: { itemId, snapshot: { contains: `"${key}"` } } });
  return named > 0 ? "published" : "kept";
}
