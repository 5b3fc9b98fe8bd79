/** What a zip's own directory says of one file in it. Sizes in bytes. */
export type ZipEntry = {
  name: string;
  size: number;
  packedSize: number;
  /** 0: as it is; 8: deflated. */
  method: number;
  encrypted: boolean;
  /** The packed bytes begin here. */
  start: number;
};

const endMark = 0x06054b50;
const directoryMark = 0x02014b50;
const localMark = 0x04034b50;

/**
 * The directory at the end of a zip (APPNOTE.TXT 4.3.12 and 4.3.16); null where the bytes are no whole zip. Nothing is unpacked. Zips
 * that need 64-bit sizes are not read: no table that is taken is as large.
 */
export function zipEntries(bytes: Uint8Array): ZipEntry[] | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = findEnd(view);
  if (end === null) return null;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const entries: ZipEntry[] = [];
  for (let n = 0; n < count; n += 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== directoryMark) return null;
    const local = view.getUint32(at + 42, true);
    if (local + 30 > bytes.length || view.getUint32(local, true) !== localMark) return null;
    const nameLength = view.getUint16(at + 28, true);
    const packedSize = view.getUint32(at + 20, true);
    const size = view.getUint32(at + 24, true);
    const stated = view.getUint32(local + 22, true);
    // The entry's own head must say the same, or leave it to the directory (bit 3): readers differ in which they believe.
    const left = (view.getUint16(local + 6, true) & 8) === 8 && stated === 0;
    if (stated !== size && !left) return null;
    const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    if (start + packedSize > bytes.length) return null;
    entries.push({
      name: new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength)),
      size,
      packedSize,
      method: view.getUint16(at + 10, true),
      encrypted: (view.getUint16(at + 8, true) & 1) === 1,
      start,
    });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}

/** The end record stands behind everything but a comment of at most 65,535 bytes. */
function findEnd(view: DataView): number | null {
  for (let at = view.byteLength - 22; at >= 0 && at > view.byteLength - 65_558; at -= 1)
    if (view.getUint32(at, true) === endMark) return at;
  return null;
}

export type Unpacked = { state: "ok"; bytes: Uint8Array } | { state: "too-large" } | { state: "broken" };

/**
 * Unpacks one entry and stops at `limit` bytes, whatever the directory says of its size: a bomb that lies is met here. An entry that
 * comes out at another size than stated is broken.
 */
export async function unpackEntry(bytes: Uint8Array, entry: ZipEntry, limit: number): Promise<Unpacked> {
  const packed = bytes.subarray(entry.start, entry.start + entry.packedSize);
  if (entry.size > limit) return { state: "too-large" };
  if (entry.method === 0) return packed.length === entry.size ? { state: "ok", bytes: packed } : { state: "broken" };
  if (entry.method !== 8) return { state: "broken" };
  const inflating = new Blob([new Uint8Array(packed)]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  const reader = inflating.getReader();
  const out = new Uint8Array(entry.size);
  let written = 0;
  try {
    for (let chunk = await reader.read(); !chunk.done; chunk = await reader.read()) {
      if (written + chunk.value.length > entry.size) {
        await reader.cancel();
        return { state: written + chunk.value.length > limit ? "too-large" : "broken" };
      }
      out.set(chunk.value, written);
      written += chunk.value.length;
    }
  } catch {
    return { state: "broken" };
  }
  return written === entry.size ? { state: "ok", bytes: out } : { state: "broken" };
}
