import { nameOfBinary } from "../readings/file-signatures.ts";

/** What a file is by its first bytes, whatever its name says: one of the pictures we take, a HEIC, or another thing in words. */
export type PictureKind = { kind: "jpeg" | "png" | "webp" | "avif" | "heic" } | { kind: "other"; name: string };

const text = (bytes: Uint8Array, from: number, to: number): string => String.fromCharCode(...bytes.subarray(from, to));

/** Brands of ISO base media files (ISO/IEC 14496-12): the box `ftyp` names them at the start of the file. */
const avifBrands = ["avif", "avis"];
const heicBrands = ["heic", "heix", "hevc", "hevx", "heim", "heis"];

/**
 * @example pictureKind(new TextEncoder().encode("%PDF-1.7 …"))
 * // { kind: "other", name: "a PDF document" }
 */
export function pictureKind(bytes: Uint8Array): PictureKind {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return { kind: "jpeg" };
  if (text(bytes, 0, 8) === "\x89PNG\r\n\x1a\n") return { kind: "png" };
  if (text(bytes, 0, 4) === "RIFF" && text(bytes, 8, 12) === "WEBP") return { kind: "webp" };
  if (text(bytes, 4, 8) === "ftyp") {
    const size = Math.min(new DataView(bytes.buffer, bytes.byteOffset, bytes.length).getUint32(0), 256, bytes.length);
    const brands = text(bytes, 8, size).match(/.{4}/gs) ?? [];
    if (brands.some((brand) => avifBrands.includes(brand))) return { kind: "avif" };
    if (brands.some((brand) => heicBrands.includes(brand) || brand === "mif1")) return { kind: "heic" };
    return { kind: "other", name: "a video" };
  }
  return { kind: "other", name: nameOfBinary(bytes) ?? "no picture by its content" };
}
