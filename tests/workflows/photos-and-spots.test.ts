import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import type { Context } from "@/lib/platform/context.ts";
import { findItem } from "@/lib/store/items.ts";
import { removedPhotos, standingOfPhotoFile } from "@/lib/store/photos.ts";
import { readingsOfComponents } from "@/lib/store/readings.ts";
import { spotsOfItem } from "@/lib/store/spots.ts";
import { addPhotoWorkflow } from "@/lib/workflows/add-photo.ts";
import { restoreAssignmentsWorkflow } from "@/lib/workflows/assign-readings.ts";
import { createItemWorkflow } from "@/lib/workflows/create-item.ts";
import { describePhotoWorkflow } from "@/lib/workflows/describe-photo.ts";
import { addComponentWorkflow, addSpecimenWorkflow } from "@/lib/workflows/describe-specimen.ts";
import { joinSpotsWorkflow } from "@/lib/workflows/join-spots.ts";
import { markScaleWorkflow } from "@/lib/workflows/mark-scale.ts";
import { markSpotsWorkflow, unmarkSpotWorkflow } from "@/lib/workflows/mark-spots.ts";
import { movePhotoWorkflow } from "@/lib/workflows/order-photos.ts";
import { setReadingAsideWorkflow } from "@/lib/workflows/set-reading-aside.ts";
import { putPhotoBackWorkflow, takePhotoAwayWorkflow } from "@/lib/workflows/take-photo-away.ts";
import { benchItem, mugWords, must } from "../support/bench-item.ts";
import { contextAs } from "../support/test-context.ts";

const dataDir = mkdtempSync(join(tmpdir(), "assay-photos-"));

async function withPhotos(count: number) {
  const context: Context = await contextAs("tester");
  const item = await benchItem(context);
  const photoIds: string[] = [];
  for (let n = 0; n < count; n += 1) {
    const bytes = await sharp({ create: { width: 400, height: 300 + n, channels: 3, background: "#789" } })
      .png()
      .toBuffer();
    const input = { itemId: item.itemId, alt: `A mug, photo ${n + 1}` };
    photoIds.push(must(await addPhotoWorkflow(context, input, { name: `${n}.png`, bytes }, dataDir)));
  }
  return { context, ...item, photoIds };
}

const code = (outcome: { ok: boolean; problems?: { code: string }[] }) =>
  outcome.ok ? "done" : outcome.problems?.map((p) => p.code).join();

describe("photos of an item", () => {
  it("are put in order, described, taken away and put back", async () => {
    const { context, itemId, photoIds } = await withPhotos(3);
    const [a = "", b = "", c = ""] = photoIds;
    expect(must(await movePhotoWorkflow(context, { itemId, photoId: c, by: -2 }))).toEqual([c, a, b]);
    expect(must(await movePhotoWorkflow(context, { itemId, photoId: c, by: 1 }))).toEqual([a, c, b]);
    expect(must(await describePhotoWorkflow(context, { photoId: a, alt: "The mug from above" }))).toEqual({
      before: "A mug, photo 1",
    });
    must(await takePhotoAwayWorkflow(context, c));
    expect((await findItem(context.db, itemId))?.photos.map((p) => p.alt)).toEqual([
      "The mug from above",
      "A mug, photo 2",
    ]);
    expect((await removedPhotos(context.db, itemId)).map((p) => p.id)).toEqual([c]);
    must(await putPhotoBackWorkflow(context, c));
    expect((await findItem(context.db, itemId))?.photos.map((p) => p.id)).toEqual([a, c, b]);
    expect(code(await movePhotoWorkflow(context, { itemId, photoId: "none", by: 1 }))).toBe("unknown-photo");
  });

  it("are not public before a published revision names them", async () => {
    const { context, itemId } = await withPhotos(1);
    const [photo] = (await findItem(context.db, itemId))?.photos ?? [];
    expect(await standingOfPhotoFile(context.db, photo?.fileKey ?? "")).toBe("kept");
    expect(await standingOfPhotoFile(context.db, `${"0".repeat(32)}.webp`)).toBe("unknown");
  });
});

describe("a known length", () => {
  it("is marked, replaced and taken away; one of no length is refused", async () => {
    const {
      context,
      itemId,
      photoIds: [photoId = ""],
    } = await withPhotos(1);
    const scale = { x1: 0.1, y1: 0.9, x2: 0.6, y2: 0.9, lengthMm: 100 };
    expect(must(await markScaleWorkflow(context, { photoId, scale }))).toEqual({ before: null });
    expect((await findItem(context.db, itemId))?.photos[0]?.scale).toEqual(scale);
    const point = { ...scale, x2: 0.11 };
    expect(code(await markScaleWorkflow(context, { photoId, scale: point }))).toBe("scale-too-short");
    expect(must(await markScaleWorkflow(context, { photoId, scale: null }))).toEqual({ before: scale });
  });
});

