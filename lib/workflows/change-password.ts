import { z } from "zod";
import { passwordProblem } from "../access/password-rules.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { type Db, inTransaction } from "../store/database.ts";

export const changePasswordInput = z.object({ current: z.string().min(1), password: z.string() });

/**
 * A person changes their own password, knowing the old one; every other sign-in of theirs ends. `change` is better-auth's, which
 * writes the account and this browser's new session in the transaction; false where the old password is not right.
 */
export async function changePasswordWorkflow(
  context: Context,
  input: z.input<typeof changePasswordInput>,
  change: (tx: Db, input: { current: string; password: string }) => Promise<boolean>,
): Promise<Outcome<null>> {
  const { person } = context;
  if (!person) return refused({ code: "not-signed-in" });
  const { current, password } = changePasswordInput.parse(input);
  const poor = passwordProblem(password, person);
  if (poor) return refused(poor);
  return inTransaction(context.db, async (tx) => {
    if (!(await change(tx, { current, password })))
      return refused({ code: "wrong-password", where: { field: "current" } });
    const of = { record: "person", recordId: person.id };
    await recordAct(tx, { at: context.clock(), actor: person, action: "change-password", ...of });
    return done(null);
  });
}
