import { describe, expect, it } from "vitest";
import type { Decision } from "@/lib/limits/types.ts";
import {
  buildSnapshot,
  type WorkingItem,
  type WorkingReading,
  type WorkingResult,
  withdrawnSnapshot,
} from "@/lib/publication/build-snapshot.ts";
import type { Snapshot, SnapshotResult } from "@/lib/publication/snapshot.ts";
import type { ReconcileResult } from "@/lib/reconcile/types.ts";
import { sampleSnapshot, sampleWithdrawal } from "../support/sample-snapshot.ts";

/** The sample turned back into the working records it could have been built from. */
function workingItem(snapshot: Snapshot = sampleSnapshot()): WorkingItem {
  const { format: _format, specimens, ...frame } = snapshot;
  return {
    ...frame,
    specimens: specimens.map((s) => ({
      ...s,
      parts: s.parts.map((p) => ({ ...p, results: p.results.map(workingResult) })),
    })),
  };
}
function workingResult({ readings, decisions, ...reconciled }: SnapshotResult): WorkingResult {
  return {
    reconciled: reconciled as ReconcileResult,
    decisions: decisions as Decision[],
    readings: readings.map(({ belowDetection, value, error, k, detectionLimit, unit, ...reading }): WorkingReading => {
      const { element, quantity } = reconciled as ReconcileResult;
      return { ...reading, result: { element, quantity, unit, belowDetection, value, error, k, detectionLimit } };
    }),
  };
}
const firstResult = (item: WorkingItem): WorkingResult => item.specimens[0]!.parts[0]!.results[0]!;
const codes = (item: WorkingItem): string[] => {
  const outcome = buildSnapshot(item);
  return outcome.ok ? [] : outcome.problems.map((p) => p.code);
};

describe("building", () => {
  it("copies every figure and adds none", () => {
    expect(buildSnapshot(workingItem())).toEqual({ ok: true, value: sampleSnapshot() });
  });
  it.each<[string, (item: WorkingItem) => void]>([
    [
      "nothing-to-publish",
      (item) => {
        item.specimens = [];
      },
    ],
    [
      "part-without-result",
      (item) => {
        item.specimens[0]!.parts[1]!.results = [];
      },
    ],
    [
      "slug-form",
      (item) => {
        item.slug = "Bluebell Mug";
      },
    ],
    [
      "revision-kind",
      (item) => {
        item.revision = 2;
      },
    ],
    [
      "reason-missing",
      (item) => {
        item.revision = 2;
        item.kind = "correction";
        item.reason = "  ";
      },
    ],
    [
      "reading-unknown",
      (item) => {
        firstResult(item).readings.shift();
      },
    ],
    [
      "reading-of-another-kind",
      (item) => {
        firstResult(item).readings[0]!.result.element = "As";
      },
    ],
    [
      "file-not-listed",
      (item) => {
        item.files = [{ name: "other.csv", sha256: "00".repeat(32), rows: 1 }];
      },
    ],
    [
      "snapshot-shape",
      (item) => {
        item.testedOn = "yesterday";
      },
    ],
    [
      "snapshot-shape",
      (item) => {
        firstResult(item).reconciled.value = Number.NaN;
      },
    ],
  ])("refuses with %s", (code, spoil) => {
    const item = structuredClone(workingItem());
    spoil(item);
    expect(new Set(codes(item))).toEqual(new Set([code]));
  });
  it("refuses a result without readings", () => {
    const item = structuredClone(workingItem());
    firstResult(item).readings = [];
    expect(codes(item)).toContain("no-readings");
  });
});

describe("withdrawing", () => {
  const withdrawal = { reason: "The wrong check standard was used.", publishedAt: "2026-11-29T08:15:00+01:00" };
  it("keeps title and reason, and no figure", () => {
    const outcome = withdrawnSnapshot(sampleSnapshot(), withdrawal);
    expect(outcome).toMatchObject({
      ok: true,
      value: {
        revision: 2,
        kind: "withdrawal",
        item: { name: "Bluebell child's mug" },
        specimens: [],
        files: [],
        ...withdrawal,
      },
    });
  });
  it("wants a reason, and happens once", () => {
    expect(withdrawnSnapshot(sampleSnapshot(), { ...withdrawal, reason: " " })).toMatchObject({
      problems: [{ code: "reason-missing" }],
    });
    expect(withdrawnSnapshot(sampleWithdrawal(), withdrawal)).toMatchObject({
      problems: [{ code: "already-withdrawn" }],
    });
  });
});
