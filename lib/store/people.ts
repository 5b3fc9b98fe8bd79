import { z } from "zod";
import { type Person, roles } from "../access/permissions.ts";
import type { Db } from "./database.ts";

const personOf = (row: { id: string; name: string; email: string; role: string }): Person => ({
  id: row.id,
  name: row.name,
  email: row.email,
  role: z.enum(roles).parse(row.role),
});
const select = { id: true, name: true, email: true, role: true } as const;

export const ownerExists = async (db: Db): Promise<boolean> => (await db.user.count({ where: { role: "owner" } })) > 0;

export async function listPeople(db: Db): Promise<Person[]> {
  return (await db.user.findMany({ select, orderBy: { name: "asc" } })).map(personOf);
}

export async function peopleByIds(db: Db, ids: string[]): Promise<Person[]> {
  return (await db.user.findMany({ where: { id: { in: ids } }, select, orderBy: { name: "asc" } })).map(personOf);
}

export async function peopleByEmails(db: Db, emails: string[]): Promise<Person[]> {
  return (await db.user.findMany({ where: { email: { in: emails } }, select })).map(personOf);
}

export async function personByEmail(db: Db, email: string): Promise<Person | null> {
  const row = await db.user.findUnique({ where: { email: email.toLowerCase() }, select });
  return row && personOf(row);
}

export const emailTaken = async (db: Db, email: string): Promise<boolean> =>
  (await db.user.count({ where: { email: email.toLowerCase() } })) > 0;

/** The set-up token's hash; writing a new one makes the old one useless. */
export async function writeSetUpToken(db: Db, tokenSha256: string): Promise<void> {
  await db.setUpToken.upsert({ where: { id: 1 }, create: { tokenSha256 }, update: { tokenSha256 } });
}
/** Uses the token up if this is its hash. Of two requests with one token only one is told yes. */
export async function spendSetUpToken(db: Db, tokenSha256: string): Promise<boolean> {
  return (await db.setUpToken.deleteMany({ where: { tokenSha256 } })).count === 1;
}
