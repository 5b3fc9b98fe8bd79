import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { repeatsOf } from "@/lib/consistency/repeats.ts";
import { reconcile } from "@/lib/reconcile/reconcile.ts";
import type { ShotInput } from "@/lib/reconcile/types.ts";
import { betweenSpotsSentences, repeatHeadlines, withinSpotText } from "@/lib/wording/repeats.ts";

// All figures below are invented for the test; the p values are checked against the closed form of χ² with one degree of freedom.
const hash = (text: string) => createHash("sha256").update(text).digest("hex");
const written = (value: number) => ({ text: String(value), value, decimals: 0 });
const shot = (id: string, spot: string | null, value: number | null, error: number | null = 10): ShotInput => ({
  id,
  spot,
  quantity: "bulk-mass-fraction",
  mode: null,
  unit: "mg/kg",
  belowDetection: value === null,
  value: value === null ? null : written(value),
  error: value === null || error === null ? null : written(error),
  k: value === null || error === null ? null : 1,
  detectionLimit: value === null ? written(12) : null,
  secondsCounted: 60,
  takenAt: null,
  setAside: null,
});
const repeats = (shots: ShotInput[]) =>
  repeatsOf(reconcile({ element: "Pb", quantity: "bulk-mass-fraction", form: "bulk", shots, contributions: [] }, hash));

describe("repeatsOf", () => {
  it("agrees where spots and the readings of each spot agree", () => {
    const found = repeats([shot("1", "a", 400), shot("2", "a", 410), shot("3", "b", 402), shot("4", "b", 396)]);
    expect(found.verdict).toBe("agree");
    expect(found.reasons).toEqual([]);
    expect(found.spots.map((s) => s.state)).toEqual(["agree", "agree"]);
    expect(repeatHeadlines[found.verdict]).toBe("The repeats agree.");
    expect(betweenSpotsSentences(found)).toHaveLength(2);
  });

  it("gives the p of the Q test within a spot", () => {
    // Two readings d apart, each with u: Q = d²/(2u²) = 20²/200 = 2, and P(χ²(1) ≥ 2) = erfc(1) = 0.15729920705.
    const [spot] = repeats([shot("1", "a", 400), shot("2", "a", 420)]).spots;
    expect(spot?.p).toBeCloseTo(0.15729920705028513, 10);
    expect(withinSpotText(spot!)).toContain("p = 0.16");
  });

  it("tells readings of one place that differ from spots that differ", () => {
    const missed = repeats([shot("1", "a", 400), shot("2", "a", 100), shot("3", "b", 400), shot("4", "b", 405)]);
    expect(missed.verdict).toBe("differ");
    expect(missed.reasons).toContain("within-spots");
    const uneven = repeats([shot("1", "a", 400), shot("2", "b", 600), shot("3", "c", 800)]);
    expect(uneven.verdict).toBe("differ");
    expect(uneven.reasons).toContain("between-spots");
    expect(uneven.reasons).not.toContain("within-spots");
  });

  it("cannot say of readings of one spot whose errors nobody states", () => {
    const found = repeats([shot("1", "a", 400, null), shot("2", "a", 410, null), shot("3", "b", 405, null)]);
    expect(found.spots.map((s) => [s.p, s.state])).toEqual([
      [null, "cannot-say"],
      [null, "one-reading"],
    ]);
  });
  it("names a spot that stands apart from the others", () => {
    const even = [400, 404, 396, 402, 398, 401].map((value, i) => shot(String(i), `s${i}`, value, 3));
    const found = repeats([...even, shot("x", "chip", 900, 3)]);
    expect(found.candidates).toEqual(["x"]);
    expect(found.verdict).toBe("differ");
    expect(found.reasons).toContain("stands-apart");
  });
  it("says that it cannot say", () => {
    expect(repeats([]).reasons).toEqual(["no-readings"]);
    expect(repeats([shot("1", "a", 400)]).reasons).toEqual(["one-reading"]);
    expect(repeats([shot("1", "a", 20), shot("2", "b", null)]).reasons).toEqual(["mixed-detection"]);
    expect(repeats([shot("1", "a", 400, null), shot("2", "b", 500, null)]).verdict).toBe("cannot-say");
  });

  it("agrees where nothing was detected anywhere", () => {
    expect(repeats([shot("1", "a", null), shot("2", "b", null)])).toMatchObject({
      verdict: "agree",
      reasons: ["none-detected"],
    });
  });

  it("names what an agreement does not cover", () => {
    expect(repeats([shot("1", "a", 400), shot("2", "a", 405)]).reasons).toEqual(["one-spot"]);
    expect(repeats([shot("1", "a", 400), shot("2", "b", 405)]).reasons).toEqual(["no-second-shots"]);
  });
});
