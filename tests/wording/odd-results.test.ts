import { describe, expect, it } from "vitest";
import { type AmountsState, parseAmounts } from "@/lib/amounts/amounts-form.ts";
import { listLimits } from "@/lib/limits/list-limits.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import type { SnapshotOtherTest } from "@/lib/publication/snapshot.ts";
import { failedCheckReason } from "@/lib/reconcile/part-inputs.ts";
import {
  amountSentence,
  areaNote,
  ballRow,
  ballSource,
  coatConversionSentence,
  comparatorArea,
  enlargedLabel,
  enteredFacts,
  halvedText,
  ladderSentence,
  loadingSentence,
  neededSentence,
  onAreaSentence,
  referenceDays,
  referenceYears,
  shortName,
} from "@/lib/wording/amount-figures.ts";
import { dailyText, dominatesSentence, estimateText, massText, referenceText } from "@/lib/wording/amounts.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { contributionSource } from "@/lib/wording/budget.ts";
import { howGotText, madeText, otherLimits, reviewText, searchPage, whatToDo, yesNo } from "@/lib/wording/catalogue.ts";
import { writtenIn } from "@/lib/wording/changes.ts";
import { elementName, elementTitle } from "@/lib/wording/elements.ts";
import { alsoAs, dateInZone, resultText, revisionText, significant } from "@/lib/wording/formats.ts";
import { screeningSentence } from "@/lib/wording/guard-bands.ts";
import { labelOf } from "@/lib/wording/labels.ts";
import { changeSentence, changesLead, noChange } from "@/lib/wording/limit-changes.ts";
import { timelineTitle } from "@/lib/wording/limit-timeline.ts";
import { pathIn } from "@/lib/wording/localized-paths.ts";
import { methodSteps } from "@/lib/wording/models.ts";
import { otherTestText, otherTestTitle } from "@/lib/wording/other-tests.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { remadeText, reportLines } from "@/lib/wording/recompute.ts";
import { changeCells } from "@/lib/wording/revisions.ts";
import { checkRows, withoutUncertainty } from "@/lib/wording/sessions.ts";
import { reportRows, shareWords } from "@/lib/wording/share.ts";
import { samplePart, sampleSnapshot, sampleWithdrawal } from "../support/sample-snapshot.ts";

