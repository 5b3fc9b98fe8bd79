import { describe, expect, it } from "vitest";
import { snapshotSchema } from "@/lib/publication/snapshot.ts";
import {
  sampleCorrection,
  sampleSnapshot,
  sampleSnapshotOf,
  sampleStates,
  sampleWithdrawal,
} from "../support/sample-snapshot.ts";

describe("the invented sample", () => {
  it.each([sampleSnapshot(), sampleCorrection(), sampleWithdrawal(), ...sampleStates.map((s) => sampleSnapshotOf(s))])(
    "keeps to the snapshot's schema ($kind, revision $revision)",
    (snapshot) => {
      expect(snapshotSchema.parse(snapshot)).toEqual(snapshot);
    },
  );

  it("names every shot it reconciles among its readings", () => {
    for (const part of sampleSnapshot().specimens.flatMap((s) => s.parts))
      for (const result of part.results) {
        const ids = new Set(result.readings.map((r) => r.id));
        for (const shot of result.spots.flatMap((s) => s.shots)) expect(ids.has(shot)).toBe(true);
      }
  });
});
