import { describe, expect, it } from "vitest";
import type { ApprovalGate } from "@/lib/publication/approval.ts";
import { setAsideSentence } from "@/lib/wording/bench.ts";
import { checkFigure } from "@/lib/wording/check-charts.ts";
import { componentText, precisionSentences } from "@/lib/wording/consistency.ts";
import { coverageTableIn, coverageTableOf } from "@/lib/wording/coverage-table.ts";
import { dealSentence } from "@/lib/wording/photos.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { readingListWords } from "@/lib/wording/reading-list.ts";
import { betweenSpotsSentences, withinSpotText } from "@/lib/wording/repeats.ts";
import {
  actText,
  claimWords,
  gateSentence,
  planText,
  queueStanding,
  repeatsCount,
  reviewDoneWords,
  reviewStanding,
  whyNoDecision,
} from "@/lib/wording/review.ts";
import { sheetNoteSentences, sheetWords } from "@/lib/wording/spreadsheets.ts";
import { tableWords } from "@/lib/wording/table-sheets.ts";
import { understoodMoment } from "@/lib/wording/typed-words.ts";
import { samplePart } from "../support/sample-snapshot.ts";

describe("a review in words", () => {
  it("says whether it was of what stands here", () => {
    expect(reviewStanding(true)).toBe("exactly what stands here");
    expect(reviewStanding(false)).toBe("an earlier state; it no longer counts");
  });
  it("says why somebody cannot decide, by the reason where there is one", () => {
    expect(whyNoDecision({ yes: true })).toBeNull();
    expect(whyNoDecision({ yes: false, code: "own-readings" })).toMatch(/^You made this item/);
    expect(whyNoDecision({ yes: false, code: "not-submitted" })).toMatch(/^This item is not waiting/);
    expect(whyNoDecision({ yes: false, code: "role" })).toMatch(/^Your role lets you read/);
  });
  it("says who has taken it up, and what the queue offers", () => {
    expect([claimWords(null, false), claimWords("Ana", true), claimWords("Ana", false)]).toEqual([
      ...["free", "you have it", "Ana has it"],
    ]);
    const standing = (code: string | null) => queueStanding(code === null ? { yes: true } : { yes: false, code });
    expect([standing(null), standing("own-readings"), standing("role")]).toEqual(["to review", "your own", "to read"]);
  });
  it.each([
    [[], "no result yet"],
    [["agree"], "1 result: 1 agrees"],
    [["agree", "agree", "differ"], "3 results: 2 agree, 1 does not"],
    [["differ", "differ", "cannot-say"], "3 results: 2 do not, 1 cannot be said"],
  ] as const)("counts repeats: %o", (verdicts, text) => {
    expect(repeatsCount(verdicts)).toBe(text);
  });
  it("thanks for each decision, and says nothing to what is none", () => {
    expect(reviewDoneWords("approved")).toMatch(/^Approved/);
    expect(reviewDoneWords("submitted")).toMatch(/one more person/);
    for (const none of [undefined, "", "toString"]) expect(reviewDoneWords(none)).toBeNull();
  });
  it.each<[Partial<ApprovalGate>, RegExp]>([
    [{ state: "enough", by: ["Ana"] }, /^Approved by Ana, .* name the reviewer\.$/],
    [{ state: "enough", by: ["Ana", "Max"] }, /^Approved by Ana and Max, .* name both\.$/],
    [{ state: "enough" }, /^It can be published\.$/],
    [{ state: "unreviewed", needed: 0 }, /^This registry lets/],
    [{ state: "unreviewed", needed: 1 }, /^Nobody else is in this registry/],
    [{ state: "moved" }, /^It was approved once/],
    [{ state: "lacking", needed: 1 }, /^Another person/],
    [{ state: "lacking", needed: 2 }, /approvals of two people/],
    [{ state: "lacking", needed: 2, given: 1, by: ["Ana"] }, /Ana has approved exactly this; one more/],
  ])("how far the approvals have come: %o", (gate, text) => {
    expect(gateSentence({ state: "lacking", given: 0, needed: 1, by: [], ...gate })).toMatch(text);
  });
  it("a plan with and without its chance of being decided", () => {
    const plan = { kind: "more-spots" as const, amount: 3, effort: 3, expectedU: 21.4, chance: 0.83 };
    const text = (chance: number | null) => planText({ ...plan, chance } as Parameters<typeof planText>[0], "mg/kg");
    expect(text(null)).toBe("3 more spots: an expanded uncertainty of about 21.4 mg/kg");
    expect(text(0.83)).toMatch(/^3 more spots: .* mg\/kg; it would then be clear of the limit in .*83/);
  });
  it("an act by its words, one of a newer version by its code", () => {
    expect(actText("publish-item")).toBe("published it");
    expect(actText("weigh-part-again")).toBe("weigh part again");
  });
  it("how many have approved, in the refusal to publish", () => {
    const needs = (found: string, allowed: string) => problemSentence({ code: "needs-approval", found, allowed });
    expect(needs("1", "2")).toMatch(/; one has so far\.$/);
    expect(needs("0", "2")).toMatch(/; nobody has so far\.$/);
    expect(needs("0", "1")).toMatch(/^Another person/);
    expect(problemSentence({ code: "already-withdrawn", found: "withdrawn" })).toMatch(/^This item has/);
    expect(problemSentence({ code: "already-withdrawn", found: "blue-mug" })).toMatch(/^“blue-mug” has/);
    expect(problemSentence({ code: "already-withdrawn" })).toMatch(/^This item has/);
  });
});

