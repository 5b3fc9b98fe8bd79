import { z } from "zod";
import { type Person, roles } from "../access/permissions.ts";
import type { Db } from "./database.ts";
import { peopleByEmails, personByEmail } from "./people.ts";

const role = z.enum(roles);
type Row = { id: string; email: string; role: string; createdAt: Date; expiresAt: Date };
/** A link that works once. `account` is whose new password it is for; null where somebody is invited, who has none yet. */
export type Invitation = Omit<Row, "role"> & { role: z.infer<typeof role>; account: Person | null };

const invitationOf = (row: Row, account: Person | null): Invitation => ({
  id: row.id,
  email: row.email,
  role: role.parse(row.role),
  createdAt: row.createdAt,
  expiresAt: row.expiresAt,
  account,
});

export async function addInvitation(
  tx: Db,
  invitation: Omit<Invitation, "id" | "account"> & { tokenSha256: string; createdById: string },
): Promise<string> {
  // A second link for one address makes the first useless.
  await dropInvitationsFor(tx, invitation.email);
  return (await tx.invitation.create({ data: invitation })).id;
}

/** Those that can still be used, newest first. */
export async function openInvitations(db: Db, now: Date): Promise<Invitation[]> {
  const rows = await db.invitation.findMany({
    where: { usedAt: null, expiresAt: { gt: now } },
    orderBy: { createdAt: "desc" },
  });
  const people = await peopleByEmails(
    db,
    rows.map(({ email }) => email),
  );
  const accounts = new Map(people.map((person) => [person.email, person]));
  return rows.map((row) => invitationOf(row, accounts.get(row.email) ?? null));
}

/** The invitation a link stands for, where it can still be used. */
export async function openInvitation(db: Db, tokenSha256: string, now: Date): Promise<Invitation | null> {
  const row = await db.invitation.findFirst({ where: { tokenSha256, usedAt: null, expiresAt: { gt: now } } });
  return row && invitationOf(row, await personByEmail(db, row.email));
}

/** Uses an invitation up. Of two who come with one link only one is told yes. */
export const spendInvitation = async (db: Db, tokenSha256: string, now: Date): Promise<boolean> =>
  (
    await db.invitation.updateMany({
      where: { tokenSha256, usedAt: null, expiresAt: { gt: now } },
      data: { usedAt: now },
    })
  ).count === 1;

/** Takes one back that nobody has used; false where there is none. */
export const dropInvitation = async (tx: Db, id: string): Promise<boolean> =>
  (await tx.invitation.deleteMany({ where: { id, usedAt: null } })).count === 1;

/** Takes back every one for an address that nobody has used. */
export async function dropInvitationsFor(tx: Db, email: string): Promise<void> {
  await tx.invitation.deleteMany({ where: { email: email.toLowerCase(), usedAt: null } });
}
