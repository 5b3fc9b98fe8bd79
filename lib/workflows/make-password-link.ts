import { oneTimeLink } from "../access/one-time-link.ts";
import type { Person } from "../access/permissions.ts";
import { requirePermission } from "../access/require-permission.ts";
import type { Clock } from "../platform/clock.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { type Database, type Db, inTransaction } from "../store/database.ts";
import { addInvitation } from "../store/invitations.ts";
import { peopleByIds, personByEmail } from "../store/people.ts";

/** A day: it opens an account that is there already, so it lies about for less long than an invitation (our own choice). */
const lastsDays = 1;

type Link = { token: string; name: string; expiresAt: Date };

/**
 * The owner makes a link with which somebody who has forgotten their password sets a new one, once, within a day. Its token is told here and
 * never again; an older link for the same person works no more. Until it is used the old password stays.
 *
 * Refused: for oneself (`own-password-link`: that would be a new password without the old one), and for nobody (`no-such-person`).
 */
export async function makePasswordLinkWorkflow(context: Context, personId: string): Promise<Outcome<Link>> {
  const permitted = requirePermission(context.person, "manage-people");
  if (!permitted.ok) return permitted;
  const actor = permitted.value;
  if (actor.id === personId) return refused({ code: "own-password-link" });
  return inTransaction(context.db, async (tx) => {
    const [person] = await peopleByIds(tx, [personId]);
    return made(tx, person, { actor, at: context.clock() });
  });
}

/** The same by whoever has the machine, for an owner who is alone: nobody else could make one for them. */
export const makePasswordLinkAtMachine = (db: Database, email: string, clock: Clock): Promise<Outcome<Link>> =>
  inTransaction(db, async (tx) => made(tx, await personByEmail(tx, email), { actor: null, at: clock() }));

async function made(
  tx: Db,
  person: Person | undefined | null,
  act: { actor: Person | null; at: Date },
): Promise<Outcome<Link>> {
  if (!person) return refused({ code: "no-such-person" });
  const { id, name, email, role } = person;
  const { token, kept } = oneTimeLink(act.at, lastsDays);
  await addInvitation(tx, { email, role, ...kept, createdById: act.actor?.id ?? "at the machine" });
  await recordAct(tx, { ...act, action: "make-password-link", record: "person", recordId: id, detail: { name } });
  return done({ token, name, expiresAt: kept.expiresAt });
}
