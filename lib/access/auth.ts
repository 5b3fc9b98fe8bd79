import { betterAuth } from "better-auth";
import { prismaAdapter } from "better-auth/adapters/prisma";
import { nextCookies } from "better-auth/next-js";
import { environment } from "../platform/environment.ts";
import { secretFile } from "../platform/secret-file.ts";
import { type Database, database, dialectOf } from "../store/database.ts";
import { shortestPassword } from "./password-rules.ts";

/**
 * Sign-in by better-auth: password hashing, session tokens and their cookies are its work. Nobody signs up by
 * themselves: the owner is made by the set-up page, others by the owner.
 */
export function makeAuth(db: Database, options: { baseUrl: string; port: number; secret: string; cookies: boolean }) {
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
    plugins: options.cookies ? [nextCookies()] : [],
  });
}

type Auth = ReturnType<typeof makeAuth>;
const shared = globalThis as { cupboardAssayAuth?: Auth };

export function auth(): Auth {
  const { baseUrl, port, dataDir } = environment();
  shared.cupboardAssayAuth ??= makeAuth(database(), {
    baseUrl,
    port,
    secret: secretFile(dataDir, "auth-secret"),
    cookies: true,
  });
  return shared.cupboardAssayAuth;
}
