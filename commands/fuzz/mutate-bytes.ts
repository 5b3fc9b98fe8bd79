import type { Chance } from "./chance.ts";

const interesting = [0x00, 0xff, 0x7f, 0x80, 0x22, 0x0a, 0x0d, 0x2c, 0x3b, 0x09, 0x3c, 0x26];

/** Damage that needs no knowledge of the format: bytes turned, put in, taken out, doubled, moved, cut off. */
export function mutateBytes(bytes: Uint8Array, chance: Chance): Uint8Array {
  const { below, pick } = chance;
  const at = below(Math.max(1, bytes.length));
  const span = bytes.subarray(at, at + 1 + below(64));
  const joined = (...parts: Uint8Array[]): Uint8Array => new Uint8Array(Buffer.concat(parts));
  switch (below(7)) {
    case 0: {
      const turned = bytes.slice();
      for (let n = 0; n <= below(8); n += 1) turned[below(turned.length)] = below(256);
      return turned;
    }
    case 1: {
      const turned = bytes.slice();
      turned[at] = pick(interesting);
      return turned;
    }
    case 2:
      return joined(bytes.subarray(0, at), Uint8Array.of(pick(interesting)), bytes.subarray(at));
    case 3:
      return joined(bytes.subarray(0, at), bytes.subarray(at + span.length));
    case 4:
      return joined(bytes.subarray(0, at), span, span, bytes.subarray(at + span.length));
    case 5: {
      const to = below(Math.max(1, bytes.length));
      return joined(bytes.subarray(0, to), span, bytes.subarray(to));
    }
    default:
      return bytes.slice(0, at);
  }
}
