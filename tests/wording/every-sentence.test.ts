import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type AmountsState, amountSources, densitySources, parseAmounts } from "@/lib/amounts/amounts-form.ts";
import { computeAmounts } from "@/lib/amounts/compute-amounts.ts";
import { geometries, geometryShapes } from "@/lib/amounts/geometry.ts";
import type { Leaf } from "@/lib/publication/revision-difference.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { type LogFault, logFaultCodes } from "@/lib/publication/verify-log.ts";
import type { Problem } from "@/lib/quantity/problem.ts";
import {
  areaLabel,
  areaTitle,
  enteredFacts,
  grainLabel,
  grainScaleNote,
  grainTitle,
} from "@/lib/wording/amount-figures.ts";
import {
  densitySentence,
  dominatesSentence,
  halvingText,
  massSentence,
  nearestSentence,
} from "@/lib/wording/amounts.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { reviewText, whatToDo } from "@/lib/wording/catalogue.ts";
import { changeSentence, leafText } from "@/lib/wording/changes.ts";
import { logFaultSentence } from "@/lib/wording/log-faults.ts";
import { methodSteps, noteSentence } from "@/lib/wording/models.ts";
import { problemSentence, problemWords } from "@/lib/wording/problems.ts";
import {
  pointSentence,
  spotFigure,
  spotFigureTitle,
  spotSentence,
  stripFigure,
  stripSentence,
} from "@/lib/wording/result-figures.ts";
import { typedSentence } from "@/lib/wording/typed-words.ts";
import { limitBeside, verdictText } from "@/lib/wording/verdicts.ts";
import { sampleSnapshotOf, sampleStates } from "../support/sample-snapshot.ts";

