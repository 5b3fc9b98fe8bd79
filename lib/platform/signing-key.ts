import {
  createPrivateKey,
  createPublicKey,
  generateKeyPairSync,
  type KeyObject,
  sign as signBytes,
  verify as verifyBytes,
} from "node:crypto";
import { keptFile } from "./secret-file.ts";

/** File of the registry's signing key in DATA_DIR/keys: Ed25519, PKCS #8 in PEM. */
export const signingKeyName = "log-signing-key.pem";

export type SigningKey = {
  /** SubjectPublicKeyInfo (RFC 8410) in base64: what is published. */
  publicKey: string;
  /** Ed25519 over the text's UTF-8 bytes, in base64. */
  sign: (text: string) => string;
};

/** The registry's key, made at first need. Its private half stays in that one file: it is never stored or sent. */
export function signingKey(dataDir: string): SigningKey {
  const pem = keptFile(dataDir, signingKeyName, () =>
    generateKeyPairSync("ed25519").privateKey.export({ type: "pkcs8", format: "pem" }).toString(),
  );
  const key = createPrivateKey(pem);
  if (key.asymmetricKeyType !== "ed25519") throw new Error(`${signingKeyName} holds no Ed25519 key`);
  return {
    publicKey: createPublicKey(key).export({ type: "spki", format: "der" }).toString("base64"),
    sign: (text) => signBytes(null, Buffer.from(text), key).toString("base64"),
  };
}

/** Whether a signature holds; false too for what is no Ed25519 key, or one written otherwise than its one encoding (RFC 8410). */
export function verifySignature(publicKey: string, text: string, signature: string): boolean {
  let key: KeyObject;
  try {
    const given = Buffer.from(publicKey, "base64");
    key = createPublicKey({ key: given, type: "spki", format: "der" });
    // OpenSSL passes over some bits of the frame; written out again they show.
    if (!key.export({ type: "spki", format: "der" }).equals(given)) return false;
  } catch {
    return false;
  }
  return (
    key.asymmetricKeyType === "ed25519" && verifyBytes(null, Buffer.from(text), key, Buffer.from(signature, "base64"))
  );
}
