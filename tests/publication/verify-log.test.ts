import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalJson, type Sha256 } from "@/lib/publication/canonical-json.ts";
import { hashLogEntry, nextLogEntry, noPreviousHash } from "@/lib/publication/log-entry.ts";
import type { LogEntry, Snapshot } from "@/lib/publication/snapshot.ts";
import { verifyLog } from "@/lib/publication/verify-log.ts";
import { sampleCorrection, sampleSnapshot, sampleSnapshotOf, sampleWithdrawal } from "../support/sample-snapshot.ts";

const sha256: Sha256 = (data) => createHash("sha256").update(data).digest("hex");

/** Five snapshots of two items, chained. */
function chain(): { entries: LogEntry[]; texts: string[] } {
  const other = { slug: "rattle", publishedAt: "2026-11-25T10:00:00+01:00" };
  const snapshots: Snapshot[] = [
    sampleSnapshot(),
    sampleSnapshotOf("not-detected", other),
    sampleCorrection(),
    sampleSnapshotOf("uneven", {
      ...other,
      revision: 2,
      kind: "update",
      reason: "more spots",
      publishedAt: "2026-11-27T10:00:00Z",
    }),
    sampleWithdrawal(),
  ];
  const entries: LogEntry[] = [];
  const texts: string[] = [];
  for (const snapshot of snapshots) {
    const { entry, text } = nextLogEntry(snapshot, entries.at(-1) ?? null, sha256);
    entries.push(entry);
    texts.push(text);
  }
  return { entries, texts };
}
const verify = (
  entries: readonly unknown[],
  texts: readonly (string | Uint8Array | undefined)[],
  head?: { seq: number; hash: string },
) => verifyLog({ entries, snapshot: (seq) => texts[seq - 1], ...(head ? { head } : {}) }, sha256);

describe("the entry", () => {
  it("is sealed by sha256 over the canonical JSON of its seven members", () => {
    const [first] = chain().entries;
    const { hash, ...fields } = first!;
    expect(fields.previousHash).toBe(noPreviousHash);
    expect(hash).toBe(sha256(canonicalJson(fields)));
    expect(hashLogEntry(first!, sha256)).toBe(hash); // its own hash does not enter
  });
  it("holds the SHA-256 of the stored text", () => {
    const { entries, texts } = chain();
    entries.forEach((entry, i) => {
      expect(entry.snapshotSha256).toBe(sha256(texts[i]!));
    });
  });
  it("does not go back in time", () => {
    const { entries } = chain();
    expect(() => nextLogEntry(sampleSnapshot(), entries[4]!, sha256)).toThrow(/before the entry/);
  });
});

