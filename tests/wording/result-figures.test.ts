import { describe, expect, test } from "vitest";
import { publicLimit } from "@/lib/limits/list-limits.ts";
import { allLimits } from "@/lib/limits/tables/all-limits.ts";
import { whatToDo } from "@/lib/wording/catalogue.ts";
import { limitNumber, limitPeriod } from "@/lib/wording/limit-words.ts";
import { limitsOnAxis, spotFigure, spotFigureTitle, stripFigure, stripSentence } from "@/lib/wording/result-figures.ts";
import { type SampleState, samplePart } from "@/tests/support/sample-snapshot.ts";

const resultOf = (state: SampleState) => {
  const result = samplePart(state).results[0];
  if (!result) throw new Error("the sample part has a result");
  return result;
};

describe("interval strip of a result (invented sample)", () => {
  test("above: value, interval, worst spot and the limits of the same unit only", () => {
    const figure = stripFigure(resultOf("above"));
    expect(figure.bound).toBeNull();
    expect(figure.worst?.value).toBeGreaterThan(figure.value ?? 0);
    expect(figure.limits.map((limit) => limit.value)).toEqual([100]); // the leach limit is of another kind
    expect(figure.label).toBe("412 ± 35 mg/kg");
  });
  test("not detected: a bound and no value, never zero", () => {
    expect(stripFigure(resultOf("not-detected"))).toMatchObject({ value: null, interval: null, bound: 5, worst: null });
  });
  test("not quantified: the upper bound, and the spot where it was seen", () => {
    expect(stripFigure(resultOf("not-quantified"))).toMatchObject({ bound: 19.4, label: "at most 19.4 mg/kg" });
  });
  test("uneven: the range of the spots", () => {
    // Handed on as the snapshot has it: the drawing works nothing out anew.
    const result = resultOf("uneven");
    expect(stripFigure(result).range).toBe(result.range);
    expect(result.range?.map(Math.round)).toEqual([61, 148]);
  });
  test("a limit only held beside the value says so on the strip", () => {
    expect(stripFigure(resultOf("not-detected")).limits[0]?.label).toBe("EU cadmium in plastics (only to compare)");
  });
  test("the same limit on two days stands once; applying ones come first; five at most", () => {
    const result = resultOf("above");
    const [first] = result.decisions;
    if (!first) throw new Error("the sample has a decision");
    const others = [1, 2, 3, 4, 5, 6].map((n) => ({ ...first, limitId: `l${n}`, applies: "for-reference" as const }));
    const many = { ...result, decisions: [...others, first, { ...first, day: "2026-11-24" }] };
    const ids = limitsOnAxis(many).map((d) => d.limitId);
    expect(ids).toHaveLength(5);
    expect(ids[0]).toBe(first.limitId);
    expect(ids.filter((id) => id === first.limitId)).toHaveLength(1);
  });
  test("in words", () => {
    expect(stripSentence(resultOf("too-close"))).toMatch(
      /^Lead \(Pb\): 92\.1 ± 7\.5 mg\/kg\. Highest spot 9\d(\.\d)? mg\/kg\. Limits on the same scale: .* \(too close to call\)\.$/,
    );
  });
});

describe("spot figure of a result (invented sample)", () => {
  test("has every reading once, set aside ones marked, errors as two standard uncertainties", () => {
    const result = resultOf("above");
    const points = spotFigure(result).flatMap((row) => row.points);
    expect(points.map((point) => point.id).sort()).toEqual(result.readings.map((reading) => reading.id).sort());
    expect(points.filter((point) => point.setAside)).toHaveLength(1);
    expect(points.find((point) => point.value === 398)?.half).toBeCloseTo(12, 12); // k = 2: the error as written
  });
  test("per cent is drawn in the result's unit", () => {
    const result = resultOf("above");
    const [reading] = result.readings;
    if (!reading) throw new Error("the sample has a reading");
    const percent = { ...reading, unit: "%", value: { text: "0.0398", value: 0.0398, decimals: 4 } };
    expect(spotFigure({ ...result, readings: [percent] })[0]?.points[0]?.value).toBeCloseTo(398, 9);
  });
  test("its title states what it shows", () => {
    expect(spotFigureTitle(resultOf("not-detected"))).toBe("Nothing was seen at any spot");
    expect(spotFigureTitle(resultOf("not-quantified"))).toBe("Seen at 1 of 3 spots");
    expect(spotFigureTitle(resultOf("uneven"))).toBe("The spots differ a lot: from 61 to 148 mg/kg");
  });
});

test("what to do is said for every verdict, and never calls a thing safe", () => {
  for (const verdict of ["above", "too-close", "below", "not-detected", "cannot-say", null] as const) {
    const sentences = whatToDo(verdict, "first");
    expect(sentences.length).toBeGreaterThan(0);
    expect(sentences.join(" ")).not.toMatch(/\bsafe\b|\b(il)?legal\b/i);
  }
});

test("every limit of the table has a number or says that it has none, and a period in words", () => {
  for (const limit of allLimits.map(publicLimit)) {
    expect(limitNumber(limit)).toMatch(limit.value === null ? /^a rule without a number$/ : /^[\d.\u202f]+ \S+/);
    expect(limitPeriod(limit)).toMatch(/^(since|until|now;|replaced|\d|[A-Z])/);
    expect(limitPeriod(limit)).not.toContain("1900");
  }
});
