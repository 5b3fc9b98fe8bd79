import pino, { type DestinationStream, type Logger } from "pino";
import { running } from "./running.ts";

/** Members that never reach a line, at whatever depth they come: what lets somebody in, and who somebody is. */
const secret = ["password", "token", "secret", "cookie", "authorization", "email", "name", "address", "code"];

/**
 * The process's own log: one JSON object a line, on standard output. It holds what happened to requests and statements, never what was in them: no
 * addresses, names, search words or cookies. Redaction is the second net, for a member that should not have been handed in.
 */
export function makeLog(level: string, to?: DestinationStream): Logger {
  const options = {
    level,
    base: null,
    timestamp: pino.stdTimeFunctions.isoTime,
    formatters: { level: (label: string) => ({ level: label }) },
    redact: { paths: secret.flatMap((name) => [name, `*.${name}`, `*.*.${name}`]), censor: "(kept back)" },
  };
  return to ? pino(options, to) : pino(options, pino.destination({ fd: 1, sync: true }));
}

let cached: Logger | undefined;
export function log(): Logger {
  cached ??= makeLog(running().LOG_LEVEL);
  return cached;
}

/** What of an error may be written down: its kind, its place and the first line of what it says, without anything like an address. */
export function errorFacts(error: unknown): { kind: string; says: string; at: string[] } {
  if (!(error instanceof Error)) return { kind: typeof error, says: "", at: [] };
  const lines = (error.stack ?? "").split("\n").map((line) => line.trim());
  const says = (error.message.split("\n").find((line) => line.trim() !== "") ?? "").replaceAll(
    /\S+@\S+/g,
    "(kept back)",
  );
  return { kind: error.name, says: says.slice(0, 300), at: lines.filter((line) => line.startsWith("at ")).slice(0, 8) };
}
