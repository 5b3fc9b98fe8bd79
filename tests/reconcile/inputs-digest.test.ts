import canonicalize from "canonicalize";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareNames } from "@/lib/reconcile/canonical-order.ts";
import { canonicalText, inputsDigest } from "@/lib/reconcile/inputs-digest.ts";
import { defaultPolicy } from "@/lib/reconcile/types.ts";
import { inputOf, resultOf, seen, sha256 } from "./shots.ts";

describe("the digest of the inputs", () => {
  const shots = [seen(400, 5, { id: "1" }), seen(405, 5, { id: "2" }), seen(395, 5, { id: "10" })];
  it("does not depend on the order of the shots", () => {
    expect(resultOf(shots).inputsDigest).toBe(resultOf([...shots].reverse()).inputsDigest);
  });
  it("changes with a digit, a unit, a reason and the policy", () => {
    const [first, ...rest] = shots as [(typeof shots)[0], ...typeof shots];
    const digests = [
      resultOf(shots),
      resultOf([seen(401, 5, { id: "1" }), ...rest]),
      resultOf([{ ...first, unit: "ppm" }, ...rest]),
      resultOf([{ ...first, setAside: { reason: "slipped" } }, ...rest]),
      resultOf(shots, { policy: { unevenFrom: 0.2 } }),
    ].map((result) => result.inputsDigest);
    expect(new Set(digests).size).toBe(digests.length);
  });
  it("is the hash of canonical JSON that names the method's version", () => {
    const text = inputsDigest(inputOf(shots), defaultPolicy, "2", (json) => json);
    expect(JSON.parse(text)).toMatchObject({ version: "2", policy: { version: "2" }, element: "Pb" });
    expect(resultOf(shots).inputsDigest).toBe(sha256(text));
    expect(text.startsWith('{"contributions":[],"element":"Pb"')).toBe(true);
  });
  it("writes the same canonical JSON as the canonicalize package", () => {
    const input = {
      ...inputOf(shots),
      note: '±\u20ac"\\\n\u0007',
      numbers: [1e21, 1e-7, 0.1, -0, 333333333.3333333],
      none: null,
    };
    expect(canonicalText({ ...input, left: undefined })).toBe(canonicalize(input));
  });
  it("writes whatever JSON holds as that package does, also in lists of alike objects", () => {
    const field = fc.oneof(
      fc.constantFrom(null, true, "ppm", 30, 0.1),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
    );
    const alike = fc.array(fc.record({ value: field, unit: field, "": field, own: fc.record({ unit: field }) }));
    fc.assert(
      fc.property(fc.oneof(alike, fc.jsonValue()), (value) => {
        expect(canonicalText(value)).toBe(canonicalize(value));
      }),
      { numRuns: 1000, seed: 20261128 },
    );
  });
  it("orders names the same on every machine", () => {
    expect(["b", "10", "2", "a", "B", "02"].sort(compareNames)).toEqual(["02", "2", "10", "B", "a", "b"]);
  });
});
