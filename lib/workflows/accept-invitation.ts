import { z } from "zod";
import { addPerson } from "../access/add-person.ts";
import type { Auth } from "../access/auth.ts";
import { passwordProblem } from "../access/password-rules.ts";
import type { Person } from "../access/permissions.ts";
import { type Clock, systemClock } from "../platform/clock.ts";
import { sha256 } from "../platform/sha256.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { type Database, type Db, inTransaction } from "../store/database.ts";
import { openInvitation, spendInvitation } from "../store/invitations.ts";
import { emailTaken } from "../store/people.ts";

export const acceptInput = z.object({
  token: z.string().min(1).max(100),
  name: z.string().trim().min(1).max(120),
  password: z.string(),
});

/**
 * Whoever holds an invitation's link makes their account: their own name and password, the address and role that the owner wrote. Nobody
 * is signed in for it, so the link is all that is asked for.
 *
 * Refused: a link that is used, taken back or too old (`invitation-gone`), an address that has an account meanwhile, a poor password.
 */
export async function acceptInvitationWorkflow(
  context: { db: Database; authIn: (tx: Db) => Auth; clock?: Clock },
  input: z.input<typeof acceptInput>,
): Promise<Outcome<Person>> {
  const { db, authIn, clock = systemClock } = context;
  const { token, name, password } = acceptInput.parse(input);
  const tokenSha256 = sha256(token);
  return inTransaction(db, async (tx) => {
    const invitation = await openInvitation(tx, tokenSha256, clock());
    if (!invitation) return refused({ code: "invitation-gone" });
    const { email, role } = invitation;
    const poor = passwordProblem(password, { email, name });
    if (poor) return refused(poor);
    if (await emailTaken(tx, email)) return refused({ code: "email-taken", found: email });
    if (!(await spendInvitation(tx, tokenSha256, clock()))) return refused({ code: "invitation-gone" });
    const person = await addPerson(authIn(tx), { name, email, password, role });
    const of = { record: "person", recordId: person.id, detail: { name, role } };
    await recordAct(tx, { at: clock(), actor: person, action: "accept-invitation", ...of });
    return done(person);
  });
}
