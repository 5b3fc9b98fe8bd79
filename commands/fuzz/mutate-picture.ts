import type { Chance } from "./chance.ts";
import { mutateBytes } from "./mutate-bytes.ts";

/** Sizes that a head may claim: nothing, one, more than memory, negative where a reader takes it for signed. */
const claims = [0, 1, 0xffff, 0x7fffffff, 0xffffffff, 60_000];

/** A mutated picture. Half of the damage goes to the first kilobyte, where sizes and tables stand. */
export function mutatedPicture(
  samples: readonly { name: string; bytes: Uint8Array }[],
  chance: Chance,
): { name: string; bytes: Uint8Array } {
  const { below, pick } = chance;
  const { name, bytes: whole } = pick(samples);
  let bytes: Uint8Array = new Uint8Array(whole);
  for (let rounds = 1 + below(2); rounds > 0; rounds -= 1) {
    const head = Math.min(1_024, bytes.length);
    switch (below(4)) {
      case 0:
        bytes = mutateBytes(bytes, chance);
        break;
      case 1:
        bytes = new Uint8Array(Buffer.concat([mutateBytes(bytes.slice(0, head), chance), bytes.subarray(head)]));
        break;
      case 2: {
        const wide = below(2) === 0;
        const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
        const at = below(Math.max(1, head - 4));
        if (bytes.length < at + 4) break;
        if (wide) view.setUint32(at, pick(claims));
        else view.setUint16(at, pick(claims) & 0xffff);
        break;
      }
      default: {
        const other = pick(samples).bytes;
        const at = below(bytes.length || 1);
        bytes = new Uint8Array(Buffer.concat([bytes.subarray(0, at), other.subarray(below(other.length))]));
      }
    }
  }
  return { name, bytes };
}
