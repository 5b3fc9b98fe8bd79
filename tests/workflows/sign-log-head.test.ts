import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { signingKey, verifySignature } from "@/lib/platform/signing-key.ts";
import { signedText } from "@/lib/publication/log-head.ts";
import { firstHeadOfEachKey, newestHead } from "@/lib/store/log-heads.ts";
import { signLogHead } from "@/lib/workflows/sign-log-head.ts";
import { publishAll } from "../support/published-database.ts";
import { sampleHistory } from "../support/sample-revisions.ts";
import { freshDatabase } from "../support/test-context.ts";

const folder = () => mkdtempSync(join(tmpdir(), "assay-sign-"));
const clock = () => new Date("2026-11-29T09:00:00Z");
const history = sampleHistory();

describe("signing the log's head", () => {
  it("has nothing to sign before anything is published", async () => {
    const { db } = freshDatabase();
    expect(await signLogHead(db, { dataDir: folder(), clock })).toBeNull();
  });
  it("signs the newest entry once, and the next one when it comes", async () => {
    const { db } = freshDatabase();
    const dataDir = folder();
    await publishAll(db, history.slice(0, 2));
    const first = (await signLogHead(db, { dataDir, clock }))!;
    expect(first).toMatchObject({ seq: 2, hash: history[1]!.entry.hash, publicKey: signingKey(dataDir).publicKey });
    expect(verifySignature(first.publicKey, signedText(first), first.signature)).toBe(true);
    expect(await signLogHead(db, { dataDir, clock: () => new Date("2027-01-01T00:00:00Z") })).toEqual(first);
    await publishAll(db, history.slice(2, 3));
    expect((await signLogHead(db, { dataDir, clock }))?.seq).toBe(3);
    expect((await newestHead(db))?.seq).toBe(3);
  });
  it("done by several at once leaves one head", async () => {
    const { db } = freshDatabase();
    const dataDir = folder();
    await publishAll(db, history);
    const heads = await Promise.all(Array.from({ length: 5 }, () => signLogHead(db, { dataDir, clock })));
    expect(new Set(heads.map((head) => head?.signature)).size).toBe(1);
    expect(await db.logHead.count()).toBe(1);
  });
  it("keeps the private key out of the database, and heads as they were written", async () => {
    const { db } = freshDatabase();
    const dataDir = folder();
    await publishAll(db, history);
    await signLogHead(db, { dataDir, clock });
    expect(JSON.stringify(await db.logHead.findMany())).not.toContain("PRIVATE");
    await expect(db.logHead.update({ where: { seq: 5 }, data: { hash: "0" } })).rejects.toThrow();
    await expect(db.logHead.delete({ where: { seq: 5 } })).rejects.toThrow();
  });
  it("with a new key, after the old one was lost, says where it began", async () => {
    const { db } = freshDatabase();
    await publishAll(db, history.slice(0, 1));
    await signLogHead(db, { dataDir: folder(), clock });
    await publishAll(db, history.slice(1, 4));
    await signLogHead(db, { dataDir: folder(), clock });
    expect((await firstHeadOfEachKey(db)).map((head) => head.seq)).toEqual([1, 4]);
  });
});
