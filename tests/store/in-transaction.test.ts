import { expect, it } from "vitest";
import { done, refused } from "@/lib/quantity/problem.ts";
import { type Db, inTransaction } from "@/lib/store/database.ts";
import { freshDatabase } from "../support/test-context.ts";

const noted = async (tx: Db, key: string): Promise<void> => {
  await tx.rateBucket.create({ data: { key, count: 1, resetAt: new Date(0) } });
};

it("what a transaction wrote before it refuses is not kept; the refusal is told as it was", async () => {
  const { db } = freshDatabase();
  const no = refused({ code: "unknown-item", found: "cup" });
  const outcome = await inTransaction(db, async (tx) => {
    await noted(tx, "half");
    return no;
  });
  expect(outcome).toBe(no);
  expect(await db.rateBucket.count()).toBe(0);
});

it("what went well is kept, whatever its value looks like; what throws is not", async () => {
  const { db } = freshDatabase();
  const kept = async (key: string, value: unknown) =>
    inTransaction(db, async (tx) => {
      await noted(tx, key);
      return value;
    });
  for (const [n, value] of [
    done(null),
    done({ ok: false }),
    null,
    undefined,
    { ok: false },
    [{ problems: [] }],
  ].entries())
    expect(await kept(`kept ${n}`, value)).toBe(value);
  expect(await db.rateBucket.count()).toBe(6);
  await expect(
    inTransaction(db, async (tx) => {
      await noted(tx, "thrown");
      throw new Error("broken");
    }),
  ).rejects.toThrow("broken");
  expect(await db.rateBucket.count()).toBe(6);
});