describe("repeats in words", () => {
  const repeats = { between: null, leaveOneOut: null, unit: "mg/kg" } as Parameters<typeof betweenSpotsSentences>[0];
  it("say nothing between spots where there is nothing to say", () => {
    expect(betweenSpotsSentences(repeats)).toEqual([]);
    expect(betweenSpotsSentences({ ...repeats, leaveOneOut: [40, 44] })).toEqual([
      "With any one spot left out, the mean lies from 40 to 44 mg/kg.",
    ]);
    const between = { p: 0.2, tau: 3, relative: 0.07, df: 4 };
    expect(betweenSpotsSentences({ ...repeats, between })).toHaveLength(1);
  });
  it("of a spot without a test are its state alone", () => {
    const spot = {
      spot: "a",
      shots: ["1"],
      value: 4,
      u: 1,
      below: null,
      p: null,
      birge: null,
      state: "one-reading" as const,
    };
    expect(withinSpotText(spot)).toBe("read once");
  });
});

describe("scatter in words", () => {
  it("no share of nothing", () => {
    const components = [
      { source: "session", sd: 0, share: null },
      { source: "repeat", sd: 0, share: null },
    ];
    const text = componentText("session", { status: "ok", components } as never, "mg/kg");
    expect(text).toBe("A standard deviation of 0 mg/kg from session to session; 0 mg/kg from one reading to the next.");
  });
  it("no line of an extreme that has no test", () => {
    const precision = {
      ...{ status: "ok", precision: { sr: 1, sL: 2, sR: 3 }, limits: { repeatability: 3, reproducibility: 8 } },
      ...{ cochran: null, grubbs: null },
    };
    const extreme = { session: "Monday", c: 0.9, g: 1.4, critical: 0.8, p: 0.01 };
    const lines = (more: object) => precisionSentences({ ...precision, ...more } as never, "mg/kg").slice(2);
    expect(lines({})).toEqual([]);
    expect(lines({ cochran: extreme })).toEqual(["Widest scatter: Monday (Cochran’s C 0.9, critical 0.8, p = 0.01)."]);
    expect(lines({ cochran: { ...extreme, session: null }, grubbs: { ...extreme, g: null } })).toEqual([]);
    expect(lines({ grubbs: { ...extreme, p: null } })).toEqual([]);
  });
  it("a check that was not detected has no average on the chart of a standard", () => {
    const at = (day: number, recovery: number | null) => ({
      ...{ takenAt: `2026-03-0${day}T09:00:00Z`, recovery, within: recovery === null ? null : true },
    });
    const { rows } = checkFigure({ standard: "Tile", element: "Pb", mode: null }, [
      at(1, 0.98),
      at(2, null),
      at(3, 1.01),
    ]);
    expect(rows.map((row) => [row.recovery, row.average === "–"])).toEqual([
      ["0.98", false],
      ["not detected", true],
      ["1.01", false],
    ]);
  });
});

