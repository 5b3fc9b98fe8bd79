import canonicalize from "canonicalize";
import { DomainError } from "../quantity/domain-error.ts";

/** SHA-256 of the UTF-8 bytes of a text (or of the bytes given), as 64 lower-case hex digits. Always an argument. */
export type Sha256 = (data: string | Uint8Array) => string;

/** U+D800…U+DFFF standing alone: I-JSON (RFC 7493 §2.1) has no such text, and UTF-8 cannot carry it. */
const loneSurrogate = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;

/** Refuses what the canonical form would otherwise drop or change in silence. `path` is a JSON Pointer (RFC 6901). */
function refuseNonJson(value: unknown, path: string): void {
  if (value === null || typeof value === "boolean") return;
  if (typeof value === "string") {
    if (loneSurrogate.test(value)) throw new DomainError("lone-surrogate", `not Unicode text at ${path || "/"}`, value);
    return;
  }
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new DomainError("not-finite", `not a finite number at ${path || "/"}`, value);
    return;
  }
  if (Array.isArray(value)) {
    for (let i = 0; i < value.length; i += 1) refuseNonJson(value[i], `${path}/${i}`);
    return;
  }
  const plain = typeof value === "object" ? Object.getPrototypeOf(value) : undefined;
  if (plain === Object.prototype || plain === null) {
    for (const [key, inner] of Object.entries(value as object)) {
      refuseNonJson(key, path);
      refuseNonJson(inner, `${path}/${key.replaceAll("~", "~0").replaceAll("/", "~1")}`);
    }
    return;
  }
  throw new DomainError("not-json", `no JSON value at ${path || "/"}: ${typeof value}`, String(value));
}

/**
 * The one text of a JSON value: members sorted by UTF-16 code units, no white space, numbers as ECMAScript prints them.
 *
 * Source: RFC 8785 (JSON Canonicalization Scheme). Refused with a DomainError, rather than dropped or changed:
 * NaN and the infinities (`not-finite`), text that is not Unicode (`lone-surrogate`), and undefined, dates, maps and
 * other things that are no JSON (`not-json`).
 *
 * @example canonicalJson({ b: 1e30, a: "€" })   // '{"a":"€","b":1e+30}'
 */
export function canonicalJson(value: unknown): string {
  refuseNonJson(value, "");
  return canonicalize(value) as string;
}
