import type { Problem } from "../quantity/problem.ts";

export const largestCertificate = 20_000_000;
/** The first bytes of what a certificate can be: PDF, PNG, JPEG, WebP. */
const signatures = [
  [0x25, 0x50, 0x44, 0x46],
  [0x89, 0x50, 0x4e, 0x47],
  [0xff, 0xd8, 0xff],
  [0x52, 0x49, 0x46, 0x46],
];

/** What keeps a file from being taken as a certificate: nothing in it, more than 20 MB, neither a PDF nor a picture by its first bytes. */
export function certificateProblem(name: string, bytes: Uint8Array): Problem | null {
  const where = { file: name };
  if (bytes.length === 0) return { code: "file-missing" };
  if (bytes.length > largestCertificate)
    return { code: "too-large", where, found: `${(bytes.length / 1e6).toFixed(1)} MB`, allowed: "20 MB" };
  if (!signatures.some((signature) => signature.every((byte, at) => bytes[at] === byte)))
    return { code: "certificate-kind", where, found: name, allowed: "PDF, PNG, JPEG, WebP" };
  return null;
}
