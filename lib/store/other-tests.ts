import { z } from "zod";
import type { Db } from "./database.ts";

/** Wipes, leachates and laboratory results of an object. Never mixed with readings: they have a table and a page's section of their own. */
export const otherTestKinds = ["wipe", "leachate", "laboratory"] as const;
export type OtherTestKind = (typeof otherTestKinds)[number];

export type OtherTestFields = {
  componentId: string | null;
  kind: OtherTestKind;
  element: string;
  valueText: string;
  value: number | null;
  reportingLimit: number | null;
  unit: string;
  u: number | null;
  sampleAreaCm2: number | null;
  blankText: string | null;
  laboratory: string;
  method: string;
  reportedOn: string | null;
  note: string;
};
export type OtherTestRecord = OtherTestFields & {
  id: string;
  specimenId: string;
  certificateKey: string | null;
  certificateName: string | null;
};

type Row = Awaited<ReturnType<Db["otherTest"]["findFirstOrThrow"]>>;
const testOf = ({ createdById: _, createdAt: __, removedAt: ___, kind, ...row }: Row): OtherTestRecord => ({
  ...row,
  kind: z.enum(otherTestKinds).parse(kind),
});

export async function addOtherTest(
  tx: Db,
  specimenId: string,
  fields: OtherTestFields & { certificateKey: string | null; certificateName: string | null; createdById: string },
): Promise<string> {
  return (await tx.otherTest.create({ data: { ...fields, specimenId } })).id;
}

export async function testsOfSpecimen(db: Db, specimenId: string): Promise<OtherTestRecord[]> {
  const where = { specimenId, removedAt: null };
  return (await db.otherTest.findMany({ where, orderBy: [{ createdAt: "asc" }, { id: "asc" }] })).map(testOf);
}

export async function testsOfItem(db: Db, itemId: string): Promise<OtherTestRecord[]> {
  const where = { specimen: { itemId }, removedAt: null };
  return (await db.otherTest.findMany({ where, orderBy: [{ createdAt: "asc" }, { id: "asc" }] })).map(testOf);
}

/** Those taken away too, so that they can be put back. */
export async function allTestsOfItem(db: Db, itemId: string): Promise<(OtherTestRecord & { removed: boolean })[]> {
  const rows = await db.otherTest.findMany({ where: { specimen: { itemId } }, orderBy: { createdAt: "asc" } });
  return rows.map((row) => ({ ...testOf(row), removed: row.removedAt !== null }));
}

export async function findOtherTest(db: Db, id: string): Promise<(OtherTestRecord & { removed: boolean }) | null> {
  const row = await db.otherTest.findUnique({ where: { id } });
  return row ? { ...testOf(row), removed: row.removedAt !== null } : null;
}

export async function setTestRemoved(tx: Db, id: string, at: Date | null): Promise<void> {
  await tx.otherTest.update({ where: { id }, data: { removedAt: at } });
}

export async function keepTestCertificate(tx: Db, id: string, file: { key: string; name: string }): Promise<void> {
  await tx.otherTest.update({ where: { id }, data: { certificateKey: file.key, certificateName: file.name } });
}
