import { describe, expect, it } from "vitest";
import { limitName, verdictText, verdictWords } from "@/lib/wording/verdicts.ts";
import { type SampleState, samplePart } from "../support/sample-snapshot.ts";

const text = (state: SampleState): string => {
  const result = samplePart(state).results[0]!;
  return verdictText(result.decisions[0]!, result);
};

describe("each verdict carries its probability and its limit's name", () => {
  it.each<[SampleState, string]>([
    ["above", "above the limit (at least 99 chances in 100): US children's products, 100 mg/kg"],
    ["below", "below the limit (at least 99 chances in 100): US children's products, 100 mg/kg"],
    [
      "too-close",
      "too close to call (about 72 chances in 100 that it is above): US paint on children's goods, 90 mg/kg",
    ],
    [
      "not-detected",
      "not detected (below 5 mg/kg; at most 1 chance in 100 that it is above): EU cadmium in plastics, 100 mg/kg (only to compare; this limit does not apply here)",
    ],
  ])("%s", (state, expected) => {
    expect(text(state)).toBe(expected);
  });
  it("says which day's rules a verdict goes by where the two days differ, and nothing where they agree", () => {
    const result = samplePart("above").results[0]!;
    const decision = result.decisions[0]!;
    expect(verdictText({ ...decision, which: "test-day", day: "2018-06-01" }, result)).toBe(
      "above the limit (at least 99 chances in 100): US children's products, 100 mg/kg; by the rules of the day of the test, 1 June 2018",
    );
    expect(verdictText({ ...decision, which: "today", day: "2026-11-24" }, result)).toBe(
      "above the limit (at least 99 chances in 100): US children's products, 100 mg/kg; by the rules of 24 November 2026, after the test",
    );
    expect(verdictText(decision, result)).not.toContain("rules");
  });
  it("keeps the four words exactly", () => {
    expect(verdictWords).toMatchObject({
      above: "above the limit",
      below: "below the limit",
      "too-close": "too close to call",
      "not-detected": "not detected",
    });
  });
  it("names the place of a limit once", () => {
    const limit = { jurisdiction: "EU", title: "Cadmium in plastics", value: 100, unit: "mg/kg" };
    expect(limitName(limit)).toBe("EU, Cadmium in plastics, 100 mg/kg");
    expect(limitName({ ...limit, title: "EU cadmium in plastics", value: null })).toBe("EU cadmium in plastics");
    expect(limitName({ ...limit, title: "Cadmium in plastics, 100" })).toBe("EU, Cadmium in plastics, 100 mg/kg");
    expect(limitName({ ...limit, title: "Cadmium in plastics, 2100" })).toBe(
      "EU, Cadmium in plastics, 2100, 100 mg/kg",
    );
  });
});
