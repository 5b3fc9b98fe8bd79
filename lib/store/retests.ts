import { z } from "zod";
import type { Db } from "./database.ts";

/** A value of a re-test as it stood at the time: what is needed to print it and to compare it. */
export const retestValue = z.object({
  element: z.string(),
  quantity: z.string(),
  unit: z.string(),
  state: z.enum(["quantified", "range-only", "not-quantified", "not-detected", "no-readings"]),
  value: z.number().nullable(),
  u: z.number().nullable(),
  U: z.number().nullable(),
  interval: z.tuple([z.number(), z.number()]).nullable(),
  asymmetric: z.boolean(),
  below: z.number().nullable(),
  upperBound: z.number().nullable(),
  range: z.tuple([z.number(), z.number()]).nullable(),
  stated: z.object({
    value: z.string(),
    U: z.string().nullable(),
    interval: z.tuple([z.string(), z.string()]).nullable(),
    below: z.string().nullable(),
  }),
  counts: z.object({ readings: z.number(), spots: z.number(), spotsDetected: z.number() }),
  budget: z.array(z.object({ code: z.string(), u: z.number(), nu: z.number().nullable() })),
  inputsDigest: z.string(),
  instruments: z.array(z.string()),
});
export type RetestValue = z.infer<typeof retestValue>;

export const retestStates = ["asked", "done", "called-off"] as const;
export type RetestRecord = {
  id: string;
  itemId: string;
  componentId: string;
  element: string;
  askedById: string;
  testerId: string;
  note: string;
  state: (typeof retestStates)[number];
  first: RetestValue;
  second: RetestValue | null;
  askedAt: Date;
  doneAt: Date | null;
};

type Row = Awaited<ReturnType<Db["retest"]["findFirstOrThrow"]>>;
const retestOf = ({ firstValue, secondValue, state, ...row }: Row): RetestRecord => ({
  ...row,
  state: z.enum(retestStates).parse(state),
  first: retestValue.parse(JSON.parse(firstValue)),
  second: secondValue === null ? null : retestValue.parse(JSON.parse(secondValue)),
});

export async function addRetest(
  tx: Db,
  retest: Pick<
    RetestRecord,
    "itemId" | "componentId" | "element" | "askedById" | "testerId" | "note" | "askedAt" | "first"
  >,
): Promise<string> {
  const { first, ...rest } = retest;
  return (await tx.retest.create({ data: { ...rest, firstValue: JSON.stringify(first) } })).id;
}

export async function findRetest(db: Db, id: string): Promise<RetestRecord | null> {
  const row = await db.retest.findUnique({ where: { id } });
  return row ? retestOf(row) : null;
}

/** Re-tests of one item, or of all, the newest first. */
export async function retestsOf(db: Db, where: { itemId?: string; testerId?: string } = {}): Promise<RetestRecord[]> {
  return (await db.retest.findMany({ where, orderBy: [{ askedAt: "desc" }, { id: "asc" }] })).map(retestOf);
}

/** What a re-tester may know of what was asked: never the first value. */
export type AskedRetest = Pick<RetestRecord, "id" | "itemId" | "componentId" | "element" | "note" | "askedAt">;

/** The re-tests a person has been asked for and has not handed in; their first values are not even read. */
export async function openRetestsFor(db: Db, testerId: string): Promise<AskedRetest[]> {
  return db.retest.findMany({
    where: { testerId, state: "asked" },
    orderBy: { askedAt: "asc" },
    select: { id: true, itemId: true, componentId: true, element: true, note: true, askedAt: true },
  });
}

export const isBlindTo = async (db: Db, personId: string, itemId: string): Promise<boolean> =>
  (await db.retest.count({ where: { testerId: personId, itemId, state: "asked" } })) > 0;

export const hasOpenRetest = async (db: Db, itemId: string): Promise<boolean> =>
  (await db.retest.count({ where: { itemId, state: "asked" } })) > 0;

/**
 * The readings of an item as far as `viewerId` may see them while a re-test is open: whoever re-tests sees their own and nobody else's; for
 * everybody else, and for the item's own result, the re-tester's stay apart until they are handed in.
 */
export async function keptApart<Reading extends { createdById: string }>(
  db: Db,
  itemId: string,
  readings: Reading[],
  viewerId: string | null,
): Promise<Reading[]> {
  const open = await db.retest.findMany({ where: { itemId, state: "asked" }, select: { testerId: true } });
  const testers = new Set(open.map((retest) => retest.testerId));
  if (viewerId !== null && testers.has(viewerId)) return readings.filter((r) => r.createdById === viewerId);
  return readings.filter((r) => !testers.has(r.createdById));
}

/** For lists of readings over all items: the filter (a part of a `where`) that leaves out what a person re-tests blind and did not load. */
export async function hiddenFrom(db: Db, viewerId: string): Promise<object> {
  const items = (await openRetestsFor(db, viewerId)).map((retest) => retest.itemId);
  if (items.length === 0) return {};
  return {
    NOT: {
      component: { specimen: { itemId: { in: items } } },
      batch: { createdById: { not: viewerId } },
    },
  };
}

export async function closeRetest(
  tx: Db,
  id: string,
  closing: { state: "done"; second: RetestValue; doneAt: Date; readingIds: string[] } | { state: "called-off" },
): Promise<void> {
  if (closing.state === "called-off") {
    await tx.retest.update({ where: { id }, data: { state: "called-off" } });
    return;
  }
  const { state, second, doneAt, readingIds } = closing;
  await tx.retest.update({ where: { id }, data: { state, doneAt, secondValue: JSON.stringify(second) } });
  await tx.reading.updateMany({ where: { id: { in: readingIds } }, data: { retestId: id } });
}
