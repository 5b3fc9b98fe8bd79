import { z } from "zod";
import { roles } from "../access/permissions.ts";
import type { Db } from "./database.ts";

const role = z.enum(roles);
export type Invitation = { id: string; email: string; role: z.infer<typeof role>; createdAt: Date; expiresAt: Date };

const invitationOf = (row: {
  id: string;
  email: string;
  role: string;
  createdAt: Date;
  expiresAt: Date;
}): Invitation => ({
  id: row.id,
  email: row.email,
  role: role.parse(row.role),
  createdAt: row.createdAt,
  expiresAt: row.expiresAt,
});

export async function addInvitation(
  tx: Db,
  invitation: Omit<Invitation, "id"> & { tokenSha256: string; createdById: string },
): Promise<string> {
  // A second link for one address makes the first useless.
  await tx.invitation.deleteMany({ where: { email: invitation.email, usedAt: null } });
  return (await tx.invitation.create({ data: invitation })).id;
}

/** Those that can still be used, newest first. */
export async function openInvitations(db: Db, now: Date): Promise<Invitation[]> {
  const rows = await db.invitation.findMany({
    where: { usedAt: null, expiresAt: { gt: now } },
    orderBy: { createdAt: "desc" },
  });
  return rows.map(invitationOf);
}

/** The invitation a link stands for, where it can still be used. */
export async function openInvitation(db: Db, tokenSha256: string, now: Date): Promise<Invitation | null> {
  const row = await db.invitation.findFirst({ where: { tokenSha256, usedAt: null, expiresAt: { gt: now } } });
  return row && invitationOf(row);
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
