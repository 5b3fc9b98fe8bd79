import { randomInt, randomUUID } from "node:crypto";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { isPostgresUrl } from "@/lib/platform/environment.ts";
import { type Database, openDatabase } from "@/lib/store/database.ts";
import { assayProcessOf } from "../assay/run-assay.ts";
import { builtActions, signedInCookie } from "../support/ask-door.ts";
import { crashFaults } from "../support/crash-check.ts";
import { type Acknowledged, type CrashLoad, noisyPhotos, untilItDies } from "../support/crash-load.ts";
import { served } from "../support/served.ts";

/** `npm run crash -- --kills N` asks for more. */
const kills = Number(process.env["CRASH_KILLS"] ?? 10);

const open = () => openDatabase(served().databaseUrl);
const onPostgres = () => isPostgresUrl(served().databaseUrl);

/**
 * PostgreSQL lives on when the product is ended: what the product had sent it, it finishes or takes back when it finds nobody at
 * the other end. Looked at before that, one half of the looking would see what the other had not.
 */
async function settled(db: Database): Promise<void> {
  if (!onPostgres()) return;
  for (let attempt = 0; attempt < 600; attempt += 1) {
    const [others] = await db.$queryRaw<{ n: number }[]>`
      SELECT CAST(count(*) AS INTEGER) AS n FROM pg_stat_activity
      WHERE datname = current_database() AND pid <> pg_backend_pid() AND backend_type = 'client backend'`;
    if (others?.n === 0) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error("The database still works for a product that was ended.");
}

/** A registry that publishes unreviewed, an item to send photos and readings to, and one that is published already. */
async function prepared(): Promise<CrashLoad> {
  const { base, passwords } = served();
  const db = open();
  await db.registry.updateMany({ data: { approvalsNeeded: 0 } });
  const { id: publishedItemId } = await db.item.findFirstOrThrow({
    where: { state: "published" },
    orderBy: { slug: "asc" },
  });
  await db.$disconnect();
  const actions = builtActions(join(import.meta.dirname, "..", ".."));
  const cookie = await signedInCookie(base, actions, passwords["owner"] ?? "");
  const answer = await fetch(`${base}/bench/table/send`, {
    method: "POST",
    headers: { cookie, origin: base, "content-type": "application/json" },
    body: JSON.stringify({
      step: "item",
      sendId: randomUUID(),
      item: {
        name: "Jug under a bad cable",
        category: "mug-or-cup",
        ageGroup: "unknown",
        foodContact: true,
        mouthable: false,
        marks: "",
      },
      object: { label: "jug 1", howGot: "given", whoPaid: "nobody" },
      part: { name: "glaze", material: "glaze", form: "coating" },
    }),
  });
  const { itemId, partId } = (await answer.json()) as { itemId: string; partId: string };
  expect(partId).toMatch(/\w/);
  return { base, actions, cookie, itemId, partId, publishedItemId };
}

/** Settled when of each of these kinds of writes one more has been acknowledged, or after half a minute. */
async function oneMore(done: Acknowledged, of: readonly (keyof Acknowledged)[]): Promise<void> {
  const before = of.map((kind) => done[kind].length);
  const enough = () => of.every((kind, at) => done[kind].length > (before[at] ?? 0));
  for (let n = 0; n < 600 && !enough(); n += 1) await new Promise((resolve) => setTimeout(resolve, 50));
}

it(
  `killed at ${kills} random moments under imports, uploads and publishing, nothing acknowledged is lost and nothing is half done`,
  async () => {
    const load = await prepared();
    const photos = await noisyPhotos(64);
    const done: Acknowledged = { photos: [], sheets: [], files: [], publications: [] };
    const kinds = Object.keys(done) as (keyof Acknowledged)[];
    const faults = { lost: [] as string[], halfDone: [] as string[] };
    for (let round = 1; round <= kills; round += 1) {
      const sending = untilItDies(load, done, photos);
      // Once one of the senders, a different one by chance, has its answer of the server that has just begun, in the midst of what
      // comes next; every fifth time once each has, however busy the machine is.
      const sender = kinds[randomInt(kinds.length)] as keyof Acknowledged;
      await Promise.race([sending, oneMore(done, round % 5 === 1 ? kinds : [sender])]);
      const moment = randomInt(0, 1_000);
      await Promise.race([sending, new Promise((resolve) => setTimeout(resolve, moment))]);
      await served().kill();
      await sending;
      const db = open();
      await settled(db);
      const found = await crashFaults(db, served().dataDir, done);
      await db.$disconnect();
      faults.lost.push(...found.lost);
      faults.halfDone.push(...found.halfDone);
      await served().start();
      if (round % 20 === 0) console.log(`  ${round} kills`);
    }
    const acknowledged = Object.entries(done).map(([what, list]) => `${list.length} ${what}`);
    const writes = Object.values(done).reduce((sum, list) => sum + list.length, 0);
    console.log(
      [
        "",
        "kills  acknowledged writes  lost  half-done",
        `${String(kills).padEnd(7)}${String(writes).padEnd(21)}${String(faults.lost.length).padEnd(6)}${faults.halfDone.length}`,
        `(${acknowledged.join(", ")})`,
        "",
      ].join("\n"),
    );
    expect(faults).toEqual({ lost: [], halfDone: [] });
    for (const list of Object.values(done)) expect(list.length).toBeGreaterThan(0);

    await served().kill();
    // What the commands say of it: log and database whole; of the files nothing missing or changed, orphans listed by name.
    const { base, dataDir, databaseUrl } = served();
    const settings = { DATA_DIR: dataDir, DATABASE_URL: databaseUrl, BASE_URL: base };
    const { code, stdout, stderr } = assayProcessOf(settings, "verify-all");
    // PostgreSQL keeps its own sums.
    if (!onPostgres()) expect(stdout).toContain("the database: whole");
    expect(stdout).toMatch(/\d+ entries, all hashes agree/);
    expect(stdout).not.toMatch(/^(?:missing|changed|damaged)/m);
    const strays = await straysFoundApart();
    const listed = stdout.split("\n").flatMap((line) => /^(?:orphan|unfinished): ([^,]+),/.exec(line)?.[1] ?? []);
    expect(listed.sort(), stderr).toEqual(strays);
    expect(code).toBe(strays.length > 0 ? 1 : 0);
    console.log(`${strays.length} orphans, all listed`);
  },
  120_000 + kills * 20_000,
);

/** Every file on the disk that no record names, found apart from the command. */
async function straysFoundApart(): Promise<string[]> {
  const db = open();
  const photos = await db.photo.findMany();
  const files = await db.photoFile.findMany();
  await db.$disconnect();
  const named = new Set([
    ...files.map((file) => `photos/${file.key}`),
    ...photos.flatMap(({ fileKey, originalKey }) => [`photos/${fileKey}`, `originals/${originalKey}`]),
  ]);
  return ["photos", "originals"]
    .flatMap((folder) => readdirSync(join(served().dataDir, folder)).map((name) => `${folder}/${name}`))
    .filter((path) => !named.has(path))
    .sort();
}
