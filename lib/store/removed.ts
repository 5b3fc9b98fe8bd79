import { z } from "zod";
import type { Db } from "./database.ts";
import { assignmentsOf, writeAssignments } from "./readings.ts";

/**
 * What was taken away, whole, so that it can be put back as it was: the caller keeps it while an undo is offered. Readings are never
 * taken away; they are set free, and where they were is told here.
 */
const specimenRow = z.object({
  id: z.string().min(1).max(40),
  itemId: z.string().min(1).max(40),
  label: z.string().min(1).max(120),
  howGot: z.string().max(400),
  whoPaid: z.string().max(200),
  gotOn: z.string().max(10).nullable(),
  dateCode: z.string().max(120).nullable(),
  madeOn: z.string().max(10).nullable(),
  condition: z.string().max(400).nullable(),
  custody: z.string().max(400).nullable(),
  position: z.number().int(),
});
const componentRow = z.object({
  id: z.string().min(1).max(40),
  specimenId: z.string().min(1).max(40),
  name: z.string().min(1).max(120),
  material: z.string().min(1).max(40),
  form: z.enum(["bulk", "coating"]),
  accessible: z.boolean(),
  thicknessMm: z.number().positive().nullable(),
  smallestDimensionMm: z.number().positive().nullable(),
  areaCm2: z.number().positive().nullable(),
  massG: z.number().positive().nullable(),
  position: z.number().int(),
});
const spotRow = z.object({
  id: z.string().min(1).max(40),
  componentId: z.string().min(1).max(40),
  label: z.string().min(1).max(120),
  photoId: z.string().nullable(),
  x: z.number().nullable(),
  y: z.number().nullable(),
  position: z.number().int(),
});
const assignmentRow = z.object({
  readingId: z.string(),
  componentId: z.string().nullable(),
  spotId: z.string().nullable(),
});

export const removedSchema = z.object({
  specimens: z.array(specimenRow).max(200),
  components: z.array(componentRow).max(1000),
  spots: z.array(spotRow).max(10_000),
  assignments: z.array(assignmentRow).max(20_000),
  /** Other tests that pointed at a part; the tests themselves stay, with their object. */
  otherTests: z.array(z.object({ id: z.string(), componentId: z.string() })).max(1000),
});
export type Removed = z.infer<typeof removedSchema>;

/** Takes parts away with their spots and worked-out values. */
export async function takeOutParts(tx: Db, ids: string[]): Promise<Removed> {
  const of = { componentId: { in: ids } };
  const components = await tx.component.findMany({ where: { id: { in: ids } } });
  const spots = await tx.spot.findMany({ where: of });
  const readings = await tx.reading.findMany({ where: of, select: { id: true } });
  const tests = await tx.otherTest.findMany({ where: of, select: { id: true, componentId: true } });
  const removed = removedSchema.parse({
    specimens: [],
    components,
    spots,
    assignments: await assignmentsOf(
      tx,
      readings.map((r) => r.id),
    ),
    otherTests: tests,
  });
  await tx.reading.updateMany({ where: of, data: { componentId: null, spotId: null } });
  await tx.spot.deleteMany({ where: of });
  await tx.component.deleteMany({ where: { id: { in: ids } } });
  return removed;
}

/** Takes an object away with its parts. Its wipes and laboratory results must be gone before: certificates hang on them. */
export async function takeOutSpecimen(tx: Db, id: string): Promise<Removed> {
  const parts = await tx.component.findMany({ where: { specimenId: id }, select: { id: true } });
  const specimens = await tx.specimen.findMany({ where: { id } });
  const removed = await takeOutParts(
    tx,
    parts.map((p) => p.id),
  );
  await tx.otherTest.deleteMany({ where: { specimenId: id, removedAt: { not: null } } });
  await tx.specimen.delete({ where: { id } });
  return { ...removed, specimens: z.array(specimenRow).parse(specimens) };
}

/** Puts back what was taken away, under the same ids. A reading that went elsewhere meanwhile stays there. */
export async function putBack(tx: Db, removed: Removed): Promise<void> {
  await tx.specimen.createMany({ data: removed.specimens });
  await tx.component.createMany({ data: removed.components });
  const photos = new Set(
    (
      await tx.photo.findMany({
        where: { id: { in: removed.spots.flatMap((s) => s.photoId ?? []) } },
        select: { id: true },
      })
    ).map((p) => p.id),
  );
  await tx.spot.createMany({
    data: removed.spots.map((s) => (s.photoId !== null && !photos.has(s.photoId) ? { ...s, photoId: null } : s)),
  });
  const now = new Map(
    (
      await assignmentsOf(
        tx,
        removed.assignments.map((a) => a.readingId),
      )
    ).map((a) => [a.readingId, a]),
  );
  await writeAssignments(
    tx,
    removed.assignments.filter((a) => now.get(a.readingId)?.componentId === null),
  );
  for (const test of removed.otherTests)
    await tx.otherTest.updateMany({ where: { id: test.id }, data: { componentId: test.componentId } });
}

/** The first published revision of its item in whose text an object or part stands by its id; null where none does. */
export async function publishedWith(db: Db, itemId: string, id: string): Promise<number | null> {
  const row = await db.publication.findFirst({
    where: { itemId, snapshot: { contains: `"${id}"` } },
    orderBy: { revision: "asc" },
    select: { revision: true },
  });
  return row?.revision ?? null;
}

/** A draft that nothing but its objects, parts and readings hangs on: no photo, review, remark, re-test, other test or publication. */
export async function isBareDraft(db: Db, id: string): Promise<boolean> {
  const item = await db.item.findUnique({
    where: { id },
    select: {
      state: true,
      specimens: { select: { _count: { select: { otherTests: true } } } },
      _count: {
        select: { photos: true, publications: true, reviews: true, comments: true, retests: true, answers: true },
      },
    },
  });
  if (item?.state !== "draft") return false;
  return Object.values(item._count).every((n) => n === 0) && item.specimens.every((s) => s._count.otherTests === 0);
}

/** Deletes a bare draft; its readings are set free. */
export async function deleteItem(tx: Db, id: string): Promise<void> {
  for (const specimen of await tx.specimen.findMany({ where: { itemId: id }, select: { id: true } }))
    await takeOutSpecimen(tx, specimen.id);
  await tx.item.delete({ where: { id } });
}
