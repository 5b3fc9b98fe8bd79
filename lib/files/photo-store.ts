import sharp from "sharp";
import { sha256 } from "../platform/sha256.ts";
import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { fileStore } from "./file-store.ts";
import { pictureKind } from "./picture-kind.ts";
import { keepPrivate } from "./private-files.ts";

/**
 * Photos, on disk or in a bucket. What is shown lies under DATA_DIR/photos: upright, re-encoded as WebP at up to three widths, without
 * any metadata. The file as it came lies among the private ones. Every name is made of the content.
 */
export type PhotoFile = { key: string; width: number; height: number; sha256: string };
export type StoredPhoto = {
  fileKey: string; // the widest
  width: number;
  height: number;
  sha256: string;
  files: PhotoFile[]; // narrowest first
  originalKey: string;
};

/** The widest fills a large screen, the narrowest a list on a phone (common practice, no source). */
export const photoWidths = [480, 960, 1920] as const;
/** A 48-megapixel phone camera fits; a picture of 60,000 × 60,000 would fill the memory. */
export const largestPixels = 50_000_000;
export const photoFolder = "photos" as const;
const keyForm = /^[0-9a-f]{32}\.webp$/;
const taken = "a JPEG, PNG, WebP or AVIF photo";

/**
 * Decodes, turns upright, strips metadata, re-encodes at three widths; keeps the original privately, then the results.
 * Nothing is kept of what is refused.
 *
 * Refused: `photo-heic`, `photo-other-kind`, `photo-too-many-pixels`, `photo-unreadable` (cut short or damaged).
 */
export async function keepPhoto(dataDir: string, bytes: Uint8Array): Promise<Outcome<StoredPhoto>> {
  const encoded = await checkedAndEncoded(bytes, photoWidths);
  if (!encoded.ok) return encoded;
  const originalKey = await keepPrivate(dataDir, bytes);
  for (const { key, data } of encoded.value) await fileStore(dataDir).write(photoFolder, key, data);
  const files = encoded.value.map(({ data: _, ...file }) => file);
  const { key: fileKey, width, height, sha256: digest } = files.at(-1)!;
  return done({ fileKey, width, height, sha256: digest, files, originalKey });
}

/**
 * A stranger's photo, for testers to look at: upright, one width, without any metadata; nothing of the file as it came is
 * kept. Answers with its key. Refused as by `keepPhoto`.
 */
export async function keepStrangersPhoto(dataDir: string, bytes: Uint8Array): Promise<Outcome<string>> {
  const encoded = await checkedAndEncoded(bytes, [photoWidths[1]]);
  if (!encoded.ok) return encoded;
  const { key, data } = encoded.value[0]!;
  await fileStore(dataDir).write(photoFolder, key, data);
  return done(key);
}

/** Takes a file away that no record names any longer. */
export async function dropPhoto(dataDir: string, key: string): Promise<void> {
  if (keyForm.test(key)) await fileStore(dataDir).remove(photoFolder, key);
}

async function checkedAndEncoded(bytes: Uint8Array, widths: readonly number[]) {
  const kind = pictureKind(bytes);
  if (kind.kind === "heic") return refused({ code: "photo-heic", allowed: taken });
  if (kind.kind === "other") return refused({ code: "photo-other-kind", found: kind.name, allowed: taken });
  return encodePhoto(bytes, widths);
}

async function encodePhoto(
  bytes: Uint8Array,
  wanted: readonly number[],
): Promise<Outcome<(PhotoFile & { data: Uint8Array })[]>> {
  try {
    // The head alone, so that a picture too large is refused by its size before anything of it is unpacked.
    const { width, height, autoOrient } = await sharp(bytes, { limitInputPixels: false }).metadata();
    if (width * height > largestPixels) return refused(tooManyPixels(width, height));
    const widths = [...new Set(wanted.map((w) => Math.min(w, autoOrient.width)))];
    const files: (PhotoFile & { data: Uint8Array })[] = [];
    for (const w of widths) {
      const { data, info } = await sharp(bytes, { limitInputPixels: largestPixels, failOn: "error" })
        .autoOrient()
        .resize({ width: w, withoutEnlargement: true })
        .webp({ quality: 80 })
        .toBuffer({ resolveWithObject: true });
      const digest = sha256(data);
      files.push({
        key: `${digest.slice(0, 32)}.webp`,
        width: info.width,
        height: info.height,
        sha256: digest,
        data,
      });
    }
    return done(files);
  } catch (error) {
    const found = error instanceof Error ? (error.message.split("\n")[0] ?? "") : "unknown";
    return refused({ code: "photo-unreadable", found, allowed: taken });
  }
}

const tooManyPixels = (width: number, height: number): Problem => ({
  code: "photo-too-many-pixels",
  found: `${width} × ${height} pixels`,
  allowed: `${largestPixels / 1e6} million pixels in all`,
});

/** The bytes behind a key, or null: also for anything that is not a key, so that no path can be asked for. */
export async function readPhoto(dataDir: string, key: string): Promise<Uint8Array<ArrayBuffer> | null> {
  return keyForm.test(key) ? fileStore(dataDir).read(photoFolder, key) : null;
}
