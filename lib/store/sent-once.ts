import type { Db } from "./database.ts";

/** Answers already given to what a phone may send twice. The id is made by the phone. */
export async function answerGiven(
  db: Db,
  id: string,
  userId: string,
  action: string,
): Promise<string | "foreign" | null> {
  const row = await db.sentOnce.findUnique({ where: { id } });
  if (!row) return null;
  return row.userId === userId && row.action === action ? row.answer : "foreign";
}

export async function keepAnswer(
  tx: Db,
  sent: { id: string; userId: string; action: string; answer: string; createdAt: Date },
): Promise<void> {
  await tx.sentOnce.create({ data: sent });
}
