import { z } from "zod";
import { addPerson } from "../access/add-person.ts";
import type { makeAuth } from "../access/auth.ts";
import { passwordProblem } from "../access/password-rules.ts";
import { type Person, roles } from "../access/permissions.ts";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { emailTaken } from "../store/people.ts";

export const memberInput = z.object({
  name: z.string().trim().min(1).max(120),
  email: z.email(),
  password: z.string(),
  role: z.enum(roles),
});

/** The owner adds somebody who can sign in. */
export async function addMemberWorkflow(
  context: Context & { auth: ReturnType<typeof makeAuth> },
  input: z.input<typeof memberInput>,
): Promise<Outcome<Person>> {
  const permitted = requirePermission(context.person, "manage-people");
  if (!permitted.ok) return permitted;
  const fields = memberInput.parse(input);
  const poor = passwordProblem(fields.password, fields);
  if (poor) return refused(poor);
  if (await emailTaken(context.db, fields.email))
    return refused({ code: "email-taken", where: { field: "email" }, found: fields.email });
  const person = await addPerson(context.auth, fields);
  // The account is better-auth's to write, outside any transaction of ours.
  await recordAct(context.db, {
    at: context.clock(),
    actor: permitted.value,
    action: "add-member",
    record: "person",
    recordId: person.id,
    detail: { name: person.name, role: person.role },
  });
  return done(person);
}
