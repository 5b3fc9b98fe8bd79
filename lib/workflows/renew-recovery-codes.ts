import type { Auth } from "../access/auth.ts";
import { renewRecoveryCodes } from "../access/second-step.ts";
import type { Context } from "../platform/context.ts";
import type { Outcome } from "../quantity/problem.ts";
import { refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { type Db, inTransaction } from "../store/database.ts";

/** New recovery codes for whoever is signed in and knows their password; the old ones are worth nothing. Told this once. */
export async function renewRecoveryCodesWorkflow(
  context: Context & { authIn: (tx: Db) => Auth; headers: Headers },
  { current }: { current: string },
): Promise<Outcome<string[]>> {
  const { db, person, clock, authIn, headers } = context;
  if (!person) return refused({ code: "not-signed-in" });
  return inTransaction(db, async (tx) => {
    const codes = await renewRecoveryCodes(authIn(tx), headers, current);
    if (!codes.ok) return codes;
    const of = { record: "person", recordId: person.id };
    await recordAct(tx, { at: clock(), actor: person, action: "renew-recovery-codes", ...of });
    return codes;
  });
}
