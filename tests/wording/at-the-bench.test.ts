import { describe, expect, it } from "vitest";
import type { SpotRepeats } from "@/lib/consistency/repeats.ts";
import { detailText } from "@/lib/wording/acts.ts";
import { asWritten, handFileName } from "@/lib/wording/bench.ts";
import { isDerived } from "@/lib/wording/changes.ts";
import { lengthTyped, markName, marksNote, photoWords, shareTyped } from "@/lib/wording/photos.ts";
import { planEffort, planName, unseenSettles } from "@/lib/wording/plans.ts";
import { pText, spotValueText, withinSpotText } from "@/lib/wording/repeats.ts";
import { comparisonSentences, differenceText } from "@/lib/wording/retests.ts";
import { boundPlanText, gateSentence, reviewDoneWords } from "@/lib/wording/review.ts";
import { requestEvent, requestPage } from "@/lib/wording/test-requests.ts";

describe("a reading as its file wrote it", () => {
  const none = { belowDetection: false, value: null, error: null, detectionLimit: null };
  it.each([
    [{ ...none, value: { text: "412" }, error: { text: "36" } }, "412 ± 36"],
    [{ ...none, value: { text: "412" } }, "412"],
    [none, ""],
    [{ ...none, belowDetection: true, detectionLimit: { text: "< 12" } }, "< 12"],
    [{ ...none, belowDetection: true }, "not detected"],
  ])("%j → %s", (result, text) => expect(asWritten(result)).toBe(text));
  it("and a file of readings written by hand goes by the clock of its zone", () => {
    const now = new Date("2026-11-24T23:05:00Z");
    expect(handFileName(now, "UTC")).toBe("by hand 2026-11-24 23-05.tsv");
    expect(handFileName(now, "Asia/Kolkata")).toBe("by hand 2026-11-25 04-35.tsv");
  });
});

describe("plans", () => {
  it.each([
    ["more-spots", 3, 3, "3 more spots", "about 3 shots"],
    ["longer-counts", 4, 20, "counts 4 times as long", "about 20 shots"],
    ["closer-standard", 1, 4, "a check standard nearer the value", "getting one, and reading it"],
    ["laboratory", 1, 0, "a laboratory", "sending it in"],
  ] as const)("%s", (kind, amount, effort, name, work) => {
    expect(planName({ kind, amount })).toBe(name);
    expect(planEffort({ kind, effort })).toBe(work);
  });
});

describe("plans for a part that shows nothing", () => {
  const plan = { kind: "more-spots", amount: 5, effort: 5, bound: 18.4, settles: true } as const;
  it("say the bound and whether it is enough", () => {
    expect(boundPlanText(plan, "mg/kg")).toBe(
      "5 more spots: if again nothing is seen, the part holds less than about 18.4 mg/kg, which is below the limit",
    );
    expect(boundPlanText({ ...plan, settles: false }, "mg/kg")).toContain("18.4 mg/kg, still not below the limit");
    expect([true, false, null].map((settles) => unseenSettles({ settles }))).toEqual([
      "if nothing is seen",
      "no",
      "ask for it",
    ]);
  });
  it("send to a laboratory where nothing else is enough", () => {
    expect(boundPlanText({ ...plan, kind: "laboratory", bound: null, settles: null }, "mg/kg")).toBe(
      "a laboratory, whose detection limit lies well below the limit",
    );
  });
});

describe("places on a photo", () => {
  it.each([
    ["34,5", 0.345],
    ["0", 0],
    ["100", 1],
    ["100.1", null],
    ["-1", null],
    ["left", null],
  ])("%s %% is a share of %s", (text, share) => expect(shareTyped(text)).toBe(share));
  it("a length is a number above 0", () => {
    expect([lengthTyped("20"), lengthTyped("0"), lengthTyped("long")]).toEqual([20, null, null]);
  });
  it("marks are named with their part where it is known", () => {
    expect(markName({ number: 1, spot: "a" }, "glaze")).toBe("1: glaze, spot a");
    expect(markName({ number: 1, spot: "a" }, undefined)).toBe("1: spot a");
    expect([photoWords.spotsOn(0), photoWords.spotsOn(1), photoWords.spotsOn(2)]).toEqual([
      "no spot marked",
      "1 spot marked",
      "2 spots marked",
    ]);
  });
  it("how large the circles are is said only as far as it is known", () => {
    expect(marksNote([], [8])).toBeNull();
    expect(marksNote([{ share: null }], [8])).toBe("The circles show where, not how large a spot was.");
    expect(marksNote([{ share: 0.1 }], [8, null, 3])).toContain("window, 3 and 8 mm across, by");
    expect(marksNote([{ share: 0.1 }, { share: null }], [8])).toContain("8 mm across where that is known, by");
  });
});

