import { expect, it } from "vitest";
import { leadingDecision, openNonDetect, resultsByWeight, verdictOf } from "@/lib/publication/leading-decision.ts";
import { samplePart, sampleSnapshot } from "../support/sample-snapshot.ts";

it("a limit of another quantity never leads", () => {
  const [result] = samplePart("above").results;
  expect(leadingDecision(result!)?.limitId).toBe("us-cpsia-lead-100");
  expect(
    leadingDecision({ ...result!, decisions: result!.decisions.filter((d) => d.applies === "other-quantity") }),
  ).toBeNull();
});
it("a limit that applies leads over one for reference, however pressing", () => {
  const [result] = samplePart("below").results;
  const [own] = result!.decisions;
  const reference = {
    ...own!,
    limitId: "stricter",
    value: 1,
    verdict: "above" as const,
    applies: "for-reference" as const,
  };
  expect(leadingDecision({ ...result!, decisions: [reference, own!] })?.limitId).toBe(own!.limitId);
});
it("an element that is none of the gravest comes after them", () => {
  const [result] = samplePart("above").results;
  const [specimen] = sampleSnapshot().specimens;
  const part = { ...samplePart("above"), results: [{ ...result!, element: "Ni" }, result!] };
  const ordered = resultsByWeight({ ...sampleSnapshot(), specimens: [{ ...specimen!, parts: [part] }] });
  expect(ordered.map((p) => p.result.element)).toEqual(["Pb", "Ni"]);
});
it("of equal verdicts the lower limit leads", () => {
  const [result] = samplePart("above").results;
  const [own] = result!.decisions;
  const lower = { ...own!, limitId: "lower", value: 90 };
  expect(leadingDecision({ ...result!, decisions: [own!, lower] })?.limitId).toBe("lower");
});
it("the mug leads with its glaze, then what is too close by its share of the limit", () => {
  const ordered = resultsByWeight(sampleSnapshot());
  expect(ordered.map((p) => [p.part.id, verdictOf(p)])).toEqual([
    ["p-glaze-out", "above"],
    ["p-decal", "too-close"],
    ["p-rim", "too-close"],
    ["p-handle", "below"],
    ["p-flower", "below"],
    ["p-body", "not-detected"],
  ]);
});
it("lead far above a limit held beside it comes before a non-detect below a limit that applies", () => {
  const lead = samplePart("above");
  const clean = samplePart("not-detected");
  const reference = lead.results.map((result) => ({
    ...result,
    decisions: result.decisions.map((d) => ({ ...d, applies: "for-reference" as const })),
  }));
  const [specimen] = sampleSnapshot().specimens;
  const parts = [clean, { ...lead, results: reference }];
  const [first] = resultsByWeight({ ...sampleSnapshot(), specimens: [{ ...specimen!, parts }] });
  expect(first?.part.id).toBe(lead.id);
});
it("what a part that shows nothing leaves open is the lowest limit of its own that its bound does not pass", () => {
  const [result] = samplePart("not-detected").results;
  const [own] = result!.decisions;
  const decision = (limitId: string, value: number | null, more = {}) => {
    return { ...own!, limitId, value, verdict: "not-detected" as const, applies: "applies" as const, ...more };
  };
  const open = (...decisions: (typeof own & object)[]) => openNonDetect({ ...result!, decisions })?.limitId ?? null;
  const passed = decision("passed", 1, { verdict: "below" });
  const sum = decision("sum", 2, { element: "Cd+Pb" });
  const reference = decision("reference", 3, { applies: "for-reference" });
  expect(
    open(
      passed,
      sum,
      reference,
      decision("high", 90),
      decision("low", 40),
      decision("higher", 95),
      decision("words", null),
    ),
  ).toBe("low");
  expect(open(reference)).toBe("reference");
  expect(open(passed, reference)).toBeNull();
  expect(open()).toBeNull();
});
