import { isLoopback, placeOf } from "./forwarded.ts";

/** How many reads a place has had in its current minute. In this process only: it keeps the machine free, it decides nothing. */
const shared = globalThis as { cupboardAssayReads?: Map<string, { count: number; endsAt: number }> };
shared.cupboardAssayReads ??= new Map();
const windows = shared.cupboardAssayReads;
const windowMs = 60_000;
const mostPlaces = 20_000;

/**
 * Counts a read; seconds to wait where there were more than `most` in a minute, else 0. The machine itself is not counted: behind a proxy that
 * was not declared, everybody would be one.
 */
export function takeReadTurn(address: string, most: number, now: number): number {
  if (most === 0 || address === "" || isLoopback(address)) return 0;
  const key = placeOf(address);
  let window = windows.get(key);
  if (!window || window.endsAt <= now) {
    if (windows.size >= mostPlaces) sweep(now);
    window = { count: 0, endsAt: now + windowMs };
    windows.set(key, window);
  }
  window.count += 1;
  return window.count <= most ? 0 : Math.max(1, Math.ceil((window.endsAt - now) / 1000));
}

/** Takes out what is over; where that makes no room, all of it: counting anew is better than growing without end. */
function sweep(now: number): void {
  for (const [key, { endsAt }] of windows) if (endsAt <= now) windows.delete(key);
  if (windows.size >= mostPlaces) windows.clear();
}
