import { spawnSync } from "node:child_process";
import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import sharp from "sharp";
import { beforeAll, expect, it } from "vitest";
import type { Context } from "@/lib/platform/context.ts";
import { type Database, openDatabase } from "@/lib/store/database.ts";
import { searchPublished } from "@/lib/store/search.ts";
import {
  everyTable,
  leftBehind,
  movedTableNames,
  readRowLine,
  rowLine,
  tableDigest,
} from "@/lib/store/whole-registry.ts";
import { addPhotoWorkflow } from "@/lib/workflows/add-photo.ts";
import { signLogHead } from "@/lib/workflows/sign-log-head.ts";
import { must } from "../support/bench-item.ts";
import { publishedRegistry } from "../support/published-database.ts";
import { chained, sampleHistory } from "../support/sample-revisions.ts";
import { imported } from "../support/small-file.ts";
import { emptyDatabase, fixedNow } from "../support/test-context.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const fresh = () => mkdtempSync(join(tmpdir(), "assay-move-"));

/** The command as a person runs it. */
function assay(args: string[], place: { url: string; dataDir: string }) {
  const env = { ...process.env, DATABASE_URL: place.url, DATA_DIR: place.dataDir, BASE_URL: "https://shelf.example" };
  const { status, stdout, stderr } = spawnSync(process.execPath, ["commands/assay.mjs", ...args], {
    cwd: root,
    encoding: "utf8",
    env,
  });
  return { status, stdout, stderr };
}

let first: { url: string; dataDir: string };
let exported: string;

beforeAll(async () => {
  const history = chained(sampleHistory().map(({ snapshot }) => ({ ...snapshot, photos: [] })));
  const { db, url, dataDir } = await publishedRegistry(history);
  first = { url, dataDir };
  const owner = await db.user.create({ data: { id: "o", name: "Øwner 🫖", email: "o@example.org", role: "owner" } });
  await db.authTwoFactor.create({ data: { id: "k", userId: owner.id, secret: "encrypted", backupCodes: "encrypted" } });
  await db.user.update({ where: { id: owner.id }, data: { twoFactorEnabled: true } });
  const person = { id: owner.id, name: owner.name, email: owner.email, role: "owner" as const };
  const context: Context & { person: typeof person } = { db, person, clock: () => fixedNow };
  await imported(context);
  const { id: itemId } = await db.item.findFirstOrThrow();
  const bytes = await sharp({ create: { width: 600, height: 500, channels: 3, background: "#35a" } })
    .jpeg()
    .toBuffer();
  must(await addPhotoWorkflow(context, { itemId }, { name: "a.jpg", bytes }, dataDir));
  await signLogHead(db, { dataDir, clock: () => fixedNow });
  await db.$disconnect();
  exported = join(fresh(), "out");
});

it("moves a whole registry into an empty one: every count and hash as before, and the log holds", async () => {
  const out = assay(["export", exported], first);
  expect(out.stderr).toBe("");
  expect(out.stdout).toContain("without the key that signs the log; keep it private");
  expect(statSync(join(exported, "registry")).mode & 0o777).toBe(0o700);
  // Once into this run's database, once into SQLite, so that a run on PostgreSQL crosses over.
  for (const url of [emptyDatabase(), `file:${join(fresh(), "registry.db")}`]) {
    const place = { url, dataDir: join(fresh(), "data") };
    const into = assay(["import", exported], place);
    expect(into.stderr).toBe("");
    expect(into.status).toBe(0);
    expect(into.stdout).not.toContain("DIFFERS");
    expect(into.stdout.match(/ {2}same$/gm)).toHaveLength(movedTableNames.length);
    expect(into.stdout).toContain("5 log entries, all hashes agree");
    expect(assay(["verify-log"], place).stdout).toContain("5 entries, all hashes agree; 1 signature agrees");
    expect(assay(["verify-files"], place)).toMatchObject({ status: 0 });
    const db = openDatabase(url);
    const { snapshot } = (await searchPublished({ q: "" }, db)).hits[0]!;
    const found = await searchPublished({ q: snapshot.item.name }, db);
    expect(found.hits.map((hit) => hit.entry.slug)).toContain(snapshot.slug);
    // The key of a second step cannot be read without the secret that stays, so nobody is asked for its code.
    expect(await db.user.findUnique({ where: { id: "o" } })).toMatchObject({ twoFactorEnabled: false });
    expect(await db.authTwoFactor.count()).toBe(0);
    // Numbers given by the database go on after the ones that came in.
    const was = await db.auditEntry.findFirst({ orderBy: { id: "desc" } });
    const next = { actorName: "a", action: "a", record: "a", recordId: "a" };
    expect((await db.auditEntry.create({ data: next })).id).toBe((was?.id ?? 0) + 1);
    await db.$disconnect();
    const again = assay(["import", exported], place);
    expect(again.status).toBe(2);
    expect(again.stderr).toContain("The registry is not empty");
  }
}, 240_000);

