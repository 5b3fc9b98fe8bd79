import type { Auth } from "../access/auth.ts";
import { dropKey } from "../access/second-step.ts";
import type { Context } from "../platform/context.ts";
import { type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { type Db, inTransaction } from "../store/database.ts";

/** Whoever is signed in and knows their password turns their second step off: key and recovery codes are gone. */
export async function turnOffSecondStepWorkflow(
  context: Context & { authIn: (tx: Db) => Auth; headers: Headers },
  { current }: { current: string },
): Promise<Outcome<null>> {
  const { db, person, clock, authIn, headers } = context;
  if (!person) return refused({ code: "not-signed-in" });
  return inTransaction(db, async (tx) => {
    const off = await dropKey(authIn(tx), headers, current);
    if (!off.ok) return off;
    const of = { record: "person", recordId: person.id };
    await recordAct(tx, { at: clock(), actor: person, action: "turn-off-second-step", ...of });
    return off;
  });
}