describe("amounts", () => {
  it("are told in the unit a person would choose, up to kilograms", () => {
    expect([0.05, 5, 5_000, 5_000_000].map((mg) => massText(mg))).toEqual(["50 µg", "5 mg", "5 g", "5 kg"]);
  });
  it("the largest doubt is not always most of it", () => {
    const mass = (share: number) => ({ dominates: "content", shares: [{ name: "content", share }] }) as never;
    expect(dominatesSentence(mass(0.93))).toMatch(/^Most of the doubt comes from the content/);
    expect(dominatesSentence(mass(0.4))).toMatch(/^The largest part of the doubt comes from the content/);
  });
  it("an amount in grams is told in the unit a person would choose", () => {
    const exact = (value: number) => ({
      value,
      unit: "g" as const,
      u: 0,
      interval: [value, value],
      shortest: [value, value],
      atMost: false,
    });
    expect([0.5, 12, 2_000].map((g) => estimateText(exact(g) as never))).toEqual(["500 mg", "12 g", "2 kg"]);
  });
  it("the calculator's own words in English", () => {
    const exact = (value: number, unit: string) =>
      ({ value, unit, u: 0, interval: [value, value], atMost: false }) as never;
    const [area, loading, mass] = [exact(12, "ft²"), exact(40, "µg/ft²"), exact(0.48, "mg")];
    expect(ladderSentence(area)).toMatch(/^Spread evenly over 12 ft²\. Half the amount/);
    expect(neededSentence({ area, loading, mass })).toBe("To bring 12 ft² to 40 µg/ft² it takes 0.48 mg.");
    expect(onAreaSentence({ area, loading } as never)).toBe("Spread evenly over 12 ft², it would come to 40 µg/ft².");
    expect(amountSentence(mass, "Pb")).toBe("The amount entered: 0.48 mg of lead.");
    expect([0, 1, 2, 5].map((n) => halvedText(n))).toEqual(["all of it", "once", "twice", "5 times"]);
    expect([areaNote(false), areaNote(true)]).toEqual([
      "All to one scale.",
      expect.stringMatching(/^All to one scale\. The dashed/),
    ]);
    expect([enlargedLabel(40), ballRow("Pb"), ballSource(11.34)]).toEqual([
      "the same ball, 40 times as large",
      "a ball of lead",
      "worked out from its weight and the density of the metal, 11.34 g/cm³",
    ]);
    const room = { name: "a room (small)", area: 100 } as never;
    expect([shortName(room), comparatorArea(room)]).toEqual(["room", "100 ft² (9.29 m²)"]);
    expect(loadingSentence("40 µg/ft²")).toMatch(/^Drawn at one published loading of dust: 40 µg\/ft²/);
    const daily = { benchmark: { value: 2.2 }, days: { value: 79.54, unit: "days" } } as never;
    expect(dailyText(daily)).toBe("79.5 days 2.2 µg/day");
  });
  it("a published loading with its days", () => {
    const held = { value: 40, surface: "floor", from: "2001-03-06", until: "2020-01-05", complianceFrom: null };
    const now = { ...held, from: "2025-01-13", until: null, complianceFrom: "2026-01-12" };
    expect([held, now].map((one) => referenceYears(one as never))).toEqual(["2001 to 2020", "since 2025, due 2026"]);
    expect(referenceDays(held as never)).toBe("from 6 March 2001 to 5 January 2020");
    expect(referenceDays(now as never)).toBe("since 13 January 2025; asked for from 12 January 2026");
    expect(referenceText(held as never)).toMatch(/^40 µg\/ft², .*, from 6 March 2001 to 5 January 2020$/);
  });
  it("facts entered stand with their unit, or without where they have none", () => {
    const empty = parseAmounts({});
    const state = { ...empty, from: "amount", amount: "5", amountUnit: "mg", day: "2026-05-03" } as AmountsState;
    const facts = enteredFacts(state, { material: (id) => id, dimensions: [], dimensionKind: () => "length" });
    expect(facts.map((fact) => fact.value)).toEqual(expect.arrayContaining(["5 mg", "2026-05-03"]));
  });
  it("a coat's loading gives its content, and its content a loading", () => {
    const exact = (value: number, unit: string) => ({ value, unit, u: 0, interval: [value, value], atMost: false });
    const coat = {
      ...{ loading: exact(1, "mg/cm²"), content: exact(38_500, "mg/kg"), thicknessUm: 100 },
      density: { min: 1.2, max: 4 },
    };
    const said = (from: "loading" | "content") => coatConversionSentence({ ...coat, from } as never, "Pb");
    expect(said("loading")).toMatch(/^1 mg\/cm² of lead, .* is 38.500 mg\/kg\.$/);
    expect(said("content")).toMatch(/^38.500 mg\/kg of lead, .* is 1 mg\/cm²\.$/);
  });
  it("more than a thin coat can hold is told of the coat", () => {
    const over = (field: string) => problemSentence({ code: "content-over-100", where: { field }, found: "120 %" });
    expect(over("coatThickness")).toMatch(/^So much cannot lie in so thin a coat/);
    expect(over("content")).toMatch(/cannot be over 100 %/);
  });
});

describe("an item that was taken back", () => {
  it("says why, with an end to the sentence, or not at all where nothing was written", () => {
    const told = (reason: string | null) => itemAnswer({ ...sampleWithdrawal(), reason }).sentences;
    expect(told("The wrong mug")).toContain("Here is why: The wrong mug.");
    expect(told("The wrong mug!")).toContain("Here is why: The wrong mug!");
    expect(told(null)).toHaveLength(2);
  });
});

describe("an item of several results", () => {
  it("counts those that no limit can be held beside by their own words", () => {
    const snapshot = structuredClone(sampleSnapshot());
    const parts = snapshot.specimens[0]!.parts;
    for (const part of parts.slice(1))
      for (const result of part.results) Object.assign(result, { decisions: [], state: "quantified" });
    expect(itemAnswer(snapshot).sentences.join(" ")).toContain(`${parts.length - 1} with no limit to compare`);
  });
});