/** A sentence that is whole: nothing of the program's own shows through, no gap where a word was to stand. */
const holdWhole = (sentence: string, of: string) => {
  expect(sentence, of).toMatch(/\S/);
  expect(sentence, of).not.toMatch(/undefined|\bnull\b|NaN|Infinity|\[object|\$\{| {2}|\(\)| ,| \./);
};
const holdPlain = (sentence: string, of: string) =>
  expect(sentence, of).not.toMatch(/^\s*$|undefined|\bnull\b|NaN|\[object|\$\{/);
const holdSentence = (sentence: string, of: string) => {
  holdWhole(sentence, of);
  expect(sentence.trim(), of).toMatch(/[.!?”)]$/);
};

describe("every problem has a whole sentence, whatever it carries", () => {
  const wheres: Problem["where"][] = [
    undefined,
    { field: "weight" },
    { row: 12 },
    { file: "shelf.csv", row: 12, column: "Pb" },
    { file: "shelf.csv" },
    { file: "shelf.csv", row: 3, column: "Pb Error", field: "k" },
  ];
  it.each([...Object.keys(problemWords), "a-code-without-words"])("%s", (code) => {
    for (const where of wheres)
      for (const found of [undefined, "", "12,5", "x".repeat(200)])
        for (const allowed of [undefined, "7", "1234, or 1.2340"]) {
          const problem = Object.fromEntries(
            Object.entries({ code, where, found, allowed }).filter(([, value]) => value !== undefined),
          ) as Problem;
          // Where a problem comes without what its code always carries, a gap may show, but never the program's own words.
          const hold = found && allowed && where?.column ? holdSentence : holdPlain;
          hold(problemSentence(problem), JSON.stringify(problem));
          hold(typedSentence(problem), JSON.stringify(problem));
        }
  });
});

describe("every fault of the log has one", () => {
  it.each(logFaultCodes)("%s", (code) => {
    for (const of of [
      { seq: 3, slug: "blue-mug", revision: 2 },
      { seq: 3, slug: null, revision: null },
      { seq: null, slug: null, revision: null },
    ])
      for (const field of [undefined, "hash", "kind"]) {
        const fault: LogFault = { code, ...of, found: "4", expected: "3", ...(field ? { field } : {}) };
        if (of.seq === null && !/^head-(malformed|signature|key)/.test(code)) continue;
        // A fault that is told by the member that differs always names one.
        if (code === "snapshot-tells-otherwise" && field === undefined) continue;
        holdSentence(logFaultSentence(fault), JSON.stringify(fault));
      }
  });
});

describe("whatever a result holds, what is said of it is whole", () => {
  const some = <T>(value: T) => fc.constantFrom(value, null);
  const change = fc.record({
    state: fc.constantFrom("quantified", "range-only", "not-quantified", "not-detected", "no-readings"),
    value: some(412),
    asymmetric: fc.boolean(),
    below: some(5),
    upperBound: some(19.4),
    range: some([61.2, 148]),
    flags: fc.constantFrom(["uneven"], []),
    stated: fc.record({ value: fc.constant("412"), U: some("35"), interval: some(["377", "447"]), below: some("5") }),
    counts: fc.constantFrom(
      { readings: 9, used: 8, setAside: 1, spots: 3, spotsDetected: 3 },
      { readings: 9, used: 7, setAside: 2, spots: 3, spotsDetected: 2 },
      { readings: 3, used: 3, setAside: 0, spots: 3, spotsDetected: 0 },
      { readings: 1, used: 1, setAside: 0, spots: 1, spotsDetected: 1 },
    ),
    model: fc.constantFrom("random-effects", "a-model-of-tomorrow"),
  });
  const decided = fc.record({
    applies: fc.constantFrom("applies", "for-reference", "other-quantity"),
    verdict: fc.constantFrom("above", "below", "too-close", "not-detected", "cannot-say"),
    probabilityAbove: fc.constantFrom(null, 0, 0.004, 0.03, 0.5, 0.999, 1),
    which: fc.constantFrom("both", "test-day", "today"),
    value: some(100),
  });
  const noDecisions = fc.constantFrom("none", "some");

  it("over 1,000 results of every state, with and without bounds, ranges, limits and verdicts", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...sampleStates),
        change,
        fc.array(decided, { minLength: 1, maxLength: 3 }),
        noDecisions,
        fc.boolean(),
        (state, changed, verdicts, decisions, reviewed) => {
          const snapshot = structuredClone(sampleSnapshotOf(state)) as Snapshot;
          const result = snapshot.specimens[0]!.parts[0]!.results[0]!;
          Object.assign(result, changed);
          const [first] = result.decisions;
          result.decisions = (
            decisions === "none" || !first ? [] : verdicts.map((one) => ({ ...first, ...one }))
          ) as typeof result.decisions;
          if (!reviewed) snapshot.review = { ...snapshot.review, reviewed: false, reviewers: [], reviewedOn: null };
          const of = JSON.stringify({ state, changed, verdicts, decisions });
          const answer = itemAnswer(snapshot);
          for (const sentence of [answer.headline, ...answer.sentences, ...methodSteps(result), stripSentence(result)])
            holdSentence(sentence, of);
          for (const decision of result.decisions) {
            holdWhole(verdictText(decision, result), of);
            holdWhole(limitBeside(decision), of);
          }
          holdWhole(spotFigureTitle(result), of);
          holdWhole(reviewText(snapshot.review), of);
          const { label } = stripFigure(result);
          if (result.state === "no-readings") expect(label).toBe("");
          else holdWhole(label, of);
          for (const { spot, mean, points } of spotFigure(result)) {
            holdWhole(spotSentence(spot, mean, points.length, result.unit), of);
            for (const point of points) holdWhole(pointSentence(spot, point, result.unit), of);
          }
        },
      ),
      { numRuns: 1000 },
    );
  });

  it("shots without a spot, without an error, without a limit, or of another kind", () => {
    const snapshot = structuredClone(sampleSnapshotOf("above")) as Snapshot;
    const result = snapshot.specimens[0]!.parts[0]!.results[0]!;
    const [reading] = result.readings;
    const of = (over: object) => ({ ...reading!, ...over }) as (typeof result.readings)[number];
    result.readings = [
      of({ id: "r1", spot: null }),
      of({ id: "r2", spot: null, number: undefined }),
      of({ id: "r3", spot: null, number: undefined, row: undefined }),
      of({ id: "r4", spot: "Z", unit: "g" }),
    ];
    const rows = spotFigure(result);
    expect(rows).toHaveLength(3);
    for (const row of rows) holdWhole(spotSentence(row.spot, row.mean, 1, result.unit), row.spot);
    for (const point of [
      { id: "a", value: null, half: null, below: null, setAside: true },
      { id: "b", value: null, half: null, below: 5, setAside: false },
      { id: "c", value: 12, half: null, below: null, setAside: false },
      { id: "d", value: 12, half: 1, below: null, setAside: true },
    ])
      holdWhole(pointSentence("A", point, "mg/kg"), point.id);
  });

  it("what to do, by every verdict and none", () => {
    for (const verdict of ["above", "below", "too-close", "not-detected", "cannot-say", null] as const)
      for (const kind of ["first", "withdrawal"] as const)
        for (const sentence of whatToDo(verdict, kind)) holdSentence(sentence, `${verdict} ${kind}`);
    holdSentence(noteSentence("a-note-of-tomorrow"), "note");
  });
});

