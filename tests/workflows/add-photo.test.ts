import { randomUUID } from "node:crypto";
import { mkdtempSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { findItem } from "@/lib/store/items.ts";
import { addPhotoWorkflow, largestPhoto } from "@/lib/workflows/add-photo.ts";
import { createItemWorkflow } from "@/lib/workflows/create-item.ts";
import { mugWords, must } from "../support/bench-item.ts";
import { contextAs, person } from "../support/test-context.ts";

const folder = () => mkdtempSync(join(tmpdir(), "assay-photos-"));
const picture = async () =>
  new Uint8Array(
    await sharp({ create: { width: 40, height: 30, channels: 3, background: "#7a1f1f" } })
      .jpeg()
      .toBuffer(),
  );
const alt = "A plain red square";

describe("addPhotoWorkflow", () => {
  it("keeps a photo re-encoded under a name of its content", async () => {
    const context = await contextAs("tester");
    const item = must(await createItemWorkflow(context, mugWords));
    const dataDir = folder();
    const photo = { name: "red.jpg", bytes: await picture() };
    must(await addPhotoWorkflow(context, { itemId: item.id, alt }, photo, dataDir));
    const [kept] = (await findItem(context.db, item.id))?.photos ?? [];
    expect(kept).toMatchObject({ alt, width: 40, height: 30 });
    expect(readdirSync(join(dataDir, "photos"))).toEqual([kept?.fileKey]);
    expect(kept?.files).toMatchObject([{ key: kept?.fileKey, width: 40, height: 30 }]);
    expect(kept?.originalName).toBe("red.jpg");
  });

  it("keeps a photo once that a phone sends twice, and refuses another person's", async () => {
    const context = await contextAs("tester");
    const item = must(await createItemWorkflow(context, mugWords));
    const dataDir = folder();
    const photo = { name: "red.jpg", bytes: await picture() };
    const input = { itemId: item.id, alt, sendId: randomUUID() };
    const first = must(await addPhotoWorkflow(context, input, photo, dataDir));
    expect(must(await addPhotoWorkflow(context, input, photo, dataDir))).toBe(first);
    expect(await context.db.photo.count()).toBe(1);
    const other = { ...context, person: await person(context.db, "owner") };
    expect(await addPhotoWorkflow(other, input, photo, dataDir)).toMatchObject({
      ok: false,
      problems: [{ code: "sent-by-another" }],
    });
  });

  it("refuses what is no picture, too large, or for no item, and keeps nothing", async () => {
    const context = await contextAs("tester");
    const item = must(await createItemWorkflow(context, mugWords));
    const dataDir = folder();
    const text = new TextEncoder().encode("not a picture");
    const tried = async (itemId: string, bytes: Uint8Array) => {
      const outcome = await addPhotoWorkflow(context, { itemId, alt }, { name: "x.jpg", bytes }, dataDir);
      return outcome.ok ? [] : outcome.problems.map((p) => [p.code, p.where?.file]);
    };
    expect(await tried(item.id, text)).toEqual([["photo-other-kind", "x.jpg"]]);
    expect(await tried(item.id, new Uint8Array(largestPhoto + 1))).toEqual([["too-large", "x.jpg"]]);
    expect(await tried("none", await picture())).toEqual([["unknown-item", undefined]]);
    expect(await context.db.photo.count()).toBe(0);
    expect(readdirSync(dataDir)).toEqual([]);
  });

  it("is refused to a reviewer", async () => {
    const context = await contextAs("reviewer");
    const photo = { name: "x.jpg", bytes: await picture() };
    expect(await addPhotoWorkflow(context, { itemId: "any", alt }, photo, folder())).toMatchObject({
      ok: false,
      problems: [{ code: "not-allowed" }],
    });
  });
});
