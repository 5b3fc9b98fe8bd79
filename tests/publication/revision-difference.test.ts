import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalJson } from "@/lib/publication/canonical-json.ts";
import { revisionDifference } from "@/lib/publication/revision-difference.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { sampleCorrection, sampleSnapshot } from "../support/sample-snapshot.ts";

const changed = (change: (snapshot: Snapshot) => void) => {
  const after = structuredClone(sampleSnapshot());
  change(after);
  return revisionDifference(sampleSnapshot(), after);
};

describe("the difference of two revisions", () => {
  it("is empty where only the frame differs", () => {
    expect(revisionDifference(sampleSnapshot(), sampleCorrection())).toEqual([]);
  });
  it("names a plain field with both its values", () => {
    expect(
      changed((s) => {
        s.item.name = "Bluebell mug";
      }),
    ).toEqual([
      {
        kind: "changed",
        place: [{ field: "item" }, { field: "name" }],
        before: "Bluebell child's mug",
        after: "Bluebell mug",
      },
    ]);
  });
  it("walks into lists by what a person calls the member", () => {
    expect(
      changed((s) => {
        s.specimens[0]!.parts[0]!.results[0]!.readings[2]!.setAside = { reason: "A chip." };
      }),
    ).toEqual([
      {
        kind: "added",
        place: [
          { field: "specimens", label: "mug 1" },
          { field: "parts", label: "glaze, outside" },
          { field: "results", label: "Pb" },
          { field: "readings", label: "107" },
          { field: "setAside" },
        ],
      },
    ]);
  });
  it("names a reading by its row or its id where it carries no number", () => {
    const labels = (bare: { number: null; row: number | null }) => {
      const before = structuredClone(sampleSnapshot());
      Object.assign(before.specimens[0]!.parts[0]!.results[0]!.readings[0]!, bare);
      const after = structuredClone(before);
      after.specimens[0]!.parts[0]!.results[0]!.readings[0]!.mode = "another";
      return revisionDifference(before, after).map((change) => change.place.at(-2)!.label);
    };
    const { row, id } = sampleSnapshot().specimens[0]!.parts[0]!.results[0]!.readings[0]!;
    expect(labels({ number: null, row: row! })).toEqual([String(row)]);
    expect(labels({ number: null, row: null })).toEqual([id]);
  });
  it("a word that one of them does not have yet, and a whole that is there no more", () => {
    const [place] = [[{ field: "interests" }]];
    expect(changed((s) => Object.assign(s, { interests: "My sister works there." }))).toEqual([
      { kind: "changed", place, before: null, after: "My sister works there." },
    ]);
    const before = structuredClone(sampleSnapshot());
    before.specimens[0]!.parts[0]!.results[0]!.readings[0]!.setAside = { reason: "A chip." };
    expect(revisionDifference(before, sampleSnapshot()).map((change) => [change.kind, change.place.at(-1)])).toEqual([
      ["removed", { field: "setAside" }],
    ]);
  });
  it("stretches of doubt by the check before them, or the beginning", () => {
    const session = (inDoubt: { after: string | null; before: string | null }[]) =>
      ({
        ...sampleSnapshot(),
        sessions: [{ id: "s", label: "morning", fitness: [{ element: "Pb", mode: null, inDoubt }] }],
      }) as never;
    const added = revisionDifference(
      session([]),
      session([
        { after: null, before: "2026-05-02T10:00:00Z" },
        { after: "2026-05-02T11:00:00Z", before: null },
      ]),
    );
    expect(added.map((change) => [change.kind, change.place.at(-1)!.label])).toEqual([
      ["added", "the beginning"],
      ["added", "2026-05-02T11:00:00Z"],
    ]);
  });
  it("tells an added and a removed part, and lists none of their figures", () => {
    expect(
      changed((s) => {
        s.specimens[0]!.parts.splice(1, 1);
      }),
    ).toMatchObject([{ kind: "removed", place: [{ label: "mug 1" }, { field: "parts", label: "painted rim band" }] }]);
  });
  it("does not mind the order of members", () => {
    expect(
      changed((s) => {
        s.specimens[0]!.parts.reverse();
      }),
    ).toEqual([]);
  });
  it("compares lists of plain values whole", () => {
    expect(
      changed((s) => {
        s.item.aliases = ["bluebell cup"];
      }),
    ).toMatchObject([{ before: ["bluebell cup", "tasse à clochettes"], after: ["bluebell cup"] }]);
  });
});

/** Every leaf of the snapshot outside the frame, as a path. */
function leaves(value: unknown, path: (string | number)[] = []): (string | number)[][] {
  if (typeof value !== "object" || value === null) return [path];
  return Object.entries(value).flatMap(([key, inner]) =>
    leaves(inner, [...path, Array.isArray(value) ? Number(key) : key]),
  );
}

it("any leaf that is changed alone gives a difference, and none is given without a change", () => {
  const frame = new Set(["format", "revision", "kind", "reason", "publishedAt"]);
  const paths = leaves(sampleSnapshot()).filter(([top]) => !frame.has(String(top)));
  fc.assert(
    fc.property(fc.constantFrom(...paths), (path) => {
      const after = structuredClone(sampleSnapshot());
      let holder = after as unknown as Record<string | number, unknown>;
      for (const key of path.slice(0, -1)) holder = holder[key] as Record<string | number, unknown>;
      const last = path.at(-1)!;
      holder[last] =
        holder[last] === null ? "something" : typeof holder[last] === "number" ? Number(holder[last]) + 1 : null;
      expect(canonicalJson(after)).not.toBe(canonicalJson(sampleSnapshot()));
      expect(revisionDifference(sampleSnapshot(), after).length).toBeGreaterThan(0);
      expect(revisionDifference(after, after)).toEqual([]);
    }),
    { numRuns: 400 },
  );
});
