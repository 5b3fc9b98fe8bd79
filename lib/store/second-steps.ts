import type { Db } from "./database.ts";

/** Whether a code is asked for when this person signs in. */
export const hasSecondStep = async (db: Db, userId: string): Promise<boolean> =>
  (await db.user.count({ where: { id: userId, twoFactorEnabled: true } })) > 0;

export const peopleWithSecondStep = async (db: Db): Promise<ReadonlySet<string>> =>
  new Set((await db.user.findMany({ where: { twoFactorEnabled: true }, select: { id: true } })).map(({ id }) => id));

/** Ends sign-ins that have the password and wait for a code. */
export async function endHalfSignIns(tx: Db, userId: string): Promise<void> {
  await tx.authVerification.deleteMany({ where: { value: userId, identifier: { startsWith: "2fa-" } } });
}

/** Takes somebody's second step away and ends their sign-ins; false where they have none. */
export async function removeSecondStep(tx: Db, userId: string): Promise<boolean> {
  const { count } = await tx.user.updateMany({
    where: { id: userId, twoFactorEnabled: true },
    data: { twoFactorEnabled: false },
  });
  await tx.authTwoFactor.deleteMany({ where: { userId } });
  if (count > 0) await tx.authSession.deleteMany({ where: { userId } });
  return count > 0;
}