it("takes in nothing of an export that was changed or cut short, and nothing where a record does not fit", async () => {
  if (!existsSync(exported)) assay(["export", exported], first);
  const place = { url: emptyDatabase(), dataDir: join(fresh(), "data") };
  const changed = (change: (folder: string) => void) => {
    const copy = join(fresh(), "copy");
    cpSync(join(exported, "registry"), copy, { recursive: true });
    change(copy);
    return assay(["import", copy], place);
  };
  const line = changed((folder) => appendFileSync(join(folder, "records", "Item.jsonl"), '{"id":"x"}\n'));
  expect(line.stderr).toContain("records/Item.jsonl was changed since the export was made");
  const file = changed((folder) => {
    const photos = join(folder, "files", "photos");
    appendFileSync(join(photos, readdirSync(photos)[0]!), "x");
  });
  expect(file.stderr).toMatch(/photos\/[0-9a-f]{32}\.webp was changed/);
  const db = openDatabase(place.url);
  // A record of a part that is not there: its list says so, and the database refuses it in the middle of the work.
  await orphanRefused(db, place);
  await db.$disconnect();
}, 120_000);

async function orphanRefused(db: Database, place: { url: string; dataDir: string }): Promise<void> {
  const copy = join(fresh(), "copy");
  cpSync(join(exported, "registry"), copy, { recursive: true });
  const path = join(copy, "records", "Photo.jsonl");
  const orphan = readFileSync(path, "utf8").replace(/"itemId":"[^"]*"/, '"itemId":"nobody"');
  writeFileSync(path, orphan);
  const digest = tableDigest();
  for (const one of orphan.trim().split("\n")) digest.add(one);
  const manifest = JSON.parse(readFileSync(join(copy, "registry.json"), "utf8"));
  Object.assign(
    manifest.tables.find(({ name }: { name: string }) => name === "Photo"),
    digest.done(),
  );
  writeFileSync(join(copy, "registry.json"), JSON.stringify(manifest));
  const refused = assay(["import", copy], place);
  expect(refused.status).toBe(2);
  expect(refused.stderr).toContain("Nothing was imported");
  expect(await db.item.count()).toBe(0);
  expect(await db.user.count()).toBe(0);
  expect(existsSync(join(place.dataDir, "photos")) ? readdirSync(join(place.dataDir, "photos")) : []).toEqual([]);
}

it("says of every table whether it moves or why it stays", () => {
  const told = [...movedTableNames, ...Object.keys(leftBehind)];
  expect([...told].sort()).toEqual([...everyTable].sort());
});

it("writes a row on one line and reads it again as it was", () => {
  const row = {
    text: "a\u2028b\n“c” 🫖",
    when: fixedNow,
    bytes: new Uint8Array([0, 255, 10]),
    number: 0.1,
    none: null,
    yes: true,
  };
  expect(rowLine(row)).not.toMatch(/[\n\u2028]/);
  expect(readRowLine(rowLine(row))).toEqual(row);
  expect(readRowLine("[1]")).toBeNull();
  expect(readRowLine('{"a":{"date":"never"}}')).toBeNull();
  expect(readRowLine("{")).toBeNull();
});

it("carries the key that signs the log where it is asked for, and leaves the private part out where that is", async () => {
  const withKey = join(fresh(), "out");
  expect(assay(["export", withKey, "--with-signing-key"], first).stdout).toContain("and the key that signs the log");
  const place = { url: `file:${join(fresh(), "registry.db")}`, dataDir: join(fresh(), "data") };
  expect(assay(["import", withKey], place).status).toBe(0);
  const key = (dataDir: string) => readFileSync(join(dataDir, "keys", "log-signing-key.pem"), "utf8");
  expect(key(place.dataDir)).toBe(key(first.dataDir));
  const open = join(fresh(), "out");
  assay(["export", open, "--published"], first);
  expect(readdirSync(open)).not.toContain("registry");
}, 120_000);
