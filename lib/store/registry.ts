import type { Db } from "./database.ts";

/** What the owner has settled for the whole registry: terms of the data, and how much review a page needs. */
export type RegistryTerms = {
  licence: string;
  contact: string | null;
  /** 0: may publish unreviewed, and the page says so. */
  approvalsNeeded: 0 | 1 | 2;
  rightOfReply: string;
};

const needed = (n: number): RegistryTerms["approvalsNeeded"] => (n <= 0 ? 0 : n === 1 ? 1 : 2);

export async function registryTerms(db: Db): Promise<RegistryTerms> {
  const row = await db.registry.findUnique({ where: { id: 1 } });
  if (!row) return { licence: "CC-BY-4.0", contact: null, approvalsNeeded: 1, rightOfReply: "" };
  const { licence, contact, approvalsNeeded, rightOfReply } = row;
  return { licence, contact, approvalsNeeded: needed(approvalsNeeded), rightOfReply };
}

export async function saveTerms(tx: Db, terms: RegistryTerms): Promise<void> {
  const name = "Cupboard Assay";
  await tx.registry.upsert({ where: { id: 1 }, create: { name, ...terms }, update: terms });
}

/** Whether only one person can sign in, so that nobody is there who could review. */
export const isAlone = async (db: Db): Promise<boolean> => (await db.user.count()) < 2;
