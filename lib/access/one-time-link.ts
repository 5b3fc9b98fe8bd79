import { randomBytes } from "node:crypto";
import { sha256 } from "../platform/sha256.ts";

/**
 * A link that works once, for so many days from `createdAt` on: the token that stands in it, to be told once, and what is kept of it. 24
 * random bytes are far beyond guessing.
 */
export function oneTimeLink(
  createdAt: Date,
  days: number,
): { token: string; kept: { tokenSha256: string; createdAt: Date; expiresAt: Date } } {
  const token = randomBytes(24).toString("base64url");
  const expiresAt = new Date(createdAt.getTime() + days * 86_400_000);
  return { token, kept: { tokenSha256: sha256(token), createdAt, expiresAt } };
}
