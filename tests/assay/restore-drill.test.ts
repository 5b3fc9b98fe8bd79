import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, inject, it } from "vitest";
import { findPostgres, makeDatabase, startPostgres } from "@/commands/postgres.mjs";
import { signingKey } from "@/lib/platform/signing-key.ts";
import { type Database, openDatabase } from "@/lib/store/database.ts";
import { publishItemWorkflow } from "@/lib/workflows/publish-item.ts";
import { signLogHead } from "@/lib/workflows/sign-log-head.ts";
import { benchItem, must } from "../support/bench-item.ts";
import { contextAs, fixedNow } from "../support/test-context.ts";

const root = join(import.meta.dirname, "..", "..");
const scratch = mkdtempSync(join(tmpdir(), "assay-drill-"));
const busy: ChildProcess[] = [];
afterAll(() => {
  for (const child of busy) child.kill("SIGKILL");
  rmSync(scratch, { recursive: true, force: true });
});

type Ran = { code: number | null; stdout: string; stderr: string };
const assay = (args: string[], dataDir: string, databaseUrl?: string): Promise<Ran> =>
  new Promise((resolve) => {
    const { DATABASE_URL: _, BASE_URL: __, ...env } = process.env;
    const child = spawn(process.execPath, ["commands/assay.mjs", ...args], {
      cwd: root,
      env: { ...env, DATA_DIR: dataDir, ...(databaseUrl === undefined ? {} : { DATABASE_URL: databaseUrl }) },
    });
    const ran: Ran = { code: null, stdout: "", stderr: "" };
    child.stdout.on("data", (text) => {
      ran.stdout += text;
    });
    child.stderr.on("data", (text) => {
      ran.stderr += text;
    });
    child.on("close", (code) => resolve({ ...ran, code }));
  });

/** Two processes at work on a registry; what they said was kept, in order. */
function startWork(dataDir: string, databaseUrl: string): string[] {
  const kept: string[] = [];
  for (let n = 0; n < 2; n += 1) {
    const script = join(root, "tests", "support", "busy-registry.ts");
    const child = spawn(process.execPath, ["--import", "tsx", script, dataDir, databaseUrl], {
      cwd: root,
      stdio: ["ignore", "pipe", "inherit"],
    });
    busy.push(child);
    child.stdout?.on("data", (text: Buffer) => kept.push(...text.toString().trim().split("\n")));
  }
  return kept;
}

const until = async (done: () => boolean): Promise<void> => {
  for (let n = 0; n < 600 && !done(); n += 1) await new Promise((resolve) => setTimeout(resolve, 100));
  expect(done()).toBe(true);
};

/** What was said to be kept and is not there. */
async function lostOf(db: Database, kept: readonly string[]): Promise<string[]> {
  const lost: string[] = [];
  for (const line of kept) {
    const [what, id = "", revision] = line.split(" ");
    const found =
      what === "batch"
        ? await db.importBatch.count({ where: { id, state: "imported" } })
        : what === "photo"
          ? await db.photo.count({ where: { id } })
          : await db.publication.count({ where: { slug: id, revision: Number(revision) } });
    if (found === 0) lost.push(line);
  }
  return lost;
}

/** Where a registry lies: a folder, and a database in it or on a server. `undefined` is the command's own default. */
type Place = { dataDir: string; url: string; setting: string | undefined };

async function drills(work: Place, backTo: (drill: number) => Place): Promise<void> {
  const db = openDatabase(work.url);
  const context = await contextAs("owner", db);
  await db.registry.create({ data: { name: "Drill", invented: true, approvalsNeeded: 0 } });
  const { itemId } = await benchItem(context);
  must(await publishItemWorkflow(context, { itemId }));
  signingKey(work.dataDir);
  await signLogHead(db, { dataDir: work.dataDir, clock: () => fixedNow });
  await db.$disconnect();

  const kept = startWork(work.dataDir, work.url);
  await until(() => kept.length >= 12);
  const lines: string[] = [];
  for (let drill = 1; drill <= 2; drill += 1) {
    const before = [...kept];
    const backup = `${work.dataDir}-backup-${drill}`;
    const back = backTo(drill);
    const made = await assay(["backup", backup], work.dataDir, work.setting);
    expect(made, made.stderr).toMatchObject({ code: 0 });
    const meanwhile = kept.length - before.length;
    const restored = await assay(["restore", backup], back.dataDir, back.setting);
    expect(restored, restored.stderr).toMatchObject({ code: 0 });
    const verified = await assay(["verify-all"], back.dataDir, back.setting);
    // A photo whose record came after the database was copied is a file without a record there: an orphan, and nothing else.
    expect(verified.stdout.split("\n").filter((line) => /^(missing|changed|damaged|unfinished)/.test(line))).toEqual(
      [],
    );
    if (back.setting === undefined) expect(verified.stdout).toContain("the database: whole");
    expect(verified.stdout).toMatch(/entr(y|ies), all hashes agree/);
    const restoredDb = openDatabase(back.url);
    expect(await lostOf(restoredDb, before)).toEqual([]);
    await restoredDb.$disconnect();
    expect(readFileSync(join(backup, "backup.json"), "utf8")).toContain('"format": 1');
    lines.push(
      `drill ${drill}: ${before.length} things kept before, ${meanwhile} kept meanwhile; restored, whole, none of the ${before.length} lost`,
    );
    await until(() => kept.length > before.length + meanwhile);
  }
  for (const child of busy.splice(0)) child.kill("SIGKILL");
  console.log(`\n${lines.join("\n")}\n`);
}

const folderIn = (name: string): string => join(scratch, name);

describe("backups made while two processes import, add photos and publish are whole, and hold all that was kept before", () => {
  it("in SQLite", async () => {
    const inFile = (dataDir: string): Place => ({ dataDir, url: join(dataDir, "registry.db"), setting: undefined });
    const work = inFile(folderIn("work"));
    mkdirSync(work.dataDir);
    copyFileSync(inject("baseDatabase"), work.url);
    await drills(work, (drill) => inFile(folderIn(`back-${drill}`)));
  }, 240_000);

  const leftOut = process.env["ASSAY_TEST_POSTGRES"] === "no" || process.env["CI"] !== undefined;
  const there = findPostgres() !== null && findPostgres(["pg_dump", "pg_restore"]) !== null;
  it.skipIf(leftOut || !there)(
    "in PostgreSQL",
    async () => {
      const server = await startPostgres();
      try {
        const on = (dataDir: string, name: string): Place => {
          const url = makeDatabase(server, name);
          return { dataDir, url, setting: url };
        };
        const work = on(folderIn("work-postgres"), "work");
        mkdirSync(work.dataDir);
        const migrated = spawnSync(process.execPath, [join(root, "commands", "migrate.mjs"), work.url]);
        expect(migrated.status).toBe(0);
        await drills(work, (drill) => on(folderIn(`back-postgres-${drill}`), `back_${drill}`));
      } finally {
        for (const child of busy.splice(0)) child.kill("SIGKILL");
        server.stop();
      }
    },
    240_000,
  );
});