describe("words of readers' pages", () => {
  it("with a question and without", () => {
    expect([searchPage.title(""), searchPage.title("mug")]).toEqual(["All tested items", "Results for “mug”"]);
    expect([searchPage.count(1, ""), searchPage.count(2, "mug")]).toEqual([
      ...["1 tested item", "2 items found, best match first"],
    ]);
    expect([searchPage.nothingText(""), searchPage.nothingText("mug")]).toEqual([
      ...["No item fits these filters.", "We have no result for “mug”."],
    ]);
  });
  it("what to do where nothing can be said is what to do where it cannot be said", () => {
    expect(whatToDo(null, "first")).toEqual(whatToDo("cannot-say", "first"));
    expect(whatToDo("above", "withdrawal")).not.toEqual(whatToDo("above", "first"));
  });
  it("a review by whom and when, as far as that is known", () => {
    const review = { reviewed: true, reviewers: ["Ana", "Max"], reviewedOn: "2026-05-03", inputsDigest: null };
    expect(reviewText(review)).toBe("Checked by Ana, Max on 3 May 2026");
    expect(reviewText({ ...review, reviewers: [], reviewedOn: null })).toBe("Checked by a second person");
    expect(reviewText({ ...review, reviewed: false })).toMatch(/^Not independently reviewed/);
  });
  it("how an object came, when it was made, and what is left out where nobody knows", () => {
    const [specimen] = sampleSnapshot().specimens;
    expect(howGotText({ ...specimen!, howGot: "a gift", gotOn: null })).toBe("a gift");
    expect(howGotText({ ...specimen!, howGot: "a gift", gotOn: "2026-05-03" })).toBe("a gift, on 3 May 2026");
    expect([madeText(null), madeText(undefined)]).toEqual(["when is not known", "when is not known"]);
    expect(madeText("2011-08")).toMatch(/August 2011/);
  });
  it("small words: yes and no, and limits that are not on the strip", () => {
    expect([yesNo(true), yesNo(false)]).toEqual(["yes", "no"]);
    expect([otherLimits(0), otherLimits(1), otherLimits(3)]).toEqual([
      ...["", ", and 1 more limit of another kind", ", and 3 more limits of another kind"],
    ]);
  });
  it("several elements, other units, days of a zone, codes without a label", () => {
    expect([elementName("Pb"), elementName("Pb+Cd"), elementName("Pb+Xx")]).toEqual([
      ...["lead", "lead and cadmium", "lead and Xx"],
    ]);
    expect(alsoAs("412", 412, "µg/mL")).toBeNull();
    expect(alsoAs("412", 412, "mg/kg")).toBe("412 ppm");
    expect(alsoAs("12400", 12_400, "mg/kg")).toMatch(/ppm, or 1\.24 %$/);
    expect(dateInZone("2026-11-24T23:30:00Z", "Asia/Tokyo")).toBe("25 November 2026");
    expect([elementTitle("Pb"), elementTitle("Xx")]).toEqual(["Lead (Pb)", "Xx"]);
    expect(() => significant(Number.NaN)).toThrow(/must be finite/);
    expect(revisionText({ revision: 2, publishedAt: "2026-11-26T10:00:00+01:00" })).toBe(
      "revision 2, 26 November 2026",
    );
    expect(pathIn("/items?q=x", "en")).toBe("/items?q=x");
    expect([labelOf({ a: "A" }, "a"), labelOf({ a: "A" }, "new-code")]).toEqual(["A", "New code"]);
  });
});

describe("to print and to pass on", () => {
  it("one and several results that have no room", () => {
    expect(shareWords.more(1)).toMatch(/^1 more result stands/);
    expect(shareWords.more(4)).toMatch(/^4 more results stand/);
  });
  it("by whom, with what, and where to ask, as far as that is known", () => {
    expect(shareWords.by("3 May 2026", "Ana", "Bench 1")).toBe("Tested on 3 May 2026 by Ana with Bench 1.");
    expect(shareWords.by("3 May 2026", "", "")).toBe("Tested on 3 May 2026.");
    expect([shareWords.review("none"), shareWords.review("none.")]).toEqual(["Review: none.", "Review: none."]);
    expect(shareWords.terms("CC0", null)).toBe("Data: CC0.");
    expect(shareWords.terms("CC0", "a@example.org")).toBe("Data: CC0. Questions and corrections: a@example.org.");
  });
  it("a result that no limit can be held beside", () => {
    const [placed] = resultsByWeight(sampleSnapshot());
    expect(reportRows([{ ...placed!, decision: null }]).rows[0]!.verdict).toBe("no limit to compare");
  });
});

