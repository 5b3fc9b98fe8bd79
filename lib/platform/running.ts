import { z } from "zod";
import { usable } from "./usable-environment.ts";

/** How the process runs, from the environment: apart from what it serves (environment.ts). Checked at the start. */
const whole = (least: number, most: number) => z.coerce.number().int().min(least).max(most);
const schema = z.object({
  /** What goes to the terminal: "info" has a line for every request. */
  LOG_LEVEL: z.enum(["fatal", "error", "warn", "info", "debug", "silent"]).default("warn"),
  /** Metrics in the open text format at this port of the machine itself; without it there are none. */
  METRICS_PORT: whole(1, 65535).optional(),
  /** How many reverse proxies of ours stand before the process; each adds the address it was asked from. */
  TRUSTED_PROXIES: whole(0, 5).default(0),
  /** A statement that takes longer is written to the log, in milliseconds. */
  SLOW_QUERY_MS: whole(1, 600_000).default(500),
  /** Reads of API, data and feeds from one address, for each process; 0 counts none. */
  READS_A_MINUTE: whole(0, 1_000_000).default(600),
  /** Files, photos and sheets that one person may send. */
  UPLOADS_A_QUARTER_HOUR: whole(1, 1_000_000).default(2_000),
});
export type Running = z.infer<typeof schema>;

/** @example readRunning({}).TRUSTED_PROXIES // 0 */
export function readRunning(source: Record<string, string | undefined>): Running {
  // An empty variable, as unit files and containers leave them, is one not set.
  const given = Object.fromEntries(Object.entries(source).filter(([, value]) => value !== ""));
  return usable(schema.safeParse(given), source);
}

let cached: Running | undefined;
export function running(): Running {
  cached ??= readRunning(process.env);
  return cached;
}
