import { betterAuth } from "better-auth";
import { prismaAdapter } from "better-auth/adapters/prisma";
import { nextCookies } from "better-auth/next-js";
import { twoFactor } from "better-auth/plugins";
import { environment } from "../platform/environment.ts";
import { secretFile } from "../platform/secret-file.ts";
import { type Db, database, dialectOf } from "../store/database.ts";
import { shortestPassword } from "./password-rules.ts";
import { makeRecoveryCodes } from "./recovery-codes.ts";
import { waitingForCode } from "./waiting-for-code.ts";

export type AuthOptions = { baseUrl: string; port: number; secret: string; cookies: boolean };

/**
 * Sign-in by better-auth: password hashing, session tokens and their cookies are its work, and so is the second step, whose key and
 * recovery codes it keeps encrypted with `secret`. Nobody signs up by themselves: the owner is made by the set-up page, others by the owner.
 */
export function makeAuth(db: Db, options: AuthOptions) {
  const origins = [options.baseUrl, `http://localhost:${options.port}`, `http://127.0.0.1:${options.port}`];
  return betterAuth({
    database: prismaAdapter(db, { provider: dialectOf(db) === "sqlite" ? "sqlite" : "postgresql" }),
    baseURL: options.baseUrl,
    secret: options.secret,
    trustedOrigins: [...new Set(origins)],
    telemetry: { enabled: false },
    emailAndPassword: { enabled: true, disableSignUp: true, minPasswordLength: shortestPassword },
    user: { additionalFields: { role: { type: "string", required: true, defaultValue: "tester", input: false } } },
    session: { modelName: "AuthSession", expiresIn: 60 * 60 * 24 * 14 },
    account: { modelName: "AuthAccount" },
    verification: { modelName: "AuthVerification" },
    advanced: { useSecureCookies: options.baseUrl.startsWith("https:") },
    plugins: [
      twoFactor({
        // What an authenticator app lists the key under; a port would end the name there.
        issuer: `Cupboard Assay ${new URL(options.baseUrl).hostname}`,
        schema: { twoFactor: { modelName: "AuthTwoFactor" } },
        backupCodeOptions: { customBackupCodesGenerate: makeRecoveryCodes },
      }),
      waitingForCode(),
      // Last, so that it hands on the cookies that the others set.
      ...(options.cookies ? [nextCookies()] : []),
    ],
  });
}

export type Auth = ReturnType<typeof makeAuth>;
const shared = globalThis as { cupboardAssayAuth?: Auth };

const ofProcess = (db: Db): Auth => {
  const { baseUrl, port, dataDir } = environment();
  return makeAuth(db, { baseUrl, port, secret: secretFile(dataDir, "auth-secret"), cookies: true });
};

export function auth(): Auth {
  shared.cupboardAssayAuth ??= ofProcess(database());
  return shared.cupboardAssayAuth;
}

/** The same over a transaction: what better-auth writes in it is written with the rest of it, or not at all. */
export const authIn = (tx: Db): Auth => ofProcess(tx);
