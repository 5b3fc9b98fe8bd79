import type { Db } from "./database.ts";

export type CheckStandardFields = {
  name: string;
  matrix: string;
  certified: string;
  certificate: string | null;
  expiresOn: string | null;
};

/** Adds a check standard or changes what its certificate says; its name tells it apart. */
export async function saveCheckStandard(tx: Db, fields: CheckStandardFields): Promise<string> {
  return (await tx.checkStandard.upsert({ where: { name: fields.name }, create: fields, update: fields })).id;
}

export async function listCheckStandards(db: Db): Promise<{ id: string; name: string; matrix: string }[]> {
  return db.checkStandard.findMany({ orderBy: { name: "asc" }, select: { id: true, name: true, matrix: true } });
}
