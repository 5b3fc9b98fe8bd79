import { z } from "zod";
import type { Auth } from "../access/auth.ts";
import { readCode } from "../access/recovery-codes.ts";
import { confirmKey, recoveryCodes, takeCode } from "../access/second-step.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { type Db, inTransaction } from "../store/database.ts";
import { hasSecondStep } from "../store/second-steps.ts";

export const firstCodeInput = z.object({ code: z.string() });

/**
 * Somebody shows by a code that their device holds the key made for them: from now on a code is asked for after the password. Answers with
 * the recovery codes, which are told this once. Every other sign-in of theirs ends.
 */
export async function turnOnSecondStepWorkflow(
  context: Context & { authIn: (tx: Db) => Auth; headers: Headers },
  input: z.input<typeof firstCodeInput>,
): Promise<Outcome<string[]>> {
  const { db, person, clock, authIn, headers } = context;
  if (!person) return refused({ code: "not-signed-in" });
  const { code: typed } = firstCodeInput.parse(input);
  const read = readCode(typed);
  if (read?.kind !== "app") return refused({ code: "no-first-code", where: { field: "code" }, found: typed });
  const used = await takeCode(db, person.id, read.code, clock());
  if (used) return refused(used);
  return inTransaction(db, async (tx) => {
    if (await hasSecondStep(tx, person.id)) return refused({ code: "second-step-is-on" });
    const auth = authIn(tx);
    const right = await confirmKey(auth, headers, person.id, read.code);
    if (!right.ok) return right;
    const of = { record: "person", recordId: person.id };
    await recordAct(tx, { at: clock(), actor: person, action: "turn-on-second-step", ...of });
    return done(await recoveryCodes(auth, person.id));
  });
}
