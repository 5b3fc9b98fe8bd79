import { sha256 } from "../platform/sha256.ts";
import type { Outcome, Problem } from "../quantity/problem.ts";
import { done, refused } from "../quantity/problem.ts";
import type { Db } from "../store/database.ts";
import { takeTurn } from "../store/rate-buckets.ts";
import type { Auth } from "./auth.ts";
import { readCode } from "./recovery-codes.ts";

/** What better-auth's refusals are to us; any other is a bug or a broken machine. */
const refusals: Record<string, Problem> = {
  INVALID_PASSWORD: { code: "wrong-password", where: { field: "current" } },
  INVALID_CODE: { code: "wrong-code", where: { field: "code" } },
  INVALID_BACKUP_CODE: { code: "wrong-code", where: { field: "code" } },
  TOO_MANY_ATTEMPTS_REQUEST_NEW_CODE: { code: "code-wait-over", where: { field: "code" } },
  INVALID_TWO_FACTOR_COOKIE: { code: "code-wait-over", where: { field: "code" } },
  ACCOUNT_TEMPORARILY_LOCKED: { code: "rate-limited", where: { field: "code" }, allowed: "15 minutes" },
  TOTP_ALREADY_ENABLED: { code: "second-step-is-on" },
  TOTP_NOT_ENABLED: { code: "second-step-is-off" },
  TWO_FACTOR_NOT_ENABLED: { code: "second-step-is-off" },
};

/** What better-auth answers, as `read` takes it, or its refusal as ours. */
async function asked<T, U>(work: Promise<T>, read: (answer: T) => U): Promise<Outcome<U>> {
  try {
    return done(read(await work));
  } catch (error) {
    const problem = refusals[(error as { body?: { code?: string } }).body?.code ?? ""];
    if (!problem) throw error;
    return refused(problem);
  }
}

const nothing = () => null;

/** The secret of an otpauth address, as a person types it where nothing scans: base 32, in groups of four. */
const spelt = (uri: string): string =>
  (new URL(uri).searchParams.get("secret") ?? "").replaceAll(/(.{4})(?=.)/g, "$1 ");

/** A new key for whoever is signed in and knows their password. It counts from the first code on that `confirmKey` has seen. */
export const makeKey = (
  auth: Auth,
  headers: Headers,
  password: string,
): Promise<Outcome<{ uri: string; spelt: string }>> =>
  asked(auth.api.enableTwoFactor({ body: { password, method: "totp" }, headers }), (made) => {
    if (made.method !== "totp") throw new Error("A key was asked for and none came.");
    return { uri: made.totpURI, spelt: spelt(made.totpURI) };
  });

/**
 * Takes one code of the app for one person once: RFC 6238 §5.2 has a code accepted a single time, and better-auth does not remember it. A
 * code is good in its own half minute and in those beside it, so 90 seconds after its first use it is dead by itself. It is taken before it is
 * looked at, so that of two who send it at once one is refused.
 */
export async function takeCode(db: Db, userId: string, code: string, now: Date): Promise<Problem | null> {
  const key = `code ${sha256(`${userId} ${code}`).slice(0, 32)}`;
  const turn = await takeTurn(db, key, { most: 1, windowSeconds: 90, now });
  return turn.ok ? null : { code: "code-used", where: { field: "code" } };
}

/** The first code of a new key: from now on it is asked for. This browser's session is made anew, every other sign-in ends. */
export async function confirmKey(auth: Auth, headers: Headers, userId: string, code: string): Promise<Outcome<null>> {
  const { internalAdapter } = await auth.$context;
  const before = await internalAdapter.listSessions(userId);
  const right = await asked(auth.api.verifyTOTP({ body: { code }, headers }), nothing);
  if (right.ok) for (const { token } of before) await internalAdapter.deleteSession(token);
  return right;
}

/** The recovery codes that are left, in the clear. For the moment in which they are shown, and to count them. */
export const recoveryCodes = async (auth: Auth, userId: string): Promise<string[]> =>
  (await auth.api.viewBackupCodes({ body: { userId } })).backupCodes;

/** Ten new recovery codes in place of those that are left. */
export const renewRecoveryCodes = (auth: Auth, headers: Headers, password: string): Promise<Outcome<string[]>> =>
  asked(auth.api.generateBackupCodes({ body: { password }, headers }), ({ backupCodes }) => backupCodes);

/** No code is asked for any more. This browser's session is made anew. */
export const dropKey = (auth: Auth, headers: Headers, password: string): Promise<Outcome<null>> =>
  asked(auth.api.disableTwoFactor({ body: { password }, headers }), nothing);

/**
 * The second step of a sign-in: a code of the app or a recovery code. Only then is there a session, and a new one. Better-auth ends the
 * wait after five wrong codes, and locks the second step for a quarter of an hour after ten in a row.
 */
export async function enterCode(
  auth: Auth,
  headers: Headers,
  asking: { db: Db; userId: string; typed: string; now: Date },
): Promise<Outcome<null>> {
  const read = readCode(asking.typed);
  if (!read) return refused({ code: "no-code", where: { field: "code" }, found: asking.typed.slice(0, 20) });
  const body = { code: read.code };
  if (read.kind === "recovery") return asked(auth.api.verifyBackupCode({ body, headers }), nothing);
  const used = await takeCode(asking.db, asking.userId, read.code, asking.now);
  if (used) return refused(used);
  return asked(auth.api.verifyTOTP({ body, headers }), nothing);
}
