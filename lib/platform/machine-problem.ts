import type { Problem } from "../quantity/problem.ts";

/** What an operating system, SQLite, PostgreSQL's client and Prisma call the same three troubles. */
const troubles: [code: string, signs: RegExp][] = [
  ["disk-full", /\bENOSPC\b|\bEDQUOT\b|SQLITE_FULL|database or disk is full|\b53100\b|No space left on device/],
  ["disk-read-only", /\bEROFS\b|\bEACCES\b|\bEPERM\b|SQLITE_READONLY|readonly database|Read-only file system/],
  [
    "database-away",
    /SQLITE_CANTOPEN|SQLITE_IOERR|unable to open database file|disk I\/O error|\bECONNREFUSED\b|\bECONNRESET\b|\bP1001\b|\bP1017\b|\bP2024\b|\b57P0[123]\b|Can't reach database server|Connection terminated|Server has closed the connection/,
  ],
];

/** All that an error says of itself and of what caused it. */
function saidBy(error: unknown, depth = 0): string {
  if (typeof error !== "object" || error === null || depth > 4) return String(error);
  const { code, message, cause, meta, kind, originalMessage } = error as Record<string, unknown>;
  const below = [cause, meta, (meta as Record<string, unknown> | undefined)?.["driverAdapterError"]];
  return [code, kind, message, originalMessage, ...below.map((one) => (one ? saidBy(one, depth + 1) : ""))].join(" ");
}

/**
 * A broken machine told apart from a bug: the disk is full, nothing can be written, the database does not answer. Null for anything
 * else. Nothing of what was asked for is kept then, and it works again as soon as the machine does.
 *
 * @example machineProblem(Object.assign(new Error("write"), { code: "ENOSPC" })) // { code: "disk-full" }
 */
export function machineProblem(error: unknown): Problem | null {
  const said = saidBy(error);
  const code = troubles.find(([, signs]) => signs.test(said))?.[0];
  return code === undefined ? null : { code };
}
