import { expect, it } from "vitest";
import { makeAuth } from "@/lib/access/auth.ts";
import type { Context } from "@/lib/platform/context.ts";
import { type Database, type Db, withInterruption } from "@/lib/store/database.ts";
import { listReadings } from "@/lib/store/readings.ts";
import { acceptInvitationWorkflow } from "@/lib/workflows/accept-invitation.ts";
import { assignReadingsWorkflow } from "@/lib/workflows/assign-readings.ts";
import { createItemWorkflow } from "@/lib/workflows/create-item.ts";
import { addComponentWorkflow, addSpecimenWorkflow } from "@/lib/workflows/describe-specimen.ts";
import { importReadingsWorkflow } from "@/lib/workflows/import-readings.ts";
import { inviteMemberWorkflow } from "@/lib/workflows/invite-member.ts";
import { publishItemWorkflow } from "@/lib/workflows/publish-item.ts";
import { receiveFileWorkflow } from "@/lib/workflows/receive-file.ts";
import { must } from "../support/bench-item.ts";
import { bytesOf, imported, received, smallFile } from "../support/small-file.ts";
import { contextAs, onPostgres } from "../support/test-context.ts";

/** What every table holds, so that "nothing was written" can be said of all of them at once. */
async function contents(db: Database): Promise<string> {
  const tables = onPostgres()
    ? await db.$queryRaw<{ name: string }[]>`
        SELECT CAST(tablename AS text) AS name FROM pg_tables WHERE schemaname = 'public' ORDER BY tablename`
    : await db.$queryRaw<{ name: string }[]>`
        SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE 'item_search_%' AND name NOT LIKE 'item_word_trigrams_%' ORDER BY name`;
  const all: Record<string, unknown> = {};
  for (const { name } of tables) {
    // A search index of PostgreSQL has a type of its own, told as text.
    const columns = onPostgres() && name === "item_search" ? "seq, slug, CAST(texts AS text)" : "*";
    all[name] = await db.$queryRawUnsafe(`SELECT ${columns} FROM "${name}"`);
  }
  return JSON.stringify(all, (_, value: unknown) => (typeof value === "bigint" ? Number(value) : value));
}

class Interrupted extends Error {}

/** Runs `work` with the n-th store call failing, for n = 1, 2, … until it gets through; after each failure all is as before. */
async function interruptEverywhere(
  context: Context,
  work: (context: Context) => Promise<{ ok: boolean }>,
): Promise<number> {
  const before = await contents(context.db);
  for (let n = 1; ; n += 1) {
    const db = withInterruption(context.db, (call) => {
      if (call === n) throw new Interrupted(`store call ${n}`);
    });
    const outcome = await work({ ...context, db }).catch((error: unknown) => {
      if (error instanceof Interrupted) return null;
      throw error;
    });
    if (outcome) {
      expect(outcome.ok).toBe(true);
      expect(await contents(context.db)).not.toBe(before);
      return n - 1;
    }
    expect(await contents(context.db)).toBe(before);
  }
}

it("receiving a file: a fault at any store call leaves nothing half-written", async () => {
  const context = await contextAs("tester");
  const calls = await interruptEverywhere(context, (c) =>
    receiveFileWorkflow(c, { name: "small.csv", bytes: bytesOf(smallFile) }),
  );
  expect(calls).toBeGreaterThanOrEqual(4);
});

it("importing: a fault at any store call leaves nothing half-written", async () => {
  const context = await contextAs("tester");
  const instrument = await context.db.instrument.create({ data: { name: "A", kind: "XRF", serial: "A-1" } });
  const { batchId, mapping } = await received(context);
  const calls = await interruptEverywhere(context, (c) =>
    importReadingsWorkflow(c, { batchId, mapping, instrumentId: instrument.id }),
  );
  expect(calls).toBeGreaterThanOrEqual(8);
});

it("publishing: a fault at any store call leaves nothing half-written", async () => {
  const context = await contextAs("tester");
  const batchId = await imported(context);
  const item = must(
    await createItemWorkflow(context, { name: "Invented mug", category: "mug-or-cup", ageGroup: "adult" }),
  );
  const specimen = { label: "mug 1", howGot: "given to the shelf", whoPaid: "nobody" };
  const specimenId = must(await addSpecimenWorkflow(context, item.id, specimen));
  const part = must(
    await addComponentWorkflow(context, specimenId, { name: "glaze", material: "glaze", form: "coating" }),
  );
  const readings = await listReadings(context.db, { batchId, sample: "mug glaze" });
  const spot = { how: "as-written" } as const;
  must(await assignReadingsWorkflow(context, { readingIds: readings.map((r) => r.id), componentId: part.id, spot }));
  const calls = await interruptEverywhere(context, (c) => publishItemWorkflow(c, { itemId: item.id }));
  expect(calls).toBeGreaterThanOrEqual(12);
  await expect(context.db.publication.updateMany({ data: { snapshot: "{}" } })).rejects.toThrow();
  await expect(context.db.publication.deleteMany()).rejects.toThrow();
});

it("joining by an invitation: a fault at any store call neither spends the link nor leaves an account without a password", async () => {
  const context = await contextAs("owner");
  const { token } = must(await inviteMemberWorkflow(context, { email: "joiner@example.org", role: "tester" }));
  const authIn = (tx: Db) =>
    makeAuth(tx, { baseUrl: "http://localhost:3000", port: 3000, secret: "s".repeat(32), cookies: false });
  const joining = { token, name: "Invented Joiner", password: "seven copper kettles" };
  const calls = await interruptEverywhere(context, (c) => acceptInvitationWorkflow({ ...c, authIn }, joining));
  expect(calls).toBeGreaterThanOrEqual(5);
});
