import { randomBytes } from "node:crypto";
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
import { ownerExists, spendSetUpToken, writeSetUpToken } from "../store/people.ts";

/** At a start without an owner: a new one-time token, of which only the hash is kept. Null where an owner exists. */
export async function offerSetUp(db: Database): Promise<string | null> {
  if (await ownerExists(db)) return null;
  const token = randomBytes(16).toString("hex");
  await writeSetUpToken(db, sha256(token));
  return token;
}

export const ownerInput = z.object({
  token: z.string().trim(),
  name: z.string().trim().min(1).max(120),
  email: z.email(),
  password: z.string(),
});

/** Makes the first owner, once, for whoever can read the terminal the token was printed in. */
export async function setUpOwner(
  context: { db: Database; authIn: (tx: Db) => Auth; clock?: Clock },
  input: z.input<typeof ownerInput>,
): Promise<Outcome<Person>> {
  const { token, ...person } = ownerInput.parse(input);
  const { db, authIn, clock = systemClock } = context;
  return inTransaction(db, async (tx) => {
    if (await ownerExists(tx)) return refused({ code: "owner-exists" });
    const poor = passwordProblem(person.password, person);
    if (poor) return refused(poor);
    // Compared as hashes, so that how long a look-up takes says nothing of the token.
    if (!(await spendSetUpToken(tx, sha256(token)))) return refused({ code: "wrong-token", where: { field: "token" } });
    const owner = await addPerson(authIn(tx), { ...person, role: "owner" });
    const of = { record: "person", recordId: owner.id, detail: { name: owner.name } };
    await recordAct(tx, { at: clock(), actor: owner, action: "set-up-owner", ...of });
    return done(owner);
  });
}
