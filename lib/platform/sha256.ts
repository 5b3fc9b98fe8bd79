import crypto from "node:crypto";

/** SHA-256 as lower-case hex; the hash function that the pure rooms take as an argument. In one step where Node has it (20.12). */
export const sha256 = (data: string | Uint8Array): string =>
  crypto.hash?.("sha256", data, "hex") ?? crypto.createHash("sha256").update(data).digest("hex");
