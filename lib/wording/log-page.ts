import { type LogHead, signedText } from "../publication/log-head.ts";
import { headWords as spanish } from "./es/log-page.ts";
import type { ByLanguage, Sentences } from "./language.ts";

/** The signed head on /log. */
export const headWords = {
  title: "The signed head",
  lead: "Each time something is published, the registry signs the log’s newest entry with its key. Note the entry’s number, its hash and the key somewhere of your own: then nobody, the registry included, can take entries out or write the log anew without your seeing it.",
  entry: "Newest entry",
  hash: "Its hash",
  signedAt: "Signed",
  key: "Public key (Ed25519)",
  signature: "Signature",
  none: "The newest entry is not signed: the registry’s key could not be read. The chain of hashes can be checked without it.",
  behind: (head: number, newest: number) =>
    `The newest signed entry is ${head}; entry ${newest} is not signed yet, because the registry’s key could not be read.`,
  keyChanged: (seqs: readonly number[]) =>
    `The registry has used more than one key. A new one was first used for entry ${seqs.join(", then for entry ")}. The earlier signatures still hold with their own keys.`,
  byHand: "How to check it by hand",
  byHandLead:
    "With OpenSSL 3 on a Unix system. The first three lines write down the key, the signature and the text that was signed; the last must print “Signature Verified Successfully”.",
  chain:
    "Then the chain: an entry’s hash is the SHA-256 of the canonical JSON (RFC 8785) of its members seq, slug, revision, kind, publishedAt, snapshotSha256 and previousHash; previousHash is the hash of the entry before, 64 zeros for the first; snapshotSha256 is that of the revision’s own JSON, byte for byte.",
  command: "Or let the program do all of it:",
} as const;
export type HeadWords = Sentences<typeof headWords>;
export const headWordsIn: ByLanguage<HeadWords> = { en: headWords, es: spanish };

/** The lines that check a head's signature without any program of ours (OpenSSL 3: `pkeyutl -rawin` takes Ed25519). */
export const checkByHand = (head: LogHead): string =>
  [
    `printf '%s\\n' '-----BEGIN PUBLIC KEY-----' '${head.publicKey}' '-----END PUBLIC KEY-----' > key.pem`,
    `printf '%s' '${head.signature}' | base64 -d > head.sig`,
    `printf '%s' '${signedText(head)}' > head.txt`,
    "openssl pkeyutl -verify -pubin -inkey key.pem -rawin -in head.txt -sigfile head.sig",
  ].join("\n");

/** The command that checks everything of a registry at an address. */
export const checkByProgram = (baseUrl: string, head: LogHead): string =>
  `npm run assay -- verify-log ${baseUrl} --head ${head.seq}:${head.hash} --key ${head.publicKey}`;