describe("other tests", () => {
  const text = (result: Partial<SnapshotOtherTest["result"]>) =>
    otherTestText({
      result: { ...{ quantity: "dust-loading", unit: "µg/ft²", value: null, u: null, below: null }, ...result },
    });
  it("what was found, how sure, or how little would have been seen", () => {
    expect(text({ value: 41 })).toBe("41 µg/ft² (no uncertainty stated)");
    expect(text({ value: 41, u: 3 })).toBe("41 µg/ft² (standard uncertainty 3 µg/ft²)");
    expect(text({ below: 25 })).toBe("below 25 µg/ft²");
    expect(text({})).toBe("no figure");
  });
});

describe("where a figure comes from", () => {
  it("its source, and the session that it shares with others", () => {
    expect(contributionSource("a-new-source")).toBe("a-new-source");
    expect(contributionSource("a-new-source", "Monday")).toMatch(/^a-new-source.+Monday/);
    expect(withoutUncertainty(["Pb", "Cd"])).toMatch(/lead and cadmium/);
    expect(otherTestTitle({ kind: "wipe", element: "Pb" })).toBe("Wipe of a surface: lead");
    expect(noChange("2026-11-24", "2026-11-24")).toBe("The test was on 24 November 2026. No limit has changed since.");
    expect(noChange("2026-11-14", "2026-11-24")).toMatch(/from the day of the test, 14 November 2026, to 24 November/);
    expect(changesLead("2026-11-14")).toBe("These limits changed after the day of the test, 14 November 2026:");
  });
});

describe("a revision's changes as cells", () => {
  const place = [{ field: "item" }, { field: "name" }];
  it("a field changed, a member come, a member gone", () => {
    const { before, now } = changeCells({ kind: "changed", place, before: "Blue mug", after: "Bluebell mug" });
    expect([before, now].join()).toMatch(/Blue mug.*Bluebell mug/);
    expect(changeCells({ kind: "added", place })).toMatchObject({ before: "not there", now: "added" });
    expect(changeCells({ kind: "removed", place })).toMatchObject({ before: "was there", now: "taken away" });
  });
});

describe("words of the record that a difference quotes", () => {
  it("labels but for elements, and texts but for figures", () => {
    const place = [{ field: "parts", label: "glaze, outside" }, { field: "results", label: "Pb" }, { field: "mode" }];
    expect(writtenIn({ kind: "added", place })).toEqual(["glaze, outside"]);
    expect(writtenIn({ kind: "changed", place, before: "Coatings", after: 7 })).toEqual(["glaze, outside", "Coatings"]);
    const aliases = { kind: "changed" as const, place: [{ field: "item" }], before: ["Ana’s mug", 3], after: null };
    expect(writtenIn(aliases)).toEqual(["Ana’s mug"]);
  });
});

describe("limits in words", () => {
  const [limit] = listLimits().filter((each) => each.value !== null && each.until === null);
  it("a change of which only the day is known, an end, a beginning", () => {
    const base = { on: "2026-05-03", applies: "applies", before: null, after: null } as unknown as Parameters<
      typeof changeSentence
    >[0];
    const row = limit as unknown as NonNullable<(typeof base)["after"]>;
    expect(changeSentence(base)).toBe("Changed on 3 May 2026.");
    expect(changeSentence({ ...base, before: row })).toMatch(/^Ended on 3 May 2026: /);
    expect(changeSentence({ ...base, after: row, applies: "for-reference" })).toMatch(
      /^New on .* \(only to compare\)\.$/,
    );
  });
  it("a history that lies wholly behind, or wholly ahead, or holds no number", () => {
    const row = (from: string, until: string | null, value: number | null) => ({
      ...{ ...limit!, from, until, value, unit: "mg/kg", neverTookEffect: false, fromKnown: "day" as const },
    });
    expect(timelineTitle([row("2001-01-01", "2010-01-01", 600)], "2026-11-24")).toBe("600 mg/kg in the past");
    expect(timelineTitle([row("2030-01-01", null, 90)], "2026-11-24")).toMatch(/^Not yet in force; 90 mg\/kg from/);
    expect(timelineTitle([row("2001-01-01", null, null)], "2026-11-24")).toBe("a rule without a number today");
  });
  it("the screening table without marks to name, and of a result without an uncertainty", () => {
    const part = { material: "abs", form: "bulk" as const };
    const result = {
      ...{ element: "Cr", quantity: "bulk-mass-fraction" as const, state: "quantified" as const, unit: "mg/kg" },
      ...{ value: 900, u: 10, below: null },
    };
    const said = (change: object) => screeningSentence(part, { ...result, ...change });
    expect(said({})).toMatch(/\(lower mark 670 mg\/kg, each moved by 3 standard uncertainties\)/);
    expect(said({ u: 400 })).toMatch(/asks for a chemical test\.$/);
    expect(said({ u: null })).toBeNull();
    expect(said({ state: "not-detected", value: null, u: null })).toBeNull();
  });
});

