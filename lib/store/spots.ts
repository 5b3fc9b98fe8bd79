import type { Db } from "./database.ts";

/** Spots: named places on a part, perhaps marked on a photo. */
export type SpotRecord = {
  id: string;
  componentId: string;
  label: string;
  photoId: string | null;
  x: number | null;
  y: number | null;
  readings: number;
};
export type SpotPlace = { photoId: string; x: number; y: number };

/** Every spot of an item, in the order in which they were marked. A spot on a photo taken away counts as not placed. */
export async function spotsOfItem(db: Db, itemId: string): Promise<SpotRecord[]> {
  const rows = await db.spot.findMany({
    where: { component: { specimen: { itemId } } },
    include: { photo: { select: { removedAt: true } }, _count: { select: { readings: true } } },
    orderBy: [{ position: "asc" }, { id: "asc" }],
  });
  return rows.map(({ id, componentId, label, photoId, photo, x, y, _count }) => {
    const shown = photo !== null && photo.removedAt === null;
    return {
      id,
      componentId,
      label,
      photoId: shown ? photoId : null,
      x: shown ? x : null,
      y: shown ? y : null,
      readings: _count.readings,
    };
  });
}

export async function findSpot(db: Db, id: string): Promise<(SpotRecord & { itemId: string }) | null> {
  const row = await db.spot.findUnique({
    where: { id },
    include: {
      component: { select: { specimen: { select: { itemId: true } } } },
      _count: { select: { readings: true } },
    },
  });
  if (!row) return null;
  const { componentId, label, photoId, x, y } = row;
  return {
    id,
    componentId,
    label,
    photoId,
    x,
    y,
    readings: row._count.readings,
    itemId: row.component.specimen.itemId,
  };
}

/** Marks the spot of that label on a photo, making it if it is new; a new mark comes after the photo's others. */
export async function markSpot(tx: Db, componentId: string, label: string, place: SpotPlace): Promise<string> {
  const known = await tx.spot.findUnique({ where: { componentId_label: { componentId, label } } });
  const last = await tx.spot.aggregate({ where: { photoId: place.photoId }, _max: { position: true } });
  const position = known?.photoId === place.photoId ? known.position : (last._max.position ?? 0) + 1;
  const data = { ...place, position };
  if (known) await tx.spot.update({ where: { id: known.id }, data });
  return known?.id ?? (await tx.spot.create({ data: { ...data, componentId, label } })).id;
}

/** Takes the mark off its photo. A spot that no reading is on is forgotten with it. */
export async function unmarkSpot(tx: Db, id: string): Promise<void> {
  const readings = await tx.reading.count({ where: { spotId: id } });
  if (readings === 0) await tx.spot.delete({ where: { id } });
  else await tx.spot.update({ where: { id }, data: { photoId: null, x: null, y: null, position: 0 } });
}
