import { compareNames } from "./canonical-order.ts";
import type { Policy, ReconcileInput } from "./types.ts";

/**
 * Canonical JSON of plain data (RFC 8785): keys in code-unit order, numbers and strings as ECMAScript writes them, which is what
 * the RFC asks for. The built-in writer does the rest, so this stays fast enough for every result; a test holds it to
 * the `canonicalize` package. Good for objects without integer-like keys, which the inputs here never have.
 */
export const canonicalText = (value: unknown): string => JSON.stringify(withSortedKeys(value));

function withSortedKeys(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withSortedKeys);
  if (typeof value !== "object" || value === null) return value;
  const source = value as Record<string, unknown>;
  const sorted: Record<string, unknown> = {};
  for (const key of Object.keys(source).sort()) sorted[key] = withSortedKeys(source[key]);
  return sorted;
}

const sortedBy = <T>(list: readonly T[], name: (entry: T) => string): T[] =>
  [...list].sort((a, b) => compareNames(name(a), name(b)) || compareNames(canonicalText(a), canonicalText(b)));

/**
 * The hash of everything a result was made from: the method's version, the policy in force, and the input as given (units
 * and written numbers as they came), in the canonical JSON of RFC 8785. Shots are sorted by id and contributions by code
 * first, so the order in which they were handed over does not matter.
 */
export function inputsDigest(
  input: ReconcileInput,
  policy: Policy,
  version: string,
  hash: (text: string) => string,
): string {
  const canonical = {
    ...input,
    policy,
    version,
    shots: sortedBy(input.shots, (shot) => shot.id),
    contributions: sortedBy(input.contributions, (contribution) => contribution.code),
  };
  return hash(canonicalText(canonical));
}