describe("the table of honest intervals for other cells than those measured", () => {
  const cell = {
    ...{ shape: "even" as const, spots: 3, spread: 0, u: 0.05, below: 0, trials: 2000, stated: 1 },
    ...{ covered: 0.95, unsafe: 0.02, medianWidth: 0.3, wrongBelow: 0.01 },
  };
  it("all good, none at the edge", () => {
    const table = coverageTableOf([cell]);
    expect(table).toMatchObject({ shortTitle: null, short: [] });
    expect(table.made).toMatch(/npm run coverage\. $/);
    expect(table.groups[0]).toMatchObject({ title: expect.stringMatching(/: 1 kind of part, all meet the aims$/) });
    expect(table.groups[0]!.lines[0]).toMatchObject({ spots: "3", spread: "0 %", error: "5 %", parts: "2,000" });
  });
  it("one that falls short is named with what it misses; one at the edge is counted", () => {
    const short = { ...cell, shape: "gamma" as const, spread: 0.4, covered: 0.8, wrongBelow: 0.3 };
    const edge = { ...cell, spots: 4, covered: 0.9395, trials: 4000, medianWidth: 120 };
    const table = coverageTableOf([cell, short, edge]);
    expect(table.shortTitle).toBe("Kinds of part that fall short");
    expect(table.short).toEqual([
      "Uneven, many places low (gamma), 3 spots, spread 40 %, counting error 5 %, 0 % not seen: the range held the truth 80 times in 100; “below” was wrong 30 times in 100 (2000 parts).",
    ]);
    expect(table.made).toMatch(/ 1 of the kinds that meet the aims were measured just on the wrong side/);
    expect(table.groups[3]!.title).toMatch(/: 1 kind of part, 1 of them short$/);
    expect(table.groups[3]!.lines[0]!.cells[0]).toMatch(/^Falls short: .* width 0\.30$/);
    expect(table.groups[0]!.lines[1]!.cells[0]).toMatch(/^At the edge: .* width over 100$/);
    expect(table.lead).toMatch(/^We made up 8,000 parts .* 2,000 to 4,000 for each of 3 kinds .* 2 meet our aims\.$/);
  });
  it("the page shows the cells that were measured", () => {
    expect(coverageTableIn.en.groups.flatMap((group) => group.lines).length).toBeGreaterThan(100);
  });
});

describe("words of the bench", () => {
  it("what was set aside is held beside what was not", () => {
    const [result] = samplePart("above").results;
    expect(setAsideSentence({ ...result!, withSetAside: null })).toBeNull();
    expect(setAsideSentence({ ...result!, withSetAside: { value: 310, interval: [280, 340] } as never })).toMatch(
      /^Without the readings set aside: .*\. With them: 310 mg\/kg \(280 to 340 mg\/kg\)\.$/,
    );
    expect(setAsideSentence({ ...result!, withSetAside: { value: 310, interval: null } as never })).toMatch(
      /With them: 310 mg\/kg\.$/,
    );
    expect(setAsideSentence({ ...result!, withSetAside: { value: null, interval: null } as never })).toMatch(
      /With them: no single value\.$/,
    );
  });
  it.each([
    [0, 3, /^No reading is on this part/],
    [4, 0, /^No spot of this part/],
    [4, 3, /^4 readings and 3 spots: they do not go evenly/],
    [6, 3, /^6 readings and 3 spots: 2 shots on each/],
    [1, 1, /^1 reading and 1 spot: 1 shot on each/],
  ])("%i readings dealt to %i spots", (readings, spots, text) => {
    expect(dealSentence(readings, spots)).toMatch(text);
  });
  it("one and several, of names, sheets, rows and cells", () => {
    expect(readingListWords.newItems(1)).toBe("Make items out of this name");
    expect(readingListWords.newItems(3)).toBe("Make items out of these 3 names");
    expect(sheetNoteSentences["hidden-rows"](1)).toMatch(/^1 row is hidden/);
    expect(sheetNoteSentences.formulas(2)).toMatch(/^2 cells hold a formula/);
    expect([sheetWords.rows(1), sheetWords.rows(7)]).toEqual(["1 row", "7 rows"]);
    expect([tableWords.heading("  "), tableWords.heading(" mug ")]).toEqual(["New sheet", "mug"]);
  });
  it("a zone that nobody knows", () => {
    expect(understoodMoment({ date: "2026-05-03", time: "10:00", zone: "Moon/Far_Side" }, null)).toBe(
      "“Moon/Far Side” is no time zone we know.",
    );
  });
  it("tests that stand in the way, and a file that was undone", () => {
    const tests = (found?: string) => problemSentence({ code: "object-has-tests", ...(found ? { found } : {}) });
    expect(tests("1")).toMatch(/^There is 1 wipe or laboratory result of this object/);
    expect(tests("3")).toMatch(/^There are 3 wipes/);
    expect(tests()).toMatch(/^There are some wipes/);
    const undone = { code: "already-imported", found: "undone", where: { file: "shelf.csv" } };
    expect(problemSentence(undone)).toMatch(/^The file “shelf.csv” was loaded and undone\. Bring it back/);
  });
});
