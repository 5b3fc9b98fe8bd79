import { createHash } from "node:crypto";

/** SHA-256 as lower-case hex; the hash function that the pure rooms take as an argument. */
export const sha256 = (data: string | Uint8Array): string => createHash("sha256").update(data).digest("hex");
