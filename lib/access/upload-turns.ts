import type { Context } from "../platform/context.ts";
import { running } from "../platform/running.ts";
import type { Problem } from "../quantity/problem.ts";
import { takeTurn } from "../store/rate-buckets.ts";

/**
 * Counts a file, photo or sheet that somebody sends, over all processes; a problem where they sent more than this registry takes of one
 * person in a quarter of an hour. Far above what hands can do: it bounds a script that went astray.
 */
export async function takeUploadTurn(
  context: Context,
  most = running().UPLOADS_A_QUARTER_HOUR,
): Promise<Problem | null> {
  const key = `upload ${context.person?.id ?? ""}`;
  const turn = await takeTurn(context.db, key, { most, windowSeconds: 15 * 60, now: context.clock() });
  return turn.ok ? null : { code: "rate-limited", allowed: `${Math.ceil(turn.waitSeconds / 60)} minutes` };
}
