import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { crc32, deflateSync } from "node:zlib";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { keepPhoto, readPhoto } from "@/lib/files/photo-store.ts";
import { sha256 } from "@/lib/platform/sha256.ts";
import type { Outcome } from "@/lib/quantity/problem.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { must } from "../support/bench-item.ts";
import { metadataIn } from "../support/metadata-walk.ts";

const folder = () => mkdtempSync(join(tmpdir(), "assay-photos-"));
const code = (outcome: Outcome<unknown>) => (outcome.ok ? "kept" : outcome.problems.map((p) => p.code).join());
const sentence = (outcome: Outcome<unknown>) => (outcome.ok ? "" : outcome.problems.map(problemSentence).join(" "));

/**
 * A phone's photo, invented: lying on its side (orientation 6: turn a quarter clockwise), with a place and a camera. Upright
 * it is 900 × 1200 with its left half red and its right half blue.
 */
async function phonePhoto(): Promise<Uint8Array> {
  const upright = await sharp({ create: { width: 900, height: 1200, channels: 3, background: "#2040c0" } })
    .composite([
      {
        input: { create: { width: 450, height: 1200, channels: 3, background: "#c02020" } },
        left: 0,
        top: 0,
      },
    ])
    .png()
    .toBuffer();
  const jpeg = await sharp(upright)
    .rotate(-90)
    .withExif({
      IFD0: { Make: "Invented camera", Artist: "A. Person" },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1", GPSLongitudeRef: "W", GPSLongitude: "0/1 7/1 0/1" },
    })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();
  return new Uint8Array(jpeg);
}

describe("a photo with a place in it, lying on its side", () => {
  it("comes out upright, at three widths, without any metadata", async () => {
    const dataDir = folder();
    const bytes = await phonePhoto();
    // The reader does see what is in the photo as it came.
    expect(metadataIn(bytes)).toContain("APP1 Exif");
    const kept = must(await keepPhoto(dataDir, bytes));
    expect(kept.files.map((f) => [f.width, f.height])).toEqual([
      [480, 640],
      [900, 1200],
    ]);
    for (const { key, sha256: digest, width } of kept.files) {
      const file = (await readPhoto(dataDir, key)) ?? new Uint8Array();
      expect(sha256(file)).toBe(digest);
      expect(metadataIn(file)).toEqual([]);
      const { data, info } = await sharp(file).raw().toBuffer({ resolveWithObject: true });
      const pixel = (x: number, y: number) => [
        ...data.subarray((y * info.width + x) * 3, (y * info.width + x) * 3 + 3),
      ];
      expect(pixel(20, 20)[0], "red on the left").toBeGreaterThan(150);
      expect(pixel(width - 20, 20)[2], "blue on the right").toBeGreaterThan(150);
      expect(pixel(20, info.height - 20)[0], "red down to the foot").toBeGreaterThan(150);
    }
    // The original is kept as it came, apart, under its own hash.
    expect(readFileSync(join(dataDir, "originals", kept.originalKey))).toEqual(Buffer.from(bytes));
    expect(kept.originalKey).toBe(sha256(bytes));
    expect(await readPhoto(dataDir, kept.originalKey)).toBeNull();
  });

  it("says nothing to exiftool either, where that is installed", async ({ skip }) => {
    if (spawnSync("exiftool", ["-ver"]).error) return skip("exiftool is not installed");
    const dataDir = folder();
    const bytes = await phonePhoto();
    writeFileSync(join(dataDir, "came.jpg"), bytes);
    const kept = must(await keepPhoto(dataDir, bytes));
    const tags = (file: string): string[] => {
      const answer = spawnSync("exiftool", ["-j", "-G1", file], { encoding: "utf8" });
      return Object.keys((JSON.parse(answer.stdout) as Record<string, unknown>[])[0] ?? {});
    };
    expect(tags(join(dataDir, "came.jpg"))).toContain("GPS:GPSLatitude");
    const groups = new Set(tags(join(dataDir, "photos", kept.fileKey)).map((tag) => tag.split(":")[0]));
    // The file system's and the reader's own words, the container's size and what follows from it.
    expect([...groups].sort()).toEqual(["Composite", "ExifTool", "File", "RIFF", "SourceFile", "System"]);
  });
});

describe("three widths", () => {
  it("of a large photo are 480, 960 and 1920; a small one is never enlarged", async () => {
    const dataDir = folder();
    const make = (width: number, height: number) =>
      sharp({ create: { width, height, channels: 3, background: "#789" } })
        .jpeg()
        .toBuffer();
    const large = must(await keepPhoto(dataDir, await make(2400, 1800)));
    expect(large.files.map((f) => [f.width, f.height])).toEqual([
      [480, 360],
      [960, 720],
      [1920, 1440],
    ]);
    expect(large).toMatchObject({ width: 1920, height: 1440, fileKey: large.files[2]?.key });
    const small = must(await keepPhoto(dataDir, await make(40, 30)));
    expect(small.files.map((f) => [f.width, f.height])).toEqual([[40, 30]]);
  });
});

/** A PNG that says it is so large and holds almost nothing: its head, then a little deflated zero. */
function hugePng(width: number, height: number): Uint8Array {
  const chunk = (name: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(name, "latin1"), data]);
    const frame = Buffer.alloc(8);
    frame.writeUInt32BE(data.length, 0);
    frame.writeUInt32BE(crc32(body), 4);
    return Buffer.concat([frame.subarray(0, 4), body, frame.subarray(4)]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 2, 0, 0, 0], 8);
  return new Uint8Array(
    Buffer.concat([
      Buffer.from("\x89PNG\r\n\x1a\n", "latin1"),
      chunk("IHDR", head),
      chunk("IDAT", deflateSync(Buffer.alloc(1000))),
      chunk("IEND", Buffer.alloc(0)),
    ]),
  );
}

/** The head of a HEIC file: the box `ftyp` with its brands (ISO/IEC 14496-12), then nothing that matters. */
const heic = (major: string) =>
  new Uint8Array(Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from(`ftyp${major}\0\0\0\0mif1heic`, "latin1")]));

describe("what is no photo is refused by its content", () => {
  it.each<[string, () => Promise<Uint8Array> | Uint8Array, string, RegExp]>([
    ["words", () => Buffer.from("not a picture"), "photo-other-kind", /no picture by its content/],
    ["a PDF named .jpg", () => Buffer.from("%PDF-1.7\n%âãÏÓ"), "photo-other-kind", /this is a PDF document, whatever/],
    ["a drawing with scripts", () => Buffer.from("<?xml version='1.0'?><svg/>"), "photo-other-kind", /an XML file/],
    ["a HEIC", () => heic("heic"), "photo-heic", /Send it as a JPEG/],
    ["a HEIC of another make", () => heic("mif1"), "photo-heic", /HEIC/],
    ["60,000 × 60,000 pixels", () => hugePng(60_000, 60_000), "photo-too-many-pixels", /60000 × 60000 pixels/],
    ["a photo cut short", async () => (await phonePhoto()).subarray(0, 3000), "photo-unreadable", /cut short/],
    ["a JPEG's first bytes and no more", () => Buffer.from([0xff, 0xd8, 0xff, 0xe0]), "photo-unreadable", /cut short/],
    ["nothing", () => new Uint8Array(), "photo-other-kind", /no picture/],
  ])("%s", async (_, make, expected, says) => {
    const dataDir = folder();
    const outcome = await keepPhoto(dataDir, new Uint8Array(await make()));
    expect(code(outcome)).toBe(expected);
    expect(sentence(outcome)).toMatch(says);
    expect(readdirSync(dataDir)).toEqual([]);
  });
});
