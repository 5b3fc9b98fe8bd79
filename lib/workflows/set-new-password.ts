import { z } from "zod";
import type { Auth } from "../access/auth.ts";
import { passwordProblem } from "../access/password-rules.ts";
import type { Person } from "../access/permissions.ts";
import { setPassword } from "../access/set-password.ts";
import { type Clock, systemClock } from "../platform/clock.ts";
import { sha256 } from "../platform/sha256.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { type Database, type Db, inTransaction } from "../store/database.ts";
import { openInvitation, spendInvitation } from "../store/invitations.ts";
import { endHalfSignIns } from "../store/second-steps.ts";

export const newPasswordInput = z.object({ token: z.string().min(1).max(100), password: z.string() });

/**
 * Whoever holds a link for a new password sets it. Every sign-in of that person ends, one that waits for its code too; their second step
 * stays. Nobody is signed in for it, so the link is all that is asked for.
 *
 * Refused: a link that is used, taken back, too old or no link for a new password (`invitation-gone`), a poor password, which leaves the
 * link good.
 */
export async function setNewPasswordWorkflow(
  context: { db: Database; authIn: (tx: Db) => Auth; clock?: Clock },
  input: z.input<typeof newPasswordInput>,
): Promise<Outcome<Person>> {
  const { db, authIn, clock = systemClock } = context;
  const { token, password } = newPasswordInput.parse(input);
  const tokenSha256 = sha256(token);
  return inTransaction(db, async (tx) => {
    const person = (await openInvitation(tx, tokenSha256, clock()))?.account;
    if (!person) return refused({ code: "invitation-gone" });
    const poor = passwordProblem(password, person);
    if (poor) return refused(poor);
    if (!(await spendInvitation(tx, tokenSha256, clock()))) return refused({ code: "invitation-gone" });
    await setPassword(authIn(tx), person.id, password);
    await endHalfSignIns(tx, person.id);
    const of = { record: "person", recordId: person.id };
    await recordAct(tx, { at: clock(), actor: person, action: "set-new-password", ...of });
    return done(person);
  });
}