describe("spots on a photo", () => {
  it("are made and moved by their name, and taken off with the way back", async () => {
    const {
      context,
      itemId,
      partId,
      photoIds: [photoId = ""],
    } = await withPhotos(1);
    const spot = (label: string, x: number, y: number) => ({ componentId: partId, label, x, y });
    // "a" and "b" came with the file's spot column; "c" is new.
    const ids = must(
      await markSpotsWorkflow(context, { photoId, spots: [spot("b", 0.5, 0.5), spot("a", 0.2, 0.3), spot("c", 1, 0)] }),
    );
    expect((await spotsOfItem(context.db, itemId)).map((s) => [s.label, s.x, s.readings])).toEqual([
      ["b", 0.5, 2],
      ["a", 0.2, 2],
      ["c", 1, 0],
    ]);
    must(await markSpotsWorkflow(context, { photoId, spots: [spot("b", 0.6, 0.4)] }));
    expect((await findItem(context.db, itemId))?.photos[0]?.spots.map((s) => [s.label, s.x])).toEqual([
      ["b", 0.6],
      ["a", 0.2],
      ["c", 1],
    ]);
    const before = must(await unmarkSpotWorkflow(context, ids[0] ?? ""));
    expect(before).toEqual({ componentId: partId, label: "b", place: { photoId, x: 0.6, y: 0.4 } });
    expect((await spotsOfItem(context.db, itemId)).find((s) => s.label === "b")).toMatchObject({
      x: null,
      readings: 2,
    });
    must(await unmarkSpotWorkflow(context, ids[2] ?? ""));
    expect((await spotsOfItem(context.db, itemId)).map((s) => s.label).sort()).toEqual(["a", "b"]);
  });

  it("of a photo taken away count as not placed, and stand again when it is put back", async () => {
    const {
      context,
      itemId,
      partId,
      photoIds: [photoId = ""],
    } = await withPhotos(1);
    must(await markSpotsWorkflow(context, { photoId, spots: [{ componentId: partId, label: "a", x: 0.5, y: 0.5 }] }));
    must(await takePhotoAwayWorkflow(context, photoId));
    expect((await spotsOfItem(context.db, itemId)).map((s) => s.photoId)).toEqual([null, null]);
    const spots = [{ componentId: partId, label: "a", x: 0.5, y: 0.5 }];
    expect(code(await markSpotsWorkflow(context, { photoId, spots }))).toBe("unknown-photo");
    must(await putPhotoBackWorkflow(context, photoId));
    expect((await spotsOfItem(context.db, itemId)).filter((s) => s.photoId === photoId)).toHaveLength(1);
  });

  it("refuse a part of another item, and mark nothing then", async () => {
    const {
      context,
      itemId,
      partId,
      photoIds: [photoId = ""],
    } = await withPhotos(1);
    const other = must(await createItemWorkflow(context, { ...mugWords, name: "Another" }));
    const about = { label: "one", howGot: "given", whoPaid: "nobody" };
    const specimenId = must(await addSpecimenWorkflow(context, other.id, about));
    const foreign = must(
      await addComponentWorkflow(context, specimenId, { name: "rim", material: "glaze", form: "coating" }),
    );
    const spots = [partId, foreign.id].map((componentId) => ({ componentId, label: "z", x: 0.1, y: 0.1 }));
    expect(code(await markSpotsWorkflow(context, { photoId, spots }))).toBe("unknown-part");
    expect((await spotsOfItem(context.db, itemId)).map((s) => s.label)).not.toContain("z");
  });
});

describe("joining spots and readings", () => {
  it("goes in order of time, leaves out what is set aside, and can be undone", async () => {
    const {
      context,
      partId,
      readings,
      photoIds: [photoId = ""],
    } = await withPhotos(1);
    const spots = ["1", "2", "3"].map((label, at) => ({ componentId: partId, label, x: 0.1 * at, y: 0.5 }));
    const spotIds = must(await markSpotsWorkflow(context, { photoId, spots }));
    const join = { how: "in-order" as const, spotIds };
    expect(code(await joinSpotsWorkflow(context, { componentId: partId, join }))).toBe("spots-do-not-divide");
    const second = readings[1]?.id ?? "";
    must(await setReadingAsideWorkflow(context, { readingIds: [second], reason: "shot beside the mug" }));
    const joined = must(await joinSpotsWorkflow(context, { componentId: partId, join }));
    const at = async () => (await readingsOfComponents(context.db, [partId])).map((r) => [r.number, r.spot]);
    expect(await at()).toEqual([
      ["1", "1"],
      ["2", "a"],
      ["3", "2"],
      ["4", "3"],
    ]);
    must(await restoreAssignmentsWorkflow(context, joined.before));
    expect((await at()).map(([, spot]) => spot)).toEqual(["a", "a", "b", "b"]);
  });

  it("goes by hand, reading by reading", async () => {
    const {
      context,
      partId,
      readings,
      photoIds: [photoId = ""],
    } = await withPhotos(1);
    const [spotId = ""] = must(
      await markSpotsWorkflow(context, { photoId, spots: [{ componentId: partId, label: "rim", x: 0.5, y: 0.1 }] }),
    );
    const pairs = [
      { readingId: readings[0]?.id ?? "", spotId },
      { readingId: readings[1]?.id ?? "", spotId: null },
    ];
    must(await joinSpotsWorkflow(context, { componentId: partId, join: { how: "by-hand", pairs } }));
    const after = await readingsOfComponents(context.db, [partId]);
    expect(after.map((r) => r.spot)).toEqual(["rim", null, "b", "b"]);
    const foreign = { how: "by-hand" as const, pairs: [{ readingId: "none", spotId }] };
    expect(code(await joinSpotsWorkflow(context, { componentId: partId, join: foreign }))).toBe("unknown-reading");
  });
});