describe("how a result was worked out", () => {
  const [result] = samplePart("above").results;
  const steps = (reasons: (string | null)[], factor?: number) => {
    const readings = result!.readings.slice(0, reasons.length).map((reading, i) => ({
      ...{ ...reading, setAside: reasons[i] === null ? null : { reason: reasons[i]! } },
      ...(factor === undefined ? {} : { factor }),
    }));
    const setAside = reasons.filter((reason) => reason !== null).length;
    return methodSteps({ ...result!, readings, counts: { ...result!.counts, setAside } }).join(" ");
  };
  it("who left out which readings: a person, a failed check, nobody", () => {
    expect(steps([null])).toContain("No reading was left out.");
    expect(steps(["A chip.", null])).toMatch(/A person set 1 reading aside and wrote down why\. It is listed/);
    expect(steps([failedCheckReason])).toMatch(/1 reading near a failed check of the analyser was left out\. It is/);
    expect(steps([failedCheckReason, failedCheckReason])).toMatch(
      /2 readings near a failed check .* were left out\. They are/,
    );
  });
  it("whether readings were corrected", () => {
    expect(steps([null], 1.1)).toContain("Readings were corrected for what the analyser read on a check standard");
    expect(steps([null])).not.toContain("corrected");
  });
});

describe("checks of a standard in a table", () => {
  it("a check that was not detected has neither a reading nor a recovery", () => {
    const check = (value: number | null) => ({
      ...{ takenAt: "2026-05-02T10:00:00+02:00", value, recovery: value === null ? null : value / 100, within: null },
    });
    const standard = { ...{ name: "Tile", unit: "mg/kg", history: [] }, checks: [check(98), check(null)] };
    const rows = checkRows({ element: "Pb", mode: null } as never, standard as never);
    expect(rows.map((row) => [row.read, row.recovery])).toEqual([
      ["98 mg/kg", "0.98"],
      ["–", "–"],
    ]);
  });
});

describe("what a check of a revision says of the head's signature", () => {
  const entry = { seq: 3 };
  const report = (signature: string) =>
    reportLines({
      ...{ results: [], changedInputs: null, readings: { rows: 0, differing: [] } },
      log: { entry, entries: 5, faults: [], signature, head: { seq: 5 } },
    } as never).map((one) => `${one.verdict}: ${one.text}`);
  it("where the log differs, what differs is told instead of what agrees", () => {
    const fault = { code: "snapshot-changed", seq: 3, slug: "mug", revision: 2, found: "a", expected: "b" };
    const log = { entry, entries: 5, faults: [fault], signature: "none", head: null };
    const lines = reportLines({
      ...{ results: [], changedInputs: null, readings: { rows: 0, differing: [] }, log },
    } as never).map((one) => `${one.verdict}: ${one.text}`);
    expect(lines).toContainEqual(
      expect.stringMatching(/^differs: Entry 3 \(mug, revision 2\): its published text was changed/),
    );
    expect(lines.join()).not.toMatch(/are sealed/);
  });
  it("and a figure made anew as it would be printed", () => {
    const [result] = samplePart("above").results;
    expect(remadeText({ recomputed: result } as never)).toBe(resultText(result!));
    expect(remadeText({ recomputed: null } as never)).not.toMatch(/\d/);
  });
  it("that it holds, cannot be checked, or was not there", () => {
    expect(report("agrees").join()).toMatch(/agrees: The signature of entry 5, the log’s head, holds/);
    expect(report("unable").join()).toMatch(/not-checked: The head’s signature was not checked/);
  });
});
