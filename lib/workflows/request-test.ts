import { z } from "zod";
import { keepStrangersPhoto } from "../files/photo-store.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { wordsKey } from "../search/words-key.ts";
import { inTransaction } from "../store/database.ts";
import { takeTurn } from "../store/rate-buckets.ts";
import { countTestRequest, sameTestRequest, type TestRequestRecord } from "../store/test-requests.ts";

export const testRequestInput = z.object({ description: z.string().trim().min(1).max(300) });
export type TestRequestInput = z.input<typeof testRequestInput>;

/** The largest photo taken with a request, in bytes. */
export const largestRequestPhoto = 15_000_000;

/** So many from one place, and so many in all, within an hour (policy). */
const limits = { onePlace: 10, all: 300, windowSeconds: 3600 } as const;

/**
 * A reader's "please test this". Anybody may ask; the same thing asked for twice is one request with a count of two.
 * `place` is a digest that stands for where it came from until the hour is over; nothing else of the reader is kept. A photo
 * is for testers alone: re-encoded small, without metadata, and only the first one of a request.
 *
 * Refused: `request-too-vague`, `rate-limited`, and what `keepStrangersPhoto` refuses.
 */
export async function requestTestWorkflow(
  context: Context,
  input: TestRequestInput,
  place: string,
  photo: { bytes: Uint8Array; dataDir: string } | null = null,
): Promise<Outcome<TestRequestRecord>> {
  const parsed = testRequestInput.parse(input);
  const key = wordsKey(parsed.description);
  if (key.length < 3)
    return refused({
      code: "request-too-vague",
      where: { field: "description" },
      found: parsed.description.slice(0, 60),
    });
  const now = context.clock();
  for (const [bucket, most] of [
    [`request ${place}`, limits.onePlace],
    ["request everybody", limits.all],
  ] as const) {
    const turn = await takeTurn(context.db, bucket, { most, windowSeconds: limits.windowSeconds, now });
    if (!turn.ok)
      return refused({
        code: "rate-limited",
        found: `${most} an hour`,
        allowed: `${Math.ceil(turn.waitSeconds / 60)} minutes`,
      });
  }
  const words = { description: parsed.description, wordsKey: key };
  const wanted = photo !== null && ((await sameTestRequest(context.db, words))?.photoKey ?? null) === null;
  const kept = wanted ? await keepStrangersPhoto(photo.dataDir, photo.bytes) : done(null);
  if (!kept.ok) return refused(...kept.problems.map((p) => ({ ...p, where: { field: "photo" } })));
  const request = await inTransaction(context.db, (tx) => countTestRequest(tx, { ...words, photoKey: kept.value }));
  return done(request);
}
