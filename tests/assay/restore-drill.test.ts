import { type ChildProcess, spawn } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterAll, expect, inject, it } from "vitest";
import { signingKey } from "@/lib/platform/signing-key.ts";
import { openDatabase } from "@/lib/store/database.ts";
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
const assay = (args: string[], dataDir: string): Promise<Ran> =>
  new Promise((resolve) => {
    const { DATABASE_URL: _, BASE_URL: __, ...env } = process.env;
    const child = spawn(process.execPath, ["commands/assay.mjs", ...args], {
      cwd: root,
      env: { ...env, DATA_DIR: dataDir },
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
function startWork(dataDir: string): string[] {
  const kept: string[] = [];
  for (let n = 0; n < 2; n += 1) {
    const script = join(root, "tests", "support", "busy-registry.ts");
    const child = spawn(process.execPath, ["--import", "tsx", script, dataDir], {
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

/** Whether a database holds what was said to be kept. */
function holds(file: string, kept: readonly string[]): string[] {
  const db = new Database(file, { readonly: true });
  const one = (sql: string, ...values: unknown[]) => db.prepare(sql).get(...values) !== undefined;
  const lost = kept.filter((line) => {
    const [what, id, revision] = line.split(" ");
    if (what === "batch") return !one(`SELECT 1 FROM "ImportBatch" WHERE id = ? AND state = 'imported'`, id);
    if (what === "photo") return !one(`SELECT 1 FROM "Photo" WHERE id = ?`, id);
    return !one(`SELECT 1 FROM "Publication" WHERE slug = ? AND revision = ?`, id, Number(revision));
  });
  db.close();
  return lost;
}

it("backups made while two processes import, add photos and publish are whole, and hold all that was kept before", async () => {
  const dataDir = join(scratch, "work");
  mkdirSync(dataDir);
  copyFileSync(inject("baseDatabase"), join(dataDir, "registry.db"));
  const db = openDatabase(join(dataDir, "registry.db"));
  const context = await contextAs("owner", db);
  await db.registry.create({ data: { name: "Drill", invented: true, approvalsNeeded: 0 } });
  const { itemId } = await benchItem(context);
  must(await publishItemWorkflow(context, { itemId }));
  signingKey(dataDir);
  await signLogHead(db, { dataDir, clock: () => fixedNow });
  await db.$disconnect();

  const kept = startWork(dataDir);
  await until(() => kept.length >= 12);
  const lines: string[] = [];
  for (let drill = 1; drill <= 2; drill += 1) {
    const before = [...kept];
    const backup = join(scratch, `backup-${drill}`);
    const back = join(scratch, `back-${drill}`);
    const made = await assay(["backup", backup], dataDir);
    expect(made, made.stderr).toMatchObject({ code: 0 });
    const meanwhile = kept.length - before.length;
    const restored = await assay(["restore", backup], back);
    expect(restored, restored.stderr).toMatchObject({ code: 0 });
    const verified = await assay(["verify-all"], back);
    // A photo whose record came after the database was copied is a file without a record there: an orphan, and nothing else.
    expect(verified.stdout.split("\n").filter((line) => /^(missing|changed|damaged|unfinished)/.test(line))).toEqual(
      [],
    );
    expect(verified.stdout).toContain("the database: whole");
    expect(verified.stdout).toMatch(/entr(y|ies), all hashes agree/);
    expect(holds(join(back, "registry.db"), before)).toEqual([]);
    expect(readFileSync(join(backup, "backup.json"), "utf8")).toContain('"format": 1');
    lines.push(
      `drill ${drill}: ${before.length} things kept before, ${meanwhile} kept meanwhile; restored, whole, none of the ${before.length} lost`,
    );
    await until(() => kept.length > before.length + meanwhile);
  }
  console.log(`\n${lines.join("\n")}\n`);
}, 240_000);