describe("verifying", () => {
  it("finds nothing wrong with a whole log, and nothing with an empty one", () => {
    const { entries, texts } = chain();
    expect(verify(entries, texts, { seq: 5, hash: entries[4]!.hash })).toEqual([]);
    expect(verify([], [])).toEqual([]);
  });

  it("names an entry whose member was changed", () => {
    const { entries, texts } = chain();
    entries[2] = { ...entries[2]!, kind: "update" };
    expect(verify(entries, texts).map((f) => [f.code, f.seq, f.field])).toEqual([
      ["entry-fields-changed", 3, "kind"],
      ["snapshot-tells-otherwise", 3, "kind"],
    ]);
  });
  it.each([
    ["seq", 7],
    ["slug", "rattlf"],
    ["revision", 3],
    ["kind", "correction"],
    ["publishedAt", "2026-11-27T10:00:01Z"],
    ["snapshotSha256", "0".repeat(64)],
    ["previousHash", "1".repeat(64)],
  ] as const)("names the member: %s", (field, value) => {
    const { entries, texts } = chain();
    const was = String(entries[3]![field]);
    const faults = verify(entries.with(3, { ...entries[3]!, [field]: value } as LogEntry), texts);
    expect(faults.find((f) => f.code === "entry-fields-changed")).toMatchObject({ seq: 4, field, expected: was });
  });
  it("looks only at the texts it is asked to", () => {
    const { entries, texts } = chain();
    const only = (seq: number) =>
      verifyLog({ entries, snapshot: (n) => (n === 2 ? texts[1] : undefined), looksAt: (n) => n === seq }, sha256);
    expect(only(2)).toEqual([]);
    expect(only(3)).toMatchObject([{ code: "snapshot-missing", seq: 3 }]);
  });
  it("tells a changed hash from a changed member", () => {
    const { entries, texts } = chain();
    entries[2] = { ...entries[2]!, hash: "f".repeat(64) };
    expect(verify(entries, texts).map((f) => [f.code, f.seq])).toEqual([
      ["entry-hash-changed", 3],
      ["previous-hash-differs", 4],
    ]);
  });
  it("finds a rewritten entry that was sealed again, at its follower", () => {
    const { entries, texts } = chain();
    const forged = { ...entries[1]!, publishedAt: "2026-11-25T11:00:00+01:00" };
    entries[1] = { ...forged, hash: hashLogEntry(forged, sha256) };
    expect(verify(entries, texts).map((f) => [f.code, f.seq])).toEqual([
      ["snapshot-tells-otherwise", 2],
      ["previous-hash-differs", 3],
    ]);
  });
  it("finds a dropped, a swapped and a cut-off entry", () => {
    const { entries, texts } = chain();
    const head = { seq: 5, hash: entries[4]!.hash };
    const without = (list: readonly unknown[]) => list.filter((_, i) => i !== 1);
    expect(verify(without(entries), without(texts) as string[])[0]).toMatchObject({
      code: "entry-out-of-order",
      seq: 2,
    });
    expect(verify([entries[0], entries[2], entries[1], entries[3], entries[4]], texts).length).toBeGreaterThan(0);
    expect(verify(entries.slice(0, 4), texts.slice(0, 4), head)).toMatchObject([{ code: "head-differs", seq: 5 }]);
    expect(verify(entries.slice(0, 4), texts).map((f) => f.code)).toEqual(["snapshot-unlisted"]);
  });
  it("finds a missing snapshot and a text that is sealed but says something else", () => {
    const { entries, texts } = chain();
    expect(verify(entries, [texts[0], undefined, ...texts.slice(2)])).toMatchObject([
      { code: "snapshot-missing", seq: 2 },
    ]);
    const spaced = `${texts[0]} `;
    const fields = { ...entries[0]!, snapshotSha256: sha256(spaced) };
    const only = [{ ...fields, hash: hashLogEntry(fields, sha256) }];
    expect(verify(only, [spaced])).toMatchObject([{ code: "snapshot-not-canonical", seq: 1 }]);
  });
  it("names a changed member of the first entry, and of one behind an entry that cannot be read", () => {
    const { entries, texts } = chain();
    const first = verify(entries.with(0, { ...entries[0]!, kind: "update" }), texts);
    expect(first[0]).toMatchObject({ code: "entry-fields-changed", seq: 1, field: "kind", expected: "first" });
    const behind = [entries[0], "torn out", { ...entries[2]!, slug: "other" }, ...entries.slice(3)];
    expect(verify(behind, texts).map((f) => [f.code, f.seq, f.field])).toEqual([
      ["entry-malformed", 2, undefined],
      ["entry-fields-changed", 3, "slug"],
      ["snapshot-tells-otherwise", 3, "slug"],
    ]);
  });
  it("names an entry of which more than one member was changed by its hash", () => {
    const { entries, texts } = chain();
    const faults = verify(entries.with(3, { ...entries[3]!, slug: "other", revision: 9 }), texts);
    expect(faults[0]).toMatchObject({ code: "entry-fields-changed", seq: 4, field: "hash", found: entries[3]!.hash });
  });
  it("finds a sealed text that is no snapshot, and says what it is instead", () => {
    const sealed = (text: string) => {
      const { entries } = chain();
      const fields = { ...entries[0]!, snapshotSha256: sha256(text) };
      return verify([{ ...fields, hash: hashLogEntry(fields, sha256) }], [text]);
    };
    expect(sealed("no JSON")).toMatchObject([
      { code: "snapshot-unreadable", seq: 1, found: "no JSON", expected: "a snapshot" },
    ]);
    expect(sealed('{"format":7}')).toMatchObject([{ code: "snapshot-unreadable", found: "7", expected: "1" }]);
    const [shape] = sealed(JSON.stringify({ ...sampleSnapshot(), slug: 5 }));
    expect(shape).toMatchObject({ code: "snapshot-unreadable", field: "slug", expected: "a snapshot" });
  });
  it("a changed entry whose text cannot be read either is named by its hash", () => {
    const { entries, texts } = chain();
    const torn = verify(entries.with(1, { ...entries[1]!, kind: "update" }), texts.with(1, "torn"));
    expect(torn.map((f) => [f.code, f.seq, f.field])).toEqual([
      ["entry-fields-changed", 2, "hash"],
      ["snapshot-changed", 2, undefined],
    ]);
  });
  it("finds an entry with a member too many or of the wrong kind", () => {
    const { entries, texts } = chain();
    const bad = [{ ...entries[0]!, note: "x" }, { ...entries[1]!, revision: "1" }, ...entries.slice(2)];
    expect(verify(bad, texts).map((f) => [f.code, f.seq, f.field])).toEqual([
      ["entry-malformed", 1, "note"],
      ["entry-malformed", 2, "revision"],
    ]);
  });
});

/** Flips bit `bit` of a copy of the bytes. */
function flip(bytes: Uint8Array, bit: number): Uint8Array<ArrayBuffer> {
  const copy = Uint8Array.from(bytes);
  copy[bit >> 3]! ^= 1 << (bit & 7);
  return copy;
}
const parsed = (bytes: Uint8Array): unknown => {
  try {
    return JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    return undefined; // no JSON any more: the entry is unreadable, and that is what must be found
  }
};

describe("1,000 flipped bits, each found and named", () => {
  const { entries, texts } = chain();
  const snapshots = texts.map((text) => new TextEncoder().encode(text));
  const lines = entries.map((entry) => new TextEncoder().encode(canonicalJson(entry)));

  it("in any snapshot: 500 of them", () => {
    fc.assert(
      fc.property(fc.nat(4), fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }), (which, place) => {
        const bytes = snapshots[which]!;
        const flipped = flip(bytes, Math.floor(place * bytes.length * 8));
        const faults = verify(entries, snapshots.with(which, flipped));
        expect(faults.map((f) => [f.code, f.seq])).toEqual([["snapshot-changed", which + 1]]);
      }),
      { numRuns: 500 },
    );
  });

  it("in any log entry: 500 of them", () => {
    fc.assert(
      fc.property(fc.nat(4), fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }), (which, place) => {
        const bytes = lines[which]!;
        const flipped = flip(bytes, Math.floor(place * bytes.length * 8));
        const faults = verify(lines.with(which, flipped).map(parsed), snapshots);
        // The first fault names the entry itself; a follower may only add that its previousHash no longer agrees.
        expect(faults[0]?.seq).toBe(which + 1);
        for (const fault of faults.slice(1))
          expect(fault.seq === which + 1 || (fault.seq === which + 2 && fault.code === "previous-hash-differs")).toBe(
            true,
          );
      }),
      { numRuns: 500 },
    );
  });
});
