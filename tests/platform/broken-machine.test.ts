import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, statfsSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, describe, expect, inject, it } from "vitest";
import type { Context } from "@/lib/platform/context.ts";
import { machineProblem } from "@/lib/platform/machine-problem.ts";
import { openDatabase } from "@/lib/store/database.ts";
import { addPhotoWorkflow } from "@/lib/workflows/add-photo.ts";
import { createItemWorkflow } from "@/lib/workflows/create-item.ts";
import { mugWords, must } from "../support/bench-item.ts";
import { imported } from "../support/small-file.ts";
import { contextAs } from "../support/test-context.ts";

/** A small disk of the test's own, where whoever runs it may mount one; else these tests are skipped and the runner says so. */
const disk = mkdtempSync(join(tmpdir(), "assay-disk-"));
const mount = (...args: string[]) => spawnSync("mount", args, { encoding: "utf8" }).status === 0;
const mounted = process.platform === "linux" && mount("-t", "tmpfs", "-o", "size=12m", "assay-test", disk);
if (!mounted) console.log("Full disk: not tried, since no disk may be mounted here.");
afterAll(() => {
  if (mounted) spawnSync("umount", [disk]);
  rmSync(disk, { recursive: true, force: true });
});

describe("what broke is told apart", () => {
  it.each([
    ["disk-full", Object.assign(new Error("write"), { code: "ENOSPC" })],
    ["disk-full", new Error("x", { cause: { kind: "sqlite", originalMessage: "database or disk is full" } })],
    ["disk-read-only", Object.assign(new Error("attempt to write a readonly database"), { code: "SQLITE_READONLY" })],
    ["database-away", Object.assign(new Error("Can't reach database server at shelf:5432"), { code: "P1001" })],
    ["database-away", new Error("y", { cause: new Error("connect ECONNREFUSED 127.0.0.1:5432") })],
  ])("%s", (code, error) => {
    expect(machineProblem(error)).toEqual({ code });
  });
  it("and a bug is none of it", () => {
    expect(machineProblem(new TypeError("x is not a function"))).toBeNull();
    expect(machineProblem(undefined)).toBeNull();
  });
});

describe.skipIf(!mounted)("a disk that takes no more", () => {
  const noise = () =>
    sharp({
      create: {
        width: 900,
        height: 700,
        channels: 3,
        background: "#888",
        noise: { type: "gaussian", mean: 128, sigma: 60 },
      },
    })
      .jpeg({ quality: 95 })
      .toBuffer();
  const rows = (n: number) =>
    [
      "No,Sample,Spot,Pb (ppm),Pb err",
      ...Array.from({ length: 9_000 }, (_, row) => `${row},mug ${n},a,${row + n}.5,9`),
    ].join("\n");

  async function registry(name: string): Promise<{ context: Context; itemId: string; dataDir: string }> {
    const dataDir = join(disk, name);
    mkdirSync(dataDir);
    copyFileSync(inject("baseDatabase"), join(dataDir, "registry.db"));
    const context = await contextAs("owner", openDatabase(join(dataDir, "registry.db")));
    return { context, itemId: must(await createItemWorkflow(context, mugWords)).id, dataDir };
  }
  const troubleOf = async (work: Promise<unknown>) =>
    machineProblem(
      await work.then(
        () => new Error("it went through"),
        (error: unknown) => error,
      ),
    )?.code ?? "it went through";

  it("full: photos and imports say so and leave nothing behind; with room again, the same process goes on", async () => {
    const { context, itemId, dataDir } = await registry("full");
    const photo = async () =>
      addPhotoWorkflow(
        context,
        { itemId, alt: "Noise of every colour" },
        { name: "a.jpg", bytes: await noise() },
        dataDir,
      );
    must(await photo());
    const filler = join(disk, "filler");
    const { bavail, bsize } = statfsSync(disk);
    writeFileSync(filler, Buffer.alloc(Math.max(0, bavail * bsize - 60_000)));
    expect(await troubleOf(photo())).toBe("disk-full");
    expect(await troubleOf(imported(context, rows(1), "full.csv"))).toBe("disk-full");
    expect(await context.db.photo.count()).toBe(1);
    expect(await context.db.reading.count()).toBe(0);
    rmSync(filler);
    must(await photo());
    await imported(context, rows(2).slice(0, 20_000), "room.csv");
    expect(await context.db.photo.count()).toBe(2);
    expect(await context.db.reading.count()).toBeGreaterThan(100);
    await context.db.$disconnect();
    rmSync(dataDir, { recursive: true });
  });
});
