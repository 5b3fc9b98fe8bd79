import { sha256 } from "../platform/sha256.ts";
import type { Problem } from "../quantity/problem.ts";
import type { Db } from "../store/database.ts";
import { forgetTurns, returnTurn, takeTurn } from "../store/rate-buckets.ts";

/** Tries within a quarter of an hour (policy; NIST SP 800-63B §5.2.2 allows at most 100 failed tries in a row on one account). */
const windowSeconds = 15 * 60;
const most = { account: 10, place: 30 } as const;

const accountKey = (email: string): string => `sign-in ${sha256(email.trim().toLowerCase()).slice(0, 32)}`;

const placeKey = (place: string): string => `sign-in place ${place}`;

/**
 * Counts a try to sign in, by the account it is for and by the place it comes from; null where it may go on. A try is
 * counted before the password is looked at, so that tries sent at once count too.
 */
export async function takeSignInTurn(db: Db, email: string, place: string, now: Date): Promise<Problem | null> {
  const turns = [
    await takeTurn(db, accountKey(email), { most: most.account, windowSeconds, now }),
    await takeTurn(db, placeKey(place), { most: most.place, windowSeconds, now }),
  ];
  const wait = Math.max(...turns.map((turn) => (turn.ok ? 0 : turn.waitSeconds)));
  return wait === 0 ? null : { code: "rate-limited", allowed: `${Math.ceil(wait / 60)} minutes` };
}

/** After the right password, where a code is still to come: the account goes on being counted, its place has the one try back. */
export const halfSignedIn = (db: Db, place: string): Promise<void> => returnTurn(db, placeKey(place));

/** After the last right answer the account starts anew, and its place has the one try back. */
export async function signedIn(db: Db, email: string, place: string): Promise<void> {
  await forgetTurns(db, accountKey(email));
  await returnTurn(db, placeKey(place));
}
