/**
 * A reader of picture files of our own, apart from the library that writes them: it walks the segments of a JPEG and
 * the chunks of a WebP and names what carries metadata. JPEG: ITU-T T.81, annex B; Exif: CIPA DC-008; WebP container:
 * RFC 9649, section 2.
 */
export function metadataIn(bytes: Uint8Array): string[] {
  const text = (from: number, length: number) => String.fromCharCode(...bytes.subarray(from, from + length));
  if (text(0, 4) === "RIFF" && text(8, 4) === "WEBP") return webpChunks(bytes, text);
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return jpegSegments(bytes, text);
  throw new Error("neither a JPEG nor a WebP");
}

type Text = (from: number, length: number) => string;
const view = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.length);

/** Chunks that hold the picture itself; anything else is told. */
const pictureChunks = new Set(["VP8 ", "VP8L", "VP8X", "ALPH"]);

function webpChunks(bytes: Uint8Array, text: Text): string[] {
  const found: string[] = [];
  for (let at = 12; at + 8 <= bytes.length; ) {
    const name = text(at, 4);
    const size = view(bytes).getUint32(at + 4, true);
    if (!pictureChunks.has(name)) found.push(name.trim());
    at += 8 + size + (size % 2);
  }
  return found;
}

function jpegSegments(bytes: Uint8Array, text: Text): string[] {
  const found: string[] = [];
  for (let at = 2; at + 4 <= bytes.length; ) {
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xda) break; // the picture itself
    const size = view(bytes).getUint16(at + 2);
    const begins = text(at + 4, 4);
    const isMetadata = marker === 0xfe || (marker >= 0xe1 && marker <= 0xef);
    if (isMetadata)
      found.push(`${marker === 0xfe ? "COM" : `APP${marker - 0xe0}`} ${begins.replace(/[^\x20-\x7e]/g, "")}`);
    at += 2 + size;
  }
  return found;
}