describe("repeats of a spot", () => {
  const spot = {
    spot: "a",
    shots: [],
    value: 412.3,
    u: 18,
    below: null,
    p: 0.27,
    birge: 1.1,
    state: "agree",
  } as SpotRepeats;
  it("say how they spread, where that can be said", () => {
    expect(withinSpotText(spot)).toBe("agree: spread 1.1 times what their errors explain (p = 0.27)");
    expect(withinSpotText({ ...spot, p: null, state: "one-reading" })).toBe("read once");
    expect(withinSpotText({ ...spot, birge: null, state: "cannot-say" })).toBe("cannot be said");
    expect(pText(0.0009)).toBe("p under 0.001");
  });
  it("state the spot's own value, its bound, or neither", () => {
    expect(spotValueText(spot, "mg/kg")).toBe("412 mg/kg, u 18");
    expect(spotValueText({ ...spot, u: null }, "mg/kg")).toBe("412.3 mg/kg");
    expect(spotValueText({ ...spot, value: null, below: 12 }, "mg/kg")).toBe("below 12 mg/kg");
    expect(spotValueText({ ...spot, value: null }, "mg/kg")).toBe("not detected");
  });
});

describe("two results held beside each other", () => {
  const compared = {
    difference: -15,
    u: 10,
    nuEff: null,
    zeta: -1.5,
    en: -0.77,
    p: 0.13,
    verdict: "agree" as const,
    leftOut: ["calibration"],
  };
  it("say the difference with its sign, the scores, and what both share", () => {
    expect([-15, 0, 15].map((d) => differenceText(d, "mg/kg"))).toEqual(["−15 mg/kg", "0 mg/kg", "+15 mg/kg"]);
    const said = comparisonSentences(compared, "mg/kg");
    expect(said).toHaveLength(4);
    expect(said[1]).toContain("−15 mg/kg, with a standard uncertainty of 10 mg/kg");
    expect(said[2]).toMatch(/^E_n .*0\.77 .*zeta .*1\.5; .*p = 0\.13/);
  });
  it("leave out what cannot be said", () => {
    expect(comparisonSentences({ ...compared, en: null, zeta: null, p: null, leftOut: [] }, "mg/kg")).toHaveLength(2);
    expect(comparisonSentences(null, "mg/kg")).toHaveLength(1);
  });
});

describe("how far the approvals have come", () => {
  it.each([
    [{ state: "enough", given: 1, needed: 1, by: ["Ada"] }, /^Approved by Ada, .* name the reviewer\.$/],
    [{ state: "enough", given: 2, needed: 2, by: ["Ada", "Ben"] }, /^Approved by Ada and Ben, .* name both\.$/],
    [{ state: "enough", given: 0, needed: 0, by: [] }, /^It can be published\.$/],
    [{ state: "unreviewed", given: 0, needed: 0, by: [] }, /^This registry lets/],
    [{ state: "unreviewed", given: 0, needed: 1, by: [] }, /^Nobody else/],
    [{ state: "moved", given: 0, needed: 1, by: [] }, /^It was approved once/],
    [{ state: "lacking", given: 1, needed: 2, by: ["Ada"] }, /Ada has approved exactly this; one more/],
    [{ state: "lacking", given: 0, needed: 2, by: [] }, /approvals of two people/],
    [{ state: "lacking", given: 0, needed: 1, by: [] }, /^Another person has to approve/],
  ] as const)("%j", (gate, sentence) => expect(gateSentence({ ...gate, by: [...gate.by] })).toMatch(sentence));
  it("a decision that is none says nothing", () => {
    expect(reviewDoneWords("approved")).toMatch(/^Approved\./);
    expect(reviewDoneWords("constructor")).toBeNull();
    expect(reviewDoneWords(undefined)).toBeNull();
  });
});

describe("requests, acts and changes", () => {
  it("a request tells what became of it", () => {
    expect(requestEvent("blue mug", "tied", true)).toBe("Tested: “blue mug”. Read the result.");
    expect(requestEvent("blue mug", "tied", false)).toBe(`“blue mug”: ${requestPage.notPublished}`);
    expect(requestEvent("blue mug", "closed", false)).toBe(`“blue mug”: ${requestPage.states.closed}`);
    expect([requestPage.asked(1), requestPage.asked(2)]).toEqual([
      "Asked for once so far.",
      "Asked for 2 times so far.",
    ]);
  });
  it("an act's particulars leave out what is empty and say yes and no", () => {
    expect(detailText({ kind: "correction", reason: "", count: null, undone: true, kept: false })).toMatch(
      /^[^:]+: correction; [^:]+: yes; [^:]+: no$/,
    );
  });
  it("digits that follow from another change are told from changes themselves", () => {
    const change = (...fields: string[]) => ({ kind: "added" as const, place: fields.map((field) => ({ field })) });
    for (const field of ["inputsDigest", "crossCheck", "budget", "scatter"])
      expect(isDerived(change("results", field))).toBe(true);
    expect(isDerived(change("inputs", "readings"))).toBe(true);
    expect(isDerived(change("inputs", "contributions"))).toBe(false);
    expect(isDerived(change("inputs", "policy"))).toBe(false);
    expect(isDerived(change("name"))).toBe(false);
  });
});
