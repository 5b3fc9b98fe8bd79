import type { Db } from "./database.ts";

export type Turn = { ok: true } | { ok: false; waitSeconds: number };

/**
 * Takes one turn from a bucket of so many a window, in one statement, so that several processes count together. The key
 * should not tell who it stands for. Spent buckets are swept as others are used.
 */
export async function takeTurn(
  db: Db,
  key: string,
  { most, windowSeconds, now }: { most: number; windowSeconds: number; now: Date },
): Promise<Turn> {
  const end = new Date(now.getTime() + windowSeconds * 1000);
  const [row] = await db.$queryRaw<{ count: number | bigint; resetAt: Date }[]>`
    INSERT INTO "RateBucket" (key, count, "resetAt") VALUES (${key}, 1, ${end})
    ON CONFLICT (key) DO UPDATE SET
      count = CASE WHEN "RateBucket"."resetAt" <= ${now} THEN 1 ELSE "RateBucket".count + 1 END,
      "resetAt" = CASE WHEN "RateBucket"."resetAt" <= ${now} THEN ${end} ELSE "RateBucket"."resetAt" END
    RETURNING count, "resetAt"`;
  const count = Number(row?.count ?? 1);
  if (count === 1) await db.$executeRaw`DELETE FROM "RateBucket" WHERE "resetAt" <= ${now}`;
  if (count <= most) return { ok: true };
  return { ok: false, waitSeconds: Math.max(1, Math.ceil(((row?.resetAt ?? end).getTime() - now.getTime()) / 1000)) };
}

export async function forgetTurns(db: Db, key: string): Promise<void> {
  await db.$executeRaw`DELETE FROM "RateBucket" WHERE key = ${key}`;
}

/** Gives back a turn that turned out to be no burden. */
export async function returnTurn(db: Db, key: string): Promise<void> {
  await db.$executeRaw`UPDATE "RateBucket" SET count = count - 1 WHERE key = ${key} AND count > 0`;
}
