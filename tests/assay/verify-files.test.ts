import { copyFileSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { beforeEach, describe, expect, inject, it } from "vitest";
import { openDatabase, withInterruption } from "@/lib/store/database.ts";
import { findItem } from "@/lib/store/items.ts";
import { addPhotoWorkflow } from "@/lib/workflows/add-photo.ts";
import { publishItemWorkflow } from "@/lib/workflows/publish-item.ts";
import { benchItem, must } from "../support/bench-item.ts";
import { contextAs } from "../support/test-context.ts";
import { assay } from "./run-assay.ts";

let dataDir = "";
let photo: { fileKey: string; originalKey: string };

/** A registry in one folder with an instrument file, and an item with a photo at three widths. */
beforeEach(async () => {
  dataDir = mkdtempSync(join(tmpdir(), "assay-files-"));
  copyFileSync(inject("baseDatabase"), join(dataDir, "registry.db"));
  const db = openDatabase(join(dataDir, "registry.db"));
  const context = await contextAs("owner", db);
  const { itemId } = await benchItem(context);
  const bytes = await sharp({ create: { width: 2000, height: 1500, channels: 3, background: "#a53" } })
    .jpeg()
    .toBuffer();
  must(await addPhotoWorkflow(context, { itemId, alt: "A plain square" }, { name: "a.jpg", bytes }, dataDir));
  const row = await db.photo.findFirstOrThrow();
  photo = { fileKey: row.fileKey, originalKey: row.originalKey ?? "" };
  expect((await findItem(db, itemId))?.photos[0]?.files).toHaveLength(3);
  await db.$disconnect();
});

const stored = () =>
  ["originals", "photos"].flatMap((folder) => readdirSync(join(dataDir, folder)).map((name) => `${folder}/${name}`));
const verify = () => assay("verify-files", dataDir);

describe("verify-files", () => {
  it("finds nothing where nothing is wrong", async () => {
    expect(await verify()).toEqual({
      code: 0,
      stdout: "4 stored files and 1 instrument file: all there, all named, all as recorded\n",
      stderr: "",
    });
    // Originals are their owner's alone.
    expect(statSync(join(dataDir, "originals", photo.originalKey)).mode & 0o077).toBe(0);
  });

  it("lists what is missing, changed, orphaned and unfinished, each by its name", async () => {
    rmSync(join(dataDir, "originals", photo.originalKey));
    writeFileSync(join(dataDir, "photos", photo.fileKey), "other bytes");
    writeFileSync(join(dataDir, "photos", `${"0".repeat(32)}.webp`), "a stray");
    writeFileSync(join(dataDir, "photos", "1.webp.ab12.part"), "half");
    const { code, stdout, stderr } = await verify();
    expect(code).toBe(1);
    const lines = stdout.trim().split("\n");
    expect(lines.map((line) => line.split(/[,:] | is not/).slice(0, 2)).sort()).toEqual([
      ["changed", `photos/${photo.fileKey}`],
      ["missing", `originals/${photo.originalKey}`],
      ["orphan", `photos/${"0".repeat(32)}.webp`],
      ["unfinished", "photos/1.webp.ab12.part"],
    ]);
    expect(stderr).toBe("The files and the records do not agree: 4 faults.\n");
  });

  it("lists every file that a stop between file and record leaves behind", async () => {
    const db = openDatabase(join(dataDir, "registry.db"));
    const owner = await db.user.findFirstOrThrow();
    const { id: itemId } = await db.item.findFirstOrThrow();
    const before = new Set(stored());
    const bytes = await sharp({ create: { width: 600, height: 500, channels: 3, background: "#35a" } })
      .jpeg()
      .toBuffer();
    // The first look-up goes through, then the files are written, then the power goes.
    const cut = withInterruption(db, (call) => {
      if (call > 1) throw new Error("power cut");
    });
    const person = { id: owner.id, name: owner.name, email: owner.email, role: "owner" as const };
    const context = { db: cut, person, clock: () => new Date("2026-05-04T10:00:00Z") };
    await expect(addPhotoWorkflow(context, { itemId }, { name: "b.jpg", bytes }, dataDir)).rejects.toThrow("power cut");
    await db.$disconnect();
    const left = stored().filter((path) => !before.has(path));
    expect(left).toHaveLength(3); // the original and two widths
    const { code, stdout } = await verify();
    expect(code).toBe(1);
    expect(stdout.trim().split("\n").sort()).toEqual(left.map((path) => `orphan: ${path}, named by no record`).sort());
  });

  it("notices an instrument file changed in the database", async () => {
    const db = openDatabase(join(dataDir, "registry.db"));
    for (const { name } of await db.$queryRaw<{ name: string }[]>`
      SELECT name FROM sqlite_schema WHERE type = 'trigger' AND tbl_name = 'RawFile'`)
      await db.$executeRawUnsafe(`DROP TRIGGER "${name}"`);
    await db.rawFile.updateMany({ data: { bytes: new Uint8Array([1]) } });
    await db.$disconnect();
    expect((await verify()).stdout).toBe("changed: instrument file “tests.csv” is not what was received\n");
  });

  it("holds a published page's photos to what it says", async () => {
    const db = openDatabase(join(dataDir, "registry.db"));
    const owner = await db.user.findFirstOrThrow();
    const { id: itemId } = await db.item.findFirstOrThrow();
    await db.registry.upsert({
      where: { id: 1 },
      create: { name: "Tests", approvalsNeeded: 0 },
      update: { approvalsNeeded: 0 },
    });
    const person = { id: owner.id, name: owner.name, email: owner.email, role: "owner" as const };
    const clock = () => new Date("2026-05-04T10:00:00Z");
    must(await publishItemWorkflow({ db, person, clock }, { itemId }));
    // The bench forgets the photo; the published page does not.
    await db.photo.deleteMany();
    await db.$disconnect();
    const { stdout } = await verify();
    expect(stdout).toMatch(/^orphan: originals\/[0-9a-f]{64}, named by no record\n$/);
    for (const name of readdirSync(join(dataDir, "photos"))) rmSync(join(dataDir, "photos", name));
    expect((await verify()).stdout.match(/^missing: photos\/.* named by revision 1 of /gm)).toHaveLength(3);
  });

  it("says in one sentence where there is no registry", async () => {
    const { code, stderr } = await assay("verify-files", join(dataDir, "photos"));
    expect(code).toBe(2);
    expect(stderr).toMatch(/^There is no registry at ".*"\.\n$/);
  });
});
