import { createHmac } from "node:crypto";

const alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

/** The bytes of a key in base 32 (RFC 4648 §6), without padding. */
export function base32Bytes(text: string): Buffer {
  const bits = [...text].map((sign) => alphabet.indexOf(sign).toString(2).padStart(5, "0")).join("");
  return Buffer.from((bits.match(/.{8}/g) ?? []).map((byte) => Number.parseInt(byte, 2)));
}

/**
 * What an authenticator app shows for a key at a moment: RFC 6238 with SHA-1 and 30 seconds, over RFC 4226 §5.3. Written anew for the tests,
 * so that the library is not checked by itself.
 */
export function totp(key: string | Buffer, at: number = Date.now(), digits = 6): string {
  const counter = Buffer.alloc(8);
  counter.writeBigUInt64BE(BigInt(Math.floor(at / 30_000)));
  const mac = createHmac("sha1", typeof key === "string" ? base32Bytes(key) : key)
    .update(counter)
    .digest();
  const offset = (mac.at(-1) ?? 0) & 15;
  return String((mac.readUInt32BE(offset) & 0x7f_ff_ff_ff) % 10 ** digits).padStart(digits, "0");
}
