import { describe, expect, it } from "vitest";
import { draftSnapshot } from "@/lib/publication/build-snapshot.ts";
import { photoMarks } from "@/lib/publication/photo-marks.ts";
import { revisionDifference } from "@/lib/publication/revision-difference.ts";
import { snapshotPhoto } from "@/lib/publication/snapshot.ts";
import { snapshotPhotoOf } from "@/lib/publication/working-item-of.ts";
import { changeSentence } from "@/lib/wording/changes.ts";
import { marksNote } from "@/lib/wording/photos.ts";
import { sampleSnapshot } from "../support/sample-snapshot.ts";

const kept = {
  fileKey: "b.webp",
  alt: "The mug from the side",
  width: 1000,
  height: 800,
  sha256: "bb",
  files: [
    { key: "a.webp", width: 480, height: 384, sha256: "aa" },
    { key: "b.webp", width: 1000, height: 800, sha256: "bb" },
  ],
  scale: { x1: 0.1, y1: 0.9, x2: 0.6, y2: 0.9, lengthMm: 100 },
  spots: [
    { label: "a", componentId: "p1", x: 0.25, y: 0.5, windowMm: 8 },
    { label: "b", componentId: "p1", x: 0.75, y: 0.5, windowMm: null },
  ],
};

describe("a photo in a snapshot", () => {
  it("carries its sizes, its known length and its spots, and one of before still reads", () => {
    const photo = snapshotPhotoOf(kept);
    expect(snapshotPhoto.parse(photo)).toEqual(photo);
    expect(photo.sizes?.map((size) => size.width)).toEqual([480, 1000]);
    expect(photo.spots?.[0]).toEqual({ spot: "a", part: "p1", x: 0.25, y: 0.5, windowMm: 8 });
    const before = { key: "b.webp", alt: "The mug", width: 1000, height: 800, sha256: "bb" };
    expect(snapshotPhoto.parse(before)).toEqual(before);
    expect(photoMarks(before)).toEqual([]);
  });

  it("has its marks numbered, at the window's size where both are known", () => {
    const marks = photoMarks(snapshotPhotoOf(kept));
    expect(marks.map(({ number, spot, share }) => [number, spot, share])).toEqual([
      [1, "a", 0.04], // 500 px are 100 mm: 8 mm are 40 px of 1000
      [2, "b", null],
    ]);
    expect(marksNote(marks, [8, null])).toBe(
      "The circles are as large as the analyser’s window, 8 mm across where that is known, by the known length on the photo.",
    );
    expect(marksNote(photoMarks({ ...snapshotPhotoOf(kept), scale: null }), [8, null])).toBe(
      "The circles show where, not how large a spot was.",
    );
  });

  it("that moved a spot is told as a change of that spot", () => {
    const photo = snapshotPhotoOf(kept);
    const [first, second] = photo.spots ?? [];
    const moved = { ...photo, spots: [{ ...first!, x: 0.3 }, second!] };
    const changes = revisionDifference(sampleSnapshot({ photos: [photo] }), sampleSnapshot({ photos: [moved] }));
    expect(changes.map((change) => changeSentence(change))).toEqual([
      "Changed: photo “The mug from the side”, spot “a”, place from the left. Before: 0.25. Now: 0.3.",
    ]);
  });

  it("without words stands in the way of publishing", () => {
    const { format: _, ...item } = sampleSnapshot();
    const photos = [snapshotPhotoOf(kept), { ...snapshotPhotoOf(kept), alt: "" }];
    const { problems } = draftSnapshot({ ...item, specimens: [], photos });
    expect(problems).toContainEqual({ code: "photo-without-words", found: "photo 2" });
  });
});
