import { describe, expect, it } from "vitest";
import { readingsAgree } from "@/lib/exports/readings-agree.ts";
import { readingsCsv } from "@/lib/exports/readings-csv.ts";
import { changedInputs, checkRevision } from "@/lib/publication/check-revision.ts";
import { signedText } from "@/lib/publication/log-head.ts";
import { readSnapshot } from "@/lib/publication/read-snapshot.ts";
import { recomputeSnapshot } from "@/lib/publication/recompute.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import type { ReconcileInput } from "@/lib/reconcile/types.ts";
import { chained, sampleHistory, sha256 } from "../support/sample-revisions.ts";
import { measuredParts, snapshotOfPart } from "../support/scenario-parts.ts";

const digest = async (data: string | Uint8Array) => sha256(data);

/** A part as published, after a walk through its stored text. */
function published(...given: Parameters<typeof snapshotOfPart>) {
  const [one] = chained([snapshotOfPart(...given)]);
  const read = readSnapshot(one!.text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { ...one!, snapshot: read.value };
}

describe("a stranger with the snapshot alone", () => {
  it.each(measuredParts)("makes every figure of $name again", async ({ inputs, part }) => {
    const { snapshot } = published(inputs, part);
    const made = recomputeSnapshot(snapshot);
    expect(made).toHaveLength(inputs.length);
    for (const one of made) {
      expect(one.differences).toEqual([]);
      expect(one.figures).toBeGreaterThan(20);
      expect(one.whole).toBe(true);
    }
    expect(await changedInputs(made, digest)).toEqual([]);
    expect(readingsAgree(readingsCsv(snapshot), snapshot)).toEqual({
      rows: inputs.reduce((n, input) => n + input.shots.length, 0),
      differing: [],
    });
  });

  it("makes it again with everything that an input can say", async () => {
    const { inputs, part } = measuredParts.find((one) => one.inputs.some((input) => input.shots.length > 4))!;
    const input = inputs.find((one) => one.shots.length > 4)!;
    const full: ReconcileInput = {
      ...input,
      shots: input.shots.map((shot, i) => ({
        ...shot,
        factor: 1.04,
        ...(i === 0 ? { setAside: { reason: "session-check-failed" } } : {}),
        arsenicValue: 12.5,
        leadValue: null,
      })),
      contributions: [
        { code: "recovery", relative: 0.02, nu: 9, type: "A", source: "session", shared: "session-1" },
        { code: "matrix-geometry", absolute: 3.25, type: "B", source: "policy" },
      ],
      sessionFlags: ["drift-in-session"],
      minimumSeconds: 600,
      calibratedRange: [1, 2],
      thicknessMm: 0.2,
      smallestDimensionMm: 2,
      windowMm: 8,
      infiniteThicknessMm: 4,
      policy: { version: "1b", unevenFrom: 0.4 },
    };
    const { snapshot } = published([full], part);
    const made = recomputeSnapshot(snapshot);
    expect(made[0]?.differences).toEqual([]);
    expect(await changedInputs(made, digest)).toEqual([]);
    expect(made[0]?.published.flags).toContain("drift-in-session");
    expect(made[0]?.published.method.policy).toBe("1b");
    expect(made[0]?.published.counts.setAside).toBe(1);
  });

  const limitOf = (part: Snapshot["specimens"][number]["parts"][number]) =>
    part.results.flatMap((r) => r.decisions).find((d) => d.value !== null && d.applies !== "other-quantity")!;
  const sample = () => {
    const { inputs, part } = measuredParts.find((one) => one.inputs.some((input) => input.shots.length > 4))!;
    return published(inputs, part).snapshot;
  };
  it.each<[string, (result: Snapshot["specimens"][number]["parts"][number]["results"][number]) => void, string]>([
    ["a digit of the printed value", (r) => (r.stated.value = "1"), "stated.value"],
    ["the value in its ninth digit", (r) => (r.value = (r.value ?? 1) * (1 + 1e-9)), "value"],
    ["a spot", (r) => (r.spots[0]!.value = 1), "spots.0.value"],
    ["a flag taken away", (r) => (r.flags = []), "flags"],
    ["a line of the budget", (r) => (r.budget[0]!.u *= 2), "budget.0.u"],
    ["the method's version", (r) => (r.method.version = "0"), "method.version"],
  ])("sees that %s was changed", (_, change, where) => {
    const snapshot = structuredClone(sample());
    const results = snapshot.specimens[0]!.parts[0]!.results;
    change(results.find((r) => r.state === "quantified" && r.flags.length > 0)!);
    const found = recomputeSnapshot(snapshot).flatMap((one) => one.differences.map((d) => d.where));
    expect(found).toContain(where);
  });
  it("sees that a verdict was changed", () => {
    const snapshot = structuredClone(sample());
    const result = snapshot.specimens[0]!.parts[0]!.results.find((r) =>
      r.decisions.some((d) => d.value !== null && d.applies !== "other-quantity"),
    )!;
    const decision = result.decisions.find((d) => d.value !== null && d.applies !== "other-quantity")!;
    decision.verdict = decision.verdict === "above" ? "below" : "above";
    const found = recomputeSnapshot(snapshot).flatMap((one) => one.differences.map((d) => d.where));
    expect(found).toEqual([`${decision.limitId}.verdict`]);
  });
  it("sees a reading that was changed without its result, and one whose file says otherwise", async () => {
    const snapshot = structuredClone(sample());
    const before = readingsCsv(snapshot);
    const reading = snapshot.specimens[0]!.parts[0]!.results[0]!.readings[0]!;
    reading.secondsCounted = (reading.secondsCounted ?? 0) + 1;
    expect(await changedInputs(recomputeSnapshot(snapshot), digest)).toHaveLength(1);
    expect(readingsAgree(before, snapshot).differing).toEqual([{ row: 1, column: "seconds_counted" }]);
    expect(readingsAgree(before.split("\r\n").slice(0, -2).join("\r\n"), snapshot).differing.at(-1)?.column).toBe(
      "row",
    );
  });
  it("says why where the method refuses the inputs", () => {
    const snapshot = structuredClone(sample());
    const [result] = snapshot.specimens[0]!.parts[0]!.results;
    for (const one of result!.inputs!.contributions) Object.assign(one, { relative: undefined, absolute: undefined });
    const [made] = recomputeSnapshot(snapshot);
    expect(made).toMatchObject({ recomputed: null, figures: 1 });
    expect(made!.differences).toEqual([{ where: "", published: result!.state, recomputed: "contribution" }]);
  });
  it("sees a whole that the figures do not bear", () => {
    const snapshot = structuredClone(sample());
    const result = snapshot.specimens[0]!.parts[0]!.results.find((r) => r.crossCheck === null)!;
    Object.assign(result, { crossCheck: { against: "none", differs: false } });
    const found = recomputeSnapshot(snapshot).flatMap((one) => one.differences.map((d) => [d.where, d.recomputed]));
    expect(found).toEqual([
      ["crossCheck.against", undefined],
      ["crossCheck.differs", undefined],
    ]);
  });
  it("judges a limit of a sum anew from every result of the part", () => {
    const snapshot = structuredClone(sample());
    const part = snapshot.specimens[0]!.parts[0]!;
    const result = part.results.find((r) => r.value !== null)!;
    const held = (low: number) => {
      const limitId = "sum";
      const decision = { ...limitOf(part), limitId, element: `${result.element}+Hg`, value: low };
      result.decisions = [{ ...decision, verdict: "above", probabilityAbove: 1 }];
      return recomputeSnapshot(snapshot).flatMap((one) => one.differences.map((d) => d.where));
    };
    expect(held(result.value! / 1000)).toEqual([]);
    expect(held(result.value! * 1000)).toContain("sum.verdict");
  });
  it("without the inputs, as the first snapshots were published, makes the figures from the budget's sizes", () => {
    const snapshot = structuredClone(sample());
    for (const result of snapshot.specimens[0]!.parts[0]!.results) delete result.inputs;
    for (const one of recomputeSnapshot(snapshot)) {
      expect([one.whole, one.inputsText]).toEqual([false, null]);
      expect(one.differences).toEqual([]);
    }
  });
});

describe("one revision against the log", () => {
  const history = sampleHistory();
  const bytesOf = (text: string) => new TextEncoder().encode(text);
  const entries = history.map((one) => one.entry);
  const [, , third] = history;
  const head = {
    seq: 5,
    hash: entries[4]!.hash,
    signedAt: "2026-11-29T09:00:00Z",
    publicKey: `MCowBQYDK2VwAyEA${"A".repeat(43)}=`,
    signature: `${"A".repeat(86)}==`,
  };
  const check = (change: Partial<Parameters<typeof checkRevision>[0]>, holds: boolean | null = true) =>
    checkRevision(
      { bytes: bytesOf(third!.text), slug: "bluebell-mug", revision: 2, log: { entries, head }, ...change },
      digest,
      async (_, text) => (holds === null ? null : holds && text === signedText(head)),
    );
  it("agrees", async () => {
    expect(await check({})).toMatchObject({ entry: { seq: 3 }, entries: 5, faults: [], signature: "agrees" });
    expect(await check({}, null)).toMatchObject({ faults: [], signature: "unable" });
    expect(await check({ log: { entries } })).toMatchObject({ faults: [], signature: "none" });
  });
  it("names what does not", async () => {
    const changed = bytesOf(third!.text.replace("bluebell", "bluebelk"));
    expect((await check({ bytes: changed })).faults).toMatchObject([{ code: "snapshot-changed", seq: 3 }]);
    expect((await check({}, false)).faults).toMatchObject([{ code: "head-signature-wrong" }]);
    const other = entries.with(1, { ...entries[1]!, slug: "x" });
    expect((await check({ log: { entries: other, head } })).faults[0]).toMatchObject({ seq: 2 });
    expect((await check({ log: { entries: entries.slice(0, 4), head } })).faults).toMatchObject([
      { code: "head-differs" },
    ]);
    const moved = entries.with(1, { ...entries[1]!, seq: 9 });
    expect((await check({ log: { entries: moved, head } })).faults.map((f) => [f.code, f.seq, f.field])).toEqual([
      ["entry-out-of-order", 2, "seq"],
      ["entry-fields-changed", 2, "hash"],
    ]);
    expect((await check({ revision: 9 })).entry).toBeNull();
    expect((await check({ log: { entries: [null], head: null } })).faults).toMatchObject([{ code: "entry-malformed" }]);
  });
});