describe("what changed between two revisions", () => {
  const leaf = fc.oneof<fc.Arbitrary<Leaf>[]>(
    fc.constantFrom(null, "", "blue mug", true, false, 412.86),
    fc.array(fc.constantFrom("a", 1, true, null), { maxLength: 3 }),
  );
  const place = fc.array(
    fc.oneof(
      fc.record({ field: fc.constantFrom("gtin", "massG", "aFieldOfTomorrow") }),
      fc.record({ field: fc.constantFrom("results", "parts", "manyThings"), label: fc.constantFrom("Pb", "handle") }),
    ),
    { minLength: 1, maxLength: 4 },
  );
  it("is said whole, whatever stands before and after", () => {
    fc.assert(
      fc.property(fc.constantFrom("changed", "added", "removed"), place, leaf, leaf, (kind, at, before, after) => {
        const change = { kind, place: at, before, after } as Parameters<typeof changeSentence>[0];
        holdSentence(changeSentence(change), JSON.stringify(change));
        holdWhole(leafText(before), JSON.stringify(before));
      }),
      { numRuns: 1000 },
    );
  });
});

describe("amounts, by every source, shape and density", () => {
  const sizes = (shape: (typeof geometryShapes)[number]): Partial<AmountsState> => {
    const given: Record<string, string> = { outerDiameter: "12", innerDiameter: "6", wall: "1", topDiameter: "5" };
    return Object.fromEntries(
      Object.keys(geometries[shape].dimensions).map((name) => [name, given[name] ?? "10 ± 1"]),
    ) as Partial<AmountsState>;
  };
  const states = amountSources.flatMap((from) =>
    geometryShapes.flatMap((shape) =>
      densitySources.flatMap((densityFrom) =>
        [0, 1].map((odd) => ({
          ...{ from, shape, densityFrom, ...sizes(shape), material: odd ? "" : "brass", rest: odd ? "" : "Sn" },
          ...{ density: odd ? "" : "8.5", weight: "20", content: odd ? "< 40" : "1 to 3", contentUnit: "%" },
          ...{
            area: "100",
            coatLoading: odd ? "1" : "0.5 ± 0.1",
            coatThickness: "",
            amount: odd ? "5" : "< 0.00002",
          },
          ...{ loading: "10", over: "50", sealed: odd ? "yes" : "no", element: odd ? "Br" : "Pb" },
        })),
      ),
    ),
  );
  it("is said whole", () => {
    for (const part of states) {
      const state = parseAmounts(part);
      const of = JSON.stringify(part);
      const result = computeAmounts(state, 1, { draws: 100 });
      const names = {
        material: (id: string) => id,
        dimensions: Object.keys(geometries[state.shape].dimensions),
        dimensionKind: (name: string) => (geometries[state.shape].dimensions as Record<string, string>)[name]!,
      };
      for (const { name, value } of enteredFacts(state, names)) holdWhole(`${name}: ${value}`, of);
      if (result.mass) {
        holdSentence(massSentence(result.mass, state.element), of);
        const dominates = dominatesSentence(result.mass);
        if (result.mass.dominates === null) expect(dominates).toBeNull();
        else holdSentence(dominates!, of);
        if (result.mass.density) holdSentence(densitySentence(result.mass.density), of);
      }
      if (result.amount && result.grain) {
        holdWhole(grainLabel(result.amount, result.grain, state.element), of);
        holdSentence(grainTitle(result.amount, result.grain, state.element), of);
      }
      if (result.spread) {
        holdWhole(areaLabel(result.spread), of);
        for (const nearest of [result.nearestArea, []]) holdSentence(areaTitle(result.spread, nearest), of);
      }
      for (const one of [...result.nearestArea, ...result.nearestMass])
        for (const atMost of [true, false]) holdSentence(nearestSentence(one, { atMost }), of);
      for (const step of result.onArea?.ladder ?? []) holdWhole(halvingText(step), of);
    }
    for (const scales of [
      [1, 1],
      [0.5, 0.5],
    ])
      holdSentence(grainScaleNote(scales), "scale");
    holdWhole(halvingText({ halvings: 2, mass: null, loading: 5 }), "a ladder without a mass");
  });
});
