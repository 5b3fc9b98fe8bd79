import canonicalize from "canonicalize";
import { compareNames } from "./canonical-order.ts";
import type { Policy, ReconcileInput } from "./types.ts";

const sortedBy = <T>(list: readonly T[], name: (entry: T) => string): T[] =>
  list
    .map((entry) => ({ entry, name: name(entry), text: canonicalize(entry) ?? "" }))
    .sort((a, b) => compareNames(a.name, b.name) || compareNames(a.text, b.text))
    .map(({ entry }) => entry);

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
  return hash(canonicalize(canonical) ?? "");
}
