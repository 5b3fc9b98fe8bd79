import * as z from "zod";
import { canonicalJson } from "./canonical-json.ts";

/**
 * Standard base64 written in the one way it can be: no stray characters, the spare bits of the last one zero. A key begins with
 * what RFC 8410 has every Ed25519 key begin with; readers of keys are lenient there, and a changed bit would pass them.
 */
const publicKey = z
  .string()
  .regex(/^MCowBQYDK2VwAyEA[A-Za-z0-9+/]{42}[AEIMQUYcgkosw048]=$/, "an Ed25519 key of 44 bytes in base64");
const signature = z.string().regex(/^[A-Za-z0-9+/]{85}[AQgw]==$/, "64 bytes in base64");

/**
 * The newest entry of the log, signed with the registry's key: whoever noted a head can show later that entries were cut
 * off or made anew. `publicKey` is an Ed25519 key as SubjectPublicKeyInfo (RFC 8410), `signature` Ed25519 (RFC 8032) over
 * `signedText`; both in base64.
 */
export const logHeadSchema = z.object({
  seq: z.number().int().positive().describe("number of the newest entry"),
  hash: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .describe("that entry's hash"),
  signedAt: z.string().describe("ISO time with offset"),
  publicKey: publicKey.describe("Ed25519, SubjectPublicKeyInfo in base64"),
  signature: signature.describe("over the canonical JSON of { hash, seq, signedAt, what }, in base64"),
});
export type LogHead = z.infer<typeof logHeadSchema>;

/** Whether `signature` was made over the UTF-8 bytes of `text` with the private half of `publicKey`. Always an argument. */
export type VerifySignature = (publicKey: string, text: string, signature: string) => boolean;

/** Says what the signature is about, so that it can never pass for a signature over anything else. */
const what = "cupboard-assay publication log head";

/**
 * The very text that is signed: canonical JSON (RFC 8785), one line, no line end.
 *
 * @example signedText({ seq: 2, hash: "ab", signedAt: "2026-11-28T10:00:00.000Z" })
 *   // '{"hash":"ab","seq":2,"signedAt":"2026-11-28T10:00:00.000Z","what":"cupboard-assay publication log head"}'
 */
export const signedText = ({ seq, hash, signedAt }: Pick<LogHead, "seq" | "hash" | "signedAt">): string =>
  canonicalJson({ what, seq, hash, signedAt });
