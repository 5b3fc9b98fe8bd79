import { crc32, deflateRawSync } from "node:zlib";

/** Entries of a zip, each with its text or bytes; `claim` says another size than the true one, `locked` sets the password mark. */
export type ZipPart = { name: string; data: string | Uint8Array; stored?: boolean; claim?: number; locked?: boolean };

/** A zip written plainly, with the same bytes every time: no clock, no machine. For workbooks of tests and of the scenario. */
export function zipFile(parts: readonly ZipPart[]): Uint8Array {
  const bodies: Buffer[] = [];
  const directory: Buffer[] = [];
  let offset = 0;
  for (const { name, data, stored = false, claim, locked = false } of parts) {
    const plain = Buffer.from(data);
    const packed = stored ? plain : deflateRawSync(plain, { level: 9 });
    const label = Buffer.from(name, "utf8");
    const fields = Buffer.alloc(26);
    fields.writeUInt16LE(20, 0); // version needed
    fields.writeUInt16LE(locked ? 1 : 0, 2);
    fields.writeUInt16LE(stored ? 0 : 8, 4);
    fields.writeUInt32LE(0x00210000, 6); // 1 January 1980
    fields.writeUInt32LE(crc32(plain), 10);
    fields.writeUInt32LE(packed.length, 14);
    fields.writeUInt32LE(claim ?? plain.length, 18);
    fields.writeUInt16LE(label.length, 22);
    const local = Buffer.concat([mark(0x04034b50), fields, label, packed]);
    const made = Buffer.alloc(2);
    made.writeUInt16LE(20, 0);
    const tail = Buffer.alloc(14);
    tail.writeUInt32LE(offset, 10);
    directory.push(Buffer.concat([mark(0x02014b50), made, fields, tail, label]));
    bodies.push(local);
    offset += local.length;
  }
  const listed = Buffer.concat(directory);
  const end = Buffer.alloc(18);
  end.writeUInt16LE(parts.length, 4);
  end.writeUInt16LE(parts.length, 6);
  end.writeUInt32LE(listed.length, 8);
  end.writeUInt32LE(offset, 12);
  return new Uint8Array(Buffer.concat([...bodies, listed, mark(0x06054b50), end]));
}

function mark(value: number): Buffer {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32LE(value);
  return bytes;
}
