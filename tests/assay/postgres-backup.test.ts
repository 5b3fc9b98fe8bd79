import { spawnSync } from "node:child_process";
import { chmodSync, cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from "vitest";
import { findPostgres, makeDatabase, startPostgres } from "@/commands/postgres.mjs";
import { openDatabase } from "@/lib/store/database.ts";
import { openDumpedLog } from "@/lib/store/dumped-log.ts";
import { publishItemWorkflow } from "@/lib/workflows/publish-item.ts";
import { signLogHead } from "@/lib/workflows/sign-log-head.ts";
import { benchItem, must } from "../support/bench-item.ts";
import { contextAs, fixedNow } from "../support/test-context.ts";
import { assayProcessOf } from "./run-assay.ts";

const scratch = mkdtempSync(join(tmpdir(), "assay-dump-"));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));
const inRun = process.env["ASSAY_TEST_POSTGRES"] !== "no" && process.env["CI"] === undefined;
const there = inRun && findPostgres() !== null && findPostgres(["pg_dump", "pg_restore"]) !== null;
if (!there)
  console.log(
    "Backups of PostgreSQL were not tried: no server's or client's programs here, or left out (ASSAY_TEST_POSTGRES, CI).",
  );

const assay = (databaseUrl: string, dataDir: string, more: Record<string, string>, ...args: string[]) =>
  assayProcessOf({ DATABASE_URL: databaseUrl, DATA_DIR: dataDir, BASE_URL: "http://localhost:3000", ...more }, ...args);

describe.skipIf(!there)("a registry in PostgreSQL", () => {
  let server: Awaited<ReturnType<typeof startPostgres>>;
  let url = "";
  const dataDir = join(scratch, "data");
  const backup = join(scratch, "backup");

  beforeAll(async () => {
    server = await startPostgres();
    url = makeDatabase(server, "registry");
    const migrate = join(import.meta.dirname, "..", "..", "commands", "migrate.mjs");
    expect(spawnSync(process.execPath, [migrate, url]).status).toBe(0);
    mkdirSync(dataDir);
    const db = openDatabase(url);
    const context = await contextAs("owner", db);
    await db.registry.create({ data: { name: "Drill", invented: true, approvalsNeeded: 0 } });
    const { itemId } = await benchItem(context);
    must(await publishItemWorkflow(context, { itemId }));
    await signLogHead(db, { dataDir, clock: () => fixedNow });
    await db.$disconnect();
    const made = assay(url, dataDir, {}, "backup", backup, "--with-signing-key");
    expect(made, made.stderr).toMatchObject({ code: 0 });
  }, 120_000);
  afterAll(() => server?.stop());

  it("is restored from its backup into an empty database, whole, its log verified", async () => {
    const target = makeDatabase(server, "restored");
    const back = join(scratch, "back");
    const restored = assay(target, back, {}, "restore", backup);
    expect(restored, restored.stderr).toMatchObject({ code: 0 });
    expect(restored.stdout).toContain("Restored 1 log entries");
    const verified = assay(target, back, {}, "verify-all");
    expect(verified, verified.stderr).toMatchObject({ code: 0 });
    expect(verified.stdout).toContain("1 entry, all hashes agree; 1 signature agrees");
    const [before, after] = [openDatabase(url), openDatabase(target)];
    for (const table of ["reading", "publication", "auditEntry", "user", "rawFile"] as const)
      expect(await (after[table] as typeof after.user).findMany()).toEqual(
        await (before[table] as typeof before.user).findMany(),
      );
    // Triggers and the numbers that the database gives came along.
    await expect(after.publication.deleteMany()).rejects.toThrow();
    await after.auditEntry.create({ data: { actorName: "drill", action: "drill", record: "drill", recordId: "1" } });
    await Promise.all([before.$disconnect(), after.$disconnect()]);
    console.log(
      `\ndrill on PostgreSQL: ${restored.stdout.trim().split(" to ")[0]}; ${verified.stdout.trim().split("\n")[0]}\n`,
    );
  }, 120_000);

  it("has a backup whose log is checked without a server, and which holds neither password nor address", () => {
    const manifest = readFileSync(join(backup, "backup.json"), "utf8");
    expect(JSON.parse(manifest)).toMatchObject({ entries: 1, postgres: expect.any(Number) });
    expect(manifest).not.toContain(new URL(url).password);
    const verified = assay("", dataDir, {}, "verify-log", backup);
    expect(verified, verified.stderr).toMatchObject({ code: 0 });
    expect(verified.stdout).toContain("1 entry, all hashes agree; 1 signature agrees");
  });

  it("is not restored over anything, from a changed backup, or where the kinds do not fit", () => {
    const empty = join(scratch, "never");
    const full = assay(url, empty, {}, "restore", backup);
    expect(full.code).toBe(2);
    expect(full.stderr).toMatch(/is not empty \(it holds \d+ tables, "AuditEntry" among them\)/);
    expect(full.stderr).not.toContain(new URL(url).password);
    const target = makeDatabase(server, "untouched");
    expect(assay(target, dataDir, {}, "restore", backup).stderr).toContain(
      "is not empty; restore into an empty DATA_DIR",
    );
    const fileOnly = assay(`file:${join(scratch, "x.db")}`, empty, {}, "restore", backup);
    expect(fileOnly.stderr).toContain("The backup is of a registry in PostgreSQL");
    const newer = changed("newer", (manifest) => ({ ...manifest, postgres: 99 }));
    expect(assay(target, empty, {}, "restore", newer).stderr).toMatch(
      /The backup is of PostgreSQL 99, and the pg_restore found is of version \d+/,
    );
    const flipped = changed("flipped", (manifest) => manifest, true);
    expect(assay(target, empty, {}, "restore", flipped).stderr).toContain("registry.dump was changed");
    const wrongHead = changed("head", (manifest) => ({ ...manifest, head: "0".repeat(64) }));
    expect(assay(target, empty, {}, "restore", wrongHead).stderr).toContain("log does not hold");
    expect(tables(target)).toBe("0");
  }, 120_000);

  it("says what is missing: the programs, a version that reads the server, the server itself", () => {
    const old = join(scratch, "old-programs");
    mkdirSync(old, { recursive: true });
    writeFileSync(join(old, "pg_dump"), "#!/bin/sh\necho 'pg_dump (PostgreSQL) 9.6.24'\n");
    chmodSync(join(old, "pg_dump"), 0o755);
    const to = () => mkdtempSync(join(scratch, "to-"));
    expect(assay(url, dataDir, { POSTGRES_BIN: old }, "backup", to()).stderr).toMatch(
      /The server is PostgreSQL \d+, and the pg_dump found is of version 9, which cannot read it/,
    );
    const none = mkdtempSync(join(scratch, "no-programs-"));
    expect(assay(url, dataDir, { POSTGRES_BIN: none }, "backup", to()).stderr).toContain(
      "backed up with pg_dump, which is not on this machine: install PostgreSQL's client programs",
    );
    const target = makeDatabase(server, "without_programs");
    expect(assay(target, join(scratch, "nowhere"), { POSTGRES_BIN: none }, "restore", backup).stderr).toContain(
      "restored with pg_restore, which is not on this machine",
    );
    const gone = url.replace(/@[^/]*/, "@127.0.0.1:9");
    expect(assay(gone, dataDir, {}, "backup", to()).stderr).toContain("could not be read");
  }, 120_000);

  const changed = (name: string, change: (manifest: object) => object, flip = false): string => {
    const folder = join(scratch, name);
    onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
    cpSync(backup, folder, { recursive: true });
    const file = join(folder, "backup.json");
    writeFileSync(file, JSON.stringify(change(JSON.parse(readFileSync(file, "utf8")) as object)));
    if (flip) {
      const dump = readFileSync(join(folder, "registry.dump"));
      dump[dump.length - 9] = (dump[dump.length - 9] ?? 0) ^ 1;
      writeFileSync(join(folder, "registry.dump"), dump);
    }
    return folder;
  };
  const tables = (target: string): string =>
    spawnSync(server.psql, [target, "-Atc", "SELECT count(*) FROM pg_tables WHERE schemaname = 'public'"], {
      encoding: "utf8",
    }).stdout.trim();
});

