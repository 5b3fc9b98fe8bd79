import { z } from "zod";
import { addPerson } from "../access/add-person.ts";
import type { Auth } from "../access/auth.ts";
import { passwordProblem } from "../access/password-rules.ts";
import { type Person, roles } from "../access/permissions.ts";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { type Db, inTransaction } from "../store/database.ts";
import { dropInvitationsFor } from "../store/invitations.ts";
import { emailTaken } from "../store/people.ts";

export const memberInput = z.object({
  name: z.string().trim().min(1).max(120),
  email: z.email(),
  password: z.string(),
  role: z.enum(roles),
});

/** The owner adds somebody who can sign in. */
export async function addMemberWorkflow(
  context: Context & { authIn: (tx: Db) => Auth },
  input: z.input<typeof memberInput>,
): Promise<Outcome<Person>> {
  const permitted = requirePermission(context.person, "manage-people");
  if (!permitted.ok) return permitted;
  const fields = memberInput.parse(input);
  const poor = passwordProblem(fields.password, fields);
  if (poor) return refused(poor);
  return inTransaction(context.db, async (tx) => {
    if (await emailTaken(tx, fields.email))
      return refused({ code: "email-taken", where: { field: "email" }, found: fields.email });
    // Left open, an invitation of theirs would from now on be a link for a new password.
    await dropInvitationsFor(tx, fields.email);
    const person = await addPerson(context.authIn(tx), fields);
    const of = { record: "person", recordId: person.id, detail: { name: person.name, role: person.role } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "add-member", ...of });
    return done(person);
  });
}
