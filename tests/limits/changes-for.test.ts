import { describe, expect, test } from "vitest";
import { changesFor } from "@/lib/limits/changes-for.ts";
import type { Subject } from "@/lib/limits/types.ts";
import { changeSentence, noChange } from "@/lib/wording/limit-changes.ts";

const pan: Subject = {
  category: "pot-or-pan",
  ageGroup: "adult",
  foodContact: true,
  mouthable: false,
  material: "brass",
  form: "bulk",
  accessible: true,
  madeOn: null,
};
const toy: Subject = {
  ...pan,
  category: "toy",
  ageGroup: "child-3-to-12",
  foodContact: false,
  material: "other-plastic",
};
const told = (
  subject: Subject,
  from: string,
  to: string,
  kind: "bulk-mass-fraction" | "leachate" = "bulk-mass-fraction",
) => changesFor(subject, kind, "Pb", from, to).map((c) => [c.before?.id ?? null, c.after?.id ?? null, c.on, c.applies]);

describe("limits that changed since the test (judgement over time, limits.md part D11)", () => {
  test("a brass pan tested in 2025 meets Washington's limit of 2026 (RCW 70A.565.020)", () => {
    expect(told(pan, "2025-06-01", "2026-11-24")).toContainEqual([null, "WA-COOK-90", "2026-01-01", "applies"]);
  });
  test("90 and then 10 is one change, on the day the new number begins", () => {
    expect(told(pan, "2026-06-01", "2028-01-01")).toContainEqual(["WA-COOK-90", "WA-COOK-10", "2028-01-01", "applies"]);
  });
  test("not before its first day, and no more once the test is later", () => {
    expect(told(pan, "2025-06-01", "2025-12-31").flat()).not.toContain("WA-COOK-90");
    expect(told(pan, "2026-01-01", "2026-11-24").flat()).not.toContain("WA-COOK-90");
  });
  test("the number that never took effect is no change", () => {
    expect(told(pan, "2024-01-01", "2027-01-01").flat()).not.toContain("WA-COOK-5");
  });
  test("a child's product tested in 2010: 300 to 100 on 14 August 2011 (CPSIA section 101)", () => {
    expect(told(toy, "2010-06-01", "2012-01-01")).toContainEqual(["CPSIA-300", "CPSIA-100", "2011-08-14", "applies"]);
  });
  test("limits on dust, water or packaging, and other kinds, are left out", () => {
    const ids = told(pan, "1990-01-01", "2040-01-01").flat();
    expect(ids).not.toContain("EU-PACK-PPWR");
    expect(ids).not.toContain("EPA-DLHS-FLOOR-2019");
    expect(told(toy, "2025-06-01", "2026-11-24").flat()).not.toContain("WA-COOK-90");
  });
});

test("the sentences of a change", () => {
  const [change] = changesFor(toy, "bulk-mass-fraction", "Pb", "2011-08-01", "2011-08-31");
  if (!change) throw new Error("no change");
  expect(changeSentence(change)).toMatch(/^On 14 August 2011: .*100 mg\/kg\. Before, it was 300 mg\/kg\.$/);
  expect(changeSentence({ ...change, before: null, applies: "for-reference" })).toMatch(
    /^New on 14 August 2011: .* \(only to compare\)\.$/,
  );
  expect(changeSentence({ ...change, after: null })).toMatch(/^Ended on 14 August 2011: .*300 mg\/kg\.$/);
  expect(noChange("2026-11-14", "2026-11-24")).toContain(
    "from the day of the test, 14 November 2026, to 24 November 2026",
  );
  expect(noChange("2026-11-24", "2026-11-24")).toBe("The test was on 24 November 2026. No limit has changed since.");
});
