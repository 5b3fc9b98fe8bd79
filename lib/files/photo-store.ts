import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import sharp, { type OutputInfo } from "sharp";
import { sha256 } from "../platform/sha256.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";

/** Photos on disk under DATA_DIR/photos. What is served is always re-encoded: upright, without any metadata. */
export type StoredPhoto = { fileKey: string; width: number; height: number; sha256: string };

const largestSide = 1600;
const largestPixels = 50_000_000;
const keyForm = /^[0-9a-f]{32}\.webp$/;
const folder = (dataDir: string) => join(/* turbopackIgnore: true */ dataDir, "photos");

/** Decodes, turns upright, strips metadata, shrinks to 1600 px and keeps the result under a key of its content. */
export async function keepPhoto(dataDir: string, bytes: Uint8Array): Promise<Outcome<StoredPhoto>> {
  let image: { data: Buffer; info: OutputInfo };
  try {
    image = await sharp(bytes, { limitInputPixels: largestPixels, failOn: "error" })
      .autoOrient()
      .resize({ width: largestSide, height: largestSide, fit: "inside", withoutEnlargement: true })
      .webp({ quality: 82 })
      .toBuffer({ resolveWithObject: true });
  } catch (error) {
    const found = error instanceof Error ? error.message : "unknown";
    return refused({
      code: "photo-unreadable",
      found,
      allowed: "a JPEG, PNG, WebP or AVIF photo of at most 50 million pixels",
    });
  }
  const digest = sha256(image.data);
  const fileKey = `${digest.slice(0, 32)}.webp`;
  await mkdir(folder(dataDir), { recursive: true });
  await writeFile(join(folder(dataDir), fileKey), image.data);
  return done({ fileKey, width: image.info.width, height: image.info.height, sha256: digest });
}

/** The bytes behind a key, or null: also for anything that is not a key, so that no path can be asked for. */
export async function readPhoto(dataDir: string, key: string): Promise<Uint8Array<ArrayBuffer> | null> {
  if (!keyForm.test(key)) return null;
  try {
    return new Uint8Array(await readFile(join(folder(dataDir), key)));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
    throw error;
  }
}