it("a log is read out of a dump's text as it was stored: escapes, quotes, line breaks, entries in any order", async () => {
  const text = '{"a":"tab\\t, line\\n, \\\\, é"}';
  const stored = text.replaceAll("\\", "\\\\");
  async function* lines() {
    yield "-- PostgreSQL database dump";
    yield 'COPY public."LogHead" (seq, hash, "signedAt", "publicKey", signature) FROM stdin;';
    yield "1\tff\t2026-05-04T10:00:00Z\tkey\tsig";
    yield "\\.";
    yield 'COPY public."Publication" (seq, slug, "itemId", revision, hash, snapshot) FROM stdin;';
    yield "2\tcup\tx\t2\tbb\tplain\\ttext\\\\end";
    yield `1\tcup\t\\N\t1\taa\t${stored}`;
    yield "\\.";
    yield "SELECT 1;";
  }
  const log = await openDumpedLog(lines());
  expect(log.entries).toEqual([
    { seq: 1, slug: "cup", revision: 1, hash: "aa" },
    { seq: 2, slug: "cup", revision: 2, hash: "bb" },
  ]);
  expect(log.heads).toEqual([
    { seq: 1, hash: "ff", signedAt: "2026-05-04T10:00:00Z", publicKey: "key", signature: "sig" },
  ]);
  expect([1, 2, 3].map((seq) => log.snapshot(seq) && Buffer.from(log.snapshot(seq) ?? []).toString("utf8"))).toEqual([
    text,
    "plain\ttext\\end",
    undefined,
  ]);
  log.close();
});
