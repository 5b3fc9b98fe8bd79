import { requirePermission } from "../access/require-permission.ts";
import type { Clock } from "../platform/clock.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { type Database, type Db, inTransaction } from "../store/database.ts";
import { peopleByIds, personByEmail } from "../store/people.ts";
import { removeSecondStep } from "../store/second-steps.ts";

type Who = { id: string; name: string };

/**
 * The owner takes away the second step of somebody who has lost both device and recovery codes. That person's sign-ins end, and their
 * password alone lets them in again. Nobody does it to themselves here: that would be turning it off without the password.
 */
export async function removeSecondStepWorkflow(context: Context, personId: string): Promise<Outcome<Who>> {
  const permitted = requirePermission(context.person, "manage-people");
  if (!permitted.ok) return permitted;
  const actor = permitted.value;
  if (actor.id === personId) return refused({ code: "own-second-step" });
  return inTransaction(context.db, async (tx) => {
    const [person] = await peopleByIds(tx, [personId]);
    return removed(tx, person, { actor, at: context.clock() });
  });
}

/** The same by whoever has the machine, for an owner who is alone: nobody else could let them in again. */
export const removeSecondStepAtMachine = (db: Database, email: string, clock: Clock): Promise<Outcome<Who>> =>
  inTransaction(db, async (tx) => removed(tx, await personByEmail(tx, email), { actor: null, at: clock() }));

async function removed(
  tx: Db,
  person: Who | undefined | null,
  act: { actor: Who | null; at: Date },
): Promise<Outcome<Who>> {
  if (!person || !(await removeSecondStep(tx, person.id))) return refused({ code: "second-step-is-off" });
  const of = { record: "person", recordId: person.id, detail: { name: person.name } };
  await recordAct(tx, { ...act, action: "remove-second-step", ...of });
  return done({ id: person.id, name: person.name });
}
