import { afterEach, expect, it, vi } from "vitest";
import { errorFacts, log } from "@/lib/platform/log.ts";
import { metrics } from "@/lib/platform/metrics.ts";
import { freshDatabase } from "../support/test-context.ts";

afterEach(() => vi.restoreAllMocks());

it("a slow statement is written down as it was prepared, without its values; quick ones are only counted", async () => {
  const told: unknown[] = [];
  vi.spyOn(log(), "warn").mockImplementation(((facts: unknown) => told.push(facts)) as never);
  const { db } = freshDatabase();
  const counted = async () =>
    (await metrics().queries.get()).values.find((v) => v.metricName?.endsWith("_count"))?.value ?? 0;
  const before = await counted();
  await db.user.findMany({ where: { email: "nobodys-business@example.org" } });
  expect(told).toEqual([]);
  expect(await counted()).toBeGreaterThan(before);
  await db.$queryRaw`WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 8000000)
    SELECT CAST(count(*) AS INTEGER) AS n FROM n WHERE CAST(i AS TEXT) <> ${"nobodys-business"}`;
  expect(told).toHaveLength(1);
  expect(told[0]).toMatchObject({ ms: expect.any(Number), statement: expect.stringContaining("WITH RECURSIVE n(i)") });
  expect(JSON.stringify(told)).not.toContain("nobodys-business");
});

it("what is written down of an error of the database names no value", async () => {
  const { db } = freshDatabase();
  const row = { id: "a", name: "A person", email: "a@example.org", role: "tester" };
  await db.user.create({ data: row });
  for (const data of [row, { ...row, id: 7 as never }]) {
    const facts = errorFacts(await db.user.create({ data }).catch((e: Error) => e));
    expect(facts.says).toContain("user.create");
    expect(JSON.stringify(facts)).not.toMatch(/a@example\.org|A person/);
  }
});
