import { z } from "zod";
import type { CheckStandard as JudgedStandard } from "../consistency/check-standard.ts";
import { materials } from "../quantity/item-words.ts";
import { units } from "../quantity/units.ts";
import type { Db } from "./database.ts";
import { textRows } from "./dialect.ts";
import { listReadings, type StoredReading } from "./readings.ts";

export const certifiedValue = z.object({
  value: z.number().positive().nullable(),
  below: z.number().positive().nullable(),
  U: z.number().positive().nullable(),
  k: z.union([z.literal(1), z.literal(2), z.literal(3)]),
  unit: z.enum(units as [(typeof units)[number], ...typeof units]),
});
export const certifiedValues = z.record(z.string(), certifiedValue);

/** A check standard as its certificate and its tester describe it. */
export type CheckStandardFields = {
  name: string;
  matrix: string;
  material: (typeof materials)[number];
  modes: string[];
  otherNames: string[];
  certified: z.infer<typeof certifiedValues>;
  certificate: string | null;
  expiresOn: string | null;
};
export type CheckStandard = CheckStandardFields &
  JudgedStandard & {
    id: string;
    certificateKey: string | null;
    certificateName: string | null;
    retiredAt: Date | null;
  };

type Row = Awaited<ReturnType<Db["checkStandard"]["findFirstOrThrow"]>>;
const names = z.array(z.string());

const standardOf = (row: Row): CheckStandard => ({
  id: row.id,
  name: row.name,
  matrix: row.matrix,
  material: z.enum(materials).parse(row.material),
  modes: names.parse(JSON.parse(row.modes)),
  otherNames: names.parse(JSON.parse(row.otherNames)),
  certified: certifiedValues.parse(JSON.parse(row.certified)),
  certificate: row.certificate,
  expiresOn: row.expiresOn,
  certificateKey: row.certificateKey,
  certificateName: row.certificateName,
  retiredAt: row.retiredAt,
});

/** Adds a check standard, or changes the one of that id. */
export async function saveCheckStandard(tx: Db, fields: CheckStandardFields, id?: string): Promise<CheckStandard> {
  const { name, matrix, material, certificate, expiresOn } = fields;
  const data = {
    name,
    matrix,
    material,
    certificate,
    expiresOn,
    modes: JSON.stringify(fields.modes),
    otherNames: JSON.stringify(fields.otherNames),
    certified: JSON.stringify(fields.certified),
  };
  return standardOf(
    id ? await tx.checkStandard.update({ where: { id }, data }) : await tx.checkStandard.create({ data }),
  );
}

/** All of them, those in use first. */
export async function listCheckStandards(db: Db): Promise<CheckStandard[]> {
  const all = (await db.checkStandard.findMany({ orderBy: { name: "asc" } })).map(standardOf);
  return [...all.filter((s) => s.retiredAt === null), ...all.filter((s) => s.retiredAt !== null)];
}

export async function findCheckStandard(
  db: Db,
  where: { id: string } | { name: string },
): Promise<CheckStandard | null> {
  const row = await db.checkStandard.findUnique({ where });
  return row ? standardOf(row) : null;
}

export async function keepCertificate(tx: Db, id: string, file: { key: string; name: string } | null): Promise<void> {
  await tx.checkStandard.update({
    where: { id },
    data: { certificateKey: file?.key ?? null, certificateName: file?.name ?? null },
  });
}

export async function setRetired(tx: Db, id: string, at: Date | null): Promise<void> {
  await tx.checkStandard.update({ where: { id }, data: { retiredAt: at } });
}

/** Every reading of one standard that is in force, set aside or not. */
export const checkReadingsOf = (db: Db, checkStandardId: string): Promise<StoredReading[]> =>
  listReadings(db, { checkStandardId }, 5_000);

/** Marks readings as read on a standard; whatever part they were on, they are on it no more. */
export async function markCheckReadings(tx: Db, ids: readonly string[], checkStandardId: string): Promise<void> {
  await tx.checkReading.deleteMany({ where: { readingId: { in: [...ids] } } });
  for (let at = 0; at < ids.length; at += 500)
    await tx.checkReading.createMany({
      data: ids.slice(at, at + 500).map((readingId) => ({ readingId, checkStandardId })),
    });
  await tx.$executeRaw`UPDATE "Reading" SET "componentId" = NULL, "spotId" = NULL WHERE id IN ${textRows(tx, ids)}`;
}

export async function unmarkCheckReadings(tx: Db, ids: readonly string[]): Promise<void> {
  await tx.checkReading.deleteMany({ where: { readingId: { in: [...ids] } } });
}
