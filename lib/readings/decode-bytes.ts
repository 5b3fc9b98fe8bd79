import { done, type Outcome, refused } from "../quantity/problem.ts";
import { nameOfBinary } from "./file-signatures.ts";

export type Encoding = "utf-8" | "utf-8-bom" | "utf-16le" | "utf-16be" | "windows-1252";
export type DecodedText = { text: string; encoding: Encoding };

/** The largest file taken in one piece. 100,000 rows of 40 columns are about 30 MB. */
export const maxFileBytes = 50 * 1024 * 1024;

/** Windows-1252 0x80…0x9f; 0 where the code page has no character (WHATWG Encoding index windows-1252, minus its C1 fallbacks). */
const windows1252High = [
  0x20ac, 0, 0x201a, 0x0192, 0x201e, 0x2026, 0x2020, 0x2021, 0x02c6, 0x2030, 0x0160, 0x2039, 0x0152, 0, 0x017d, 0, 0,
  0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014, 0x02dc, 0x2122, 0x0161, 0x203a, 0x0153, 0, 0x017e, 0x0178,
];

/** By table, not by the platform's decoder: engines differ in how they treat 0x80…0x9f. Null at a byte the code page lacks. */
function decodeWindows1252(bytes: Uint8Array): string | null {
  const parts: string[] = [];
  const units = new Uint16Array(8192);
  for (let start = 0; start < bytes.length; start += units.length) {
    const end = Math.min(start + units.length, bytes.length);
    for (let at = start; at < end; at++) {
      const byte = bytes[at]!;
      const unit = byte >= 0x80 && byte < 0xa0 ? windows1252High[byte - 0x80]! : byte;
      if (unit === 0 && byte !== 0) return null;
      units[at - start] = unit;
    }
    parts.push(String.fromCharCode(...units.subarray(0, end - start)));
  }
  return parts.join("");
}

/** UTF-16 without a mark shows in Western text as a NUL in nearly every second byte. */
function utf16WithoutMark(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  const sample = bytes.subarray(0, 4096);
  const pairs = Math.floor(sample.length / 2);
  if (pairs < 4 || bytes.length % 2 === 1) return null;
  let even = 0;
  let odd = 0;
  for (let at = 0; at + 1 < sample.length; at += 2) {
    if (sample[at] === 0) even += 1;
    if (sample[at + 1] === 0) odd += 1;
  }
  if (odd > 0.7 * pairs && even === 0) return "utf-16le";
  if (even > 0.7 * pairs && odd === 0) return "utf-16be";
  return null;
}

const decodeStrictly = (bytes: Uint8Array, label: string): string | null => {
  try {
    return new TextDecoder(label, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
};

/** UTF-8; where the file was cut off inside its last character, that character becomes U+FFFD and its row is judged later. */
function decodeUtf8(bytes: Uint8Array): string | null {
  const whole = decodeStrictly(bytes, "utf-8");
  if (whole !== null) return whole;
  for (let cut = 1; cut <= 3 && cut < bytes.length; cut++) {
    const lead = bytes[bytes.length - cut]!;
    if (lead < 0x80) break;
    if (lead < 0xc2) continue; // a continuation byte: its lead stands before it
    const before = bytes.subarray(0, bytes.length - cut);
    const text = before.some((byte) => byte >= 0x80) ? decodeStrictly(before, "utf-8") : null;
    return text === null ? null : `${text}\ufffd`;
  }
  return null;
}

const lineOf = (text: string, at: number): number => text.slice(0, at).split(/\r\n?|\n/).length;

function decode(bytes: Uint8Array): DecodedText | null {
  const [first, second, third] = bytes;
  const as = (text: string | null, encoding: Encoding): DecodedText | null =>
    text === null ? null : { text, encoding };
  if (first === 0xef && second === 0xbb && third === 0xbf) return as(decodeUtf8(bytes.subarray(3)), "utf-8-bom");
  const marked = first === 0xff && second === 0xfe ? "utf-16le" : first === 0xfe && second === 0xff ? "utf-16be" : null;
  const wide = marked ?? utf16WithoutMark(bytes);
  if (wide) {
    const body = marked ? bytes.subarray(2) : bytes;
    // A cut inside a two-byte unit: decode what is whole and leave a mark at the end, as with UTF-8.
    const odd = body.length % 2 === 1;
    const text = decodeStrictly(odd ? body.subarray(0, -1) : body, wide);
    return as(odd && text !== null ? `${text}\ufffd` : text, wide);
  }
  return as(decodeUtf8(bytes), "utf-8") ?? as(decodeWindows1252(bytes), "windows-1252");
}

/**
 * Bytes of a file → its text and the encoding it was in: UTF-8 with or without mark, UTF-16 in either order with or
 * without mark, else Windows-1252. Strict UTF-8 comes first because Windows-1252 takes nearly any bytes.
 * Line ends become "\n" (the raw bytes are kept elsewhere). Refused, saying what it is: empty, too large, an image,
 * a workbook, a PDF, NUL bytes, bytes of no known encoding.
 *
 * Example: bytes 50 62 3b b5 67 → { text: "Pb;µg", encoding: "windows-1252" }.
 */
export function decodeBytes(bytes: Uint8Array, options: { maxBytes?: number } = {}): Outcome<DecodedText> {
  const limit = options.maxBytes ?? maxFileBytes;
  const megabytes = (size: number) => `${(size / 1024 / 1024).toFixed(1)} MB`;
  if (bytes.length === 0) return refused({ code: "file-empty" });
  if (bytes.length > limit)
    return refused({ code: "file-too-large", found: megabytes(bytes.length), allowed: megabytes(limit) });
  const binary = nameOfBinary(bytes);
  if (binary) return refused({ code: "file-not-text", found: binary });
  const decoded = decode(bytes);
  if (!decoded) return refused({ code: "encoding-unknown" });
  const nul = decoded.text.indexOf("\0");
  if (nul >= 0) {
    const row = lineOf(decoded.text, nul);
    return refused({ code: "nul-bytes", where: { row }, found: `line ${row}` });
  }
  const text = decoded.text.replace(/\r\n?/g, "\n");
  if (text.trim() === "") return refused({ code: "file-blank" });
  return done({ text, encoding: decoded.encoding });
}
