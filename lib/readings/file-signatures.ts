/** What a file is by its first bytes, where it is no text at all. Words are for people. Public file-format signatures. */
export type Signature = { name: string; matches: (bytes: Uint8Array) => boolean };

const begins =
  (...expected: number[]) =>
  (bytes: Uint8Array): boolean =>
    expected.every((value, index) => bytes[index] === value);
const textAt = (bytes: Uint8Array, from: number, to: number): string =>
  String.fromCharCode(...bytes.subarray(from, Math.min(to, bytes.length)));
const isZip = begins(0x50, 0x4b, 0x03, 0x04);
/** A zip whose first entries have a name of this folder: the office formats are zips with known folders. */
const zipWith = (folder: string) => (bytes: Uint8Array) => isZip(bytes) && textAt(bytes, 0, 4096).includes(folder);

export const signatures: readonly Signature[] = [
  { name: "a PNG image", matches: begins(0x89, 0x50, 0x4e, 0x47) },
  { name: "a JPEG image", matches: begins(0xff, 0xd8, 0xff) },
  { name: "a GIF image", matches: (bytes) => /^GIF8[79]a/.test(textAt(bytes, 0, 6)) },
  {
    name: "a TIFF image",
    matches: (bytes) => begins(0x49, 0x49, 0x2a, 0x00)(bytes) || begins(0x4d, 0x4d, 0x00, 0x2a)(bytes),
  },
  { name: "a WebP image", matches: (bytes) => textAt(bytes, 0, 4) === "RIFF" && textAt(bytes, 8, 12) === "WEBP" },
  { name: "a HEIC or AVIF image or a video", matches: (bytes) => textAt(bytes, 4, 8) === "ftyp" },
  {
    name: "a BMP image",
    matches: (bytes) => begins(0x42, 0x4d)(bytes) && bytes[6] === 0 && bytes[7] === 0 && bytes[8] === 0,
  },
  { name: "a PDF document", matches: (bytes) => textAt(bytes, 0, 1024).includes("%PDF-") },
  { name: "a spreadsheet workbook (xlsx)", matches: zipWith("xl/") },
  { name: "a word-processor document (docx)", matches: zipWith("word/") },
  { name: "an OpenDocument file", matches: zipWith("mimetypeapplication/vnd.oasis") },
  { name: "a spreadsheet workbook (xlsx) or another zip archive", matches: zipWith("[Content_Types].xml") },
  { name: "a zip archive", matches: isZip },
  { name: "an older office document (such as xls)", matches: begins(0xd0, 0xcf, 0x11, 0xe0) },
  { name: "a gzip archive", matches: begins(0x1f, 0x8b) },
  { name: "a database file", matches: (bytes) => textAt(bytes, 0, 15) === "SQLite format 3" },
  {
    name: "a web page (HTML)",
    matches: (bytes) =>
      /^\s*(?:\xef\xbb\xbf)?\s*<(?:!doctype html|html|head|body|table)\b/i.test(textAt(bytes, 0, 256)),
  },
  { name: "an XML file", matches: (bytes) => /^\s*(?:\xef\xbb\xbf)?<\?xml\b/i.test(textAt(bytes, 0, 256)) },
];

/** Names what the bytes are when they are no table of text; null when nothing is recognised. */
export const nameOfBinary = (bytes: Uint8Array): string | null =>
  signatures.find((signature) => signature.matches(bytes))?.name ?? null;
