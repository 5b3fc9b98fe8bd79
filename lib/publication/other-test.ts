import { wipeLoading } from "../amounts/wipe-loading.ts";
import { decisionsByResult } from "../limits/decisions-for.ts";
import type { Decision, Subject } from "../limits/types.ts";
import { type QuantityKind, quantityKinds } from "../quantity/kinds.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { convert, parseUnit } from "../quantity/units.ts";
import { parseTypedNumber } from "../quantity/written-quantity.ts";

/** How the figure of a test is written, what quantity it is, and which kinds of test write it so. */
export type TestMeasure = {
  kinds: readonly ("wipe" | "leachate" | "laboratory")[];
  quantity: QuantityKind;
  /** The unit proper; a mass for what was found on one wipe. */
  unit: string;
  /** The figure is of a whole wipe, and is divided by the area wiped. */
  perWipe?: true;
};
export const testMeasures = {
  "µg/wipe": { kinds: ["wipe"], quantity: "dust-loading", unit: "µg", perWipe: true },
  "mg/wipe": { kinds: ["wipe"], quantity: "dust-loading", unit: "mg", perWipe: true },
  "µg/ft²": { kinds: ["wipe"], quantity: "dust-loading", unit: "µg/ft²" },
  "µg/mL": { kinds: ["leachate"], quantity: "leachate", unit: "µg/mL" },
  "mg/L": { kinds: ["leachate"], quantity: "leachate", unit: "mg/L" },
  "mg/kg of a solid part": { kinds: ["laboratory"], quantity: "bulk-mass-fraction", unit: "mg/kg" },
  "% of a solid part": { kinds: ["laboratory"], quantity: "bulk-mass-fraction", unit: "%" },
  "mg/kg of a coating": { kinds: ["laboratory"], quantity: "coating-mass-fraction", unit: "mg/kg" },
  "% of a coating": { kinds: ["laboratory"], quantity: "coating-mass-fraction", unit: "%" },
  "mg/cm² of a coating": { kinds: ["laboratory"], quantity: "coating-areal", unit: "mg/cm²" },
  "mg/kg migrated": { kinds: ["laboratory"], quantity: "migration", unit: "mg/kg" },
} as const satisfies Record<string, TestMeasure>;
export type TestUnit = keyof typeof testMeasures;

/** Reads what a laboratory wrote: "12,5", "< 0.5", "ND" with a reporting limit. A "<" is never made a number. */
export type TestFigure = { value: number | null; reportingLimit: number | null };
export function readTestFigure(text: string, limitText: string): Outcome<TestFigure> {
  const limit = limitText.trim() === "" ? null : parseTypedNumber(limitText.replace(/^\s*<\s*/, ""));
  if (limit && !limit.ok)
    return refused({ code: "test-limit-unreadable", where: { field: "limitText" }, found: limitText });
  const stated = limit?.ok ? limit.value.value : null;
  if (stated !== null && !(stated > 0))
    return refused({ code: "test-limit-unreadable", where: { field: "limitText" }, found: limitText });
  const where = { field: "valueText" };
  const below = /^\s*[<≤]\s*(.*)$/.exec(text);
  const unseen = /^\s*(?:nd|n\.\s?d\.?|bdl|n\.\s?n\.?|not detected|none detected|nicht nachgewiesen|non détecté)\s*$/i;
  if (unseen.test(text))
    return stated === null
      ? refused({ code: "test-limit-missing", where, found: text.trim() })
      : done({ value: null, reportingLimit: stated });
  const read = parseTypedNumber(below ? below[1]! : text);
  if (!read.ok || !(read.value.value > 0)) return refused({ code: "test-value-unreadable", where, found: text.trim() });
  const number = read.value.value;
  if (!below) return done({ value: number, reportingLimit: stated });
  return stated !== null && stated !== number
    ? refused({ code: "test-two-limits", where, found: text.trim(), allowed: limitText.trim() })
    : done({ value: null, reportingLimit: number });
}

/** A test as the bench holds it. */
export type OtherTest = {
  id: string;
  specimenId: string;
  componentId: string | null;
  kind: "wipe" | "leachate" | "laboratory";
  element: string;
  valueText: string;
  value: number | null;
  reportingLimit: number | null;
  unit: string;
  /** standard uncertainty, in the unit as written */
  u: number | null;
  sampleAreaCm2: number | null;
  blankText: string | null;
  laboratory: string;
  method: string;
  reportedOn: string | null;
  certificateName: string | null;
  note: string;
};

/** What a test says in the canonical unit of its quantity kind. Exactly one of `value` and `below` is a number. */
export type TestResult = {
  quantity: QuantityKind;
  unit: string;
  value: number | null;
  u: number | null;
  below: number | null;
};

/**
 * A test's figure in canonical units: µg on a wipe ÷ area wiped → µg/ft²; "< RL" stays "< RL ÷ area". A blank is shown as the laboratory
 * says it and never subtracted here. The uncertainty is divided like the value; that of the area is not in it.
 *
 * Refused: `test-unit` (a unit of another kind of test), `area-zero` and the like of a wipe without its area, `test-value-unreadable`.
 *
 * Source: a loading is mass over area (40 CFR 745.63, "loading"); 1 ft² is 929.0304 cm² exactly.
 *
 * Examples with their answers: tests/publication/other-test.test.ts.
 */
export function testResult(test: OtherTest): Outcome<TestResult> {
  const measure: TestMeasure | undefined = Object.hasOwn(testMeasures, test.unit)
    ? testMeasures[test.unit as TestUnit]
    : undefined;
  if (!measure?.kinds.includes(test.kind))
    return refused({
      code: "test-unit",
      where: { field: "unit" },
      found: test.unit,
      allowed: unitsOf(test.kind).join(", "),
    });
  const number = test.value ?? test.reportingLimit;
  if (number === null)
    return refused({ code: "test-value-unreadable", where: { field: "valueText" }, found: test.valueText });
  const { unit } = quantityKinds[measure.quantity];
  const scale = measure.perWipe
    ? perArea(measure, test.sampleAreaCm2)
    : done(convert(1, parseUnit(measure.unit)!, unit));
  if (!scale.ok) return scale;
  const scaled = number * scale.value;
  return done({
    quantity: measure.quantity,
    unit,
    value: test.value === null ? null : scaled,
    u: test.value === null || test.u === null ? null : test.u * scale.value,
    below: test.value === null ? scaled : null,
  });
}

export const unitsOf = (kind: OtherTest["kind"]): string[] =>
  Object.entries(testMeasures).flatMap(([unit, measure]) =>
    (measure.kinds as readonly string[]).includes(kind) ? [unit] : [],
  );

function perArea(measure: TestMeasure, areaCm2: number | null): Outcome<number> {
  const areaFt2 = areaCm2 === null ? 0 : convert(areaCm2, "cm²", "ft²");
  const one = wipeLoading({ found: convert(1, parseUnit(measure.unit)!, "µg"), areaFt2 });
  return one.ok
    ? done(one.value.loading)
    : refused(...one.problems.map((p) => ({ ...p, where: { field: "sampleAreaCm2" } })));
}

/** A test's result held beside the limits of its own quantity kind; others are named with what test they would need. */
export function decisionsOfTest(
  subject: Subject,
  element: string,
  { quantity, value, u, below }: TestResult,
  days: { testDay: string; today: string },
): Decision[] {
  const held = {
    ...{ element, quantity, value, u, below },
    state: value === null ? ("not-detected" as const) : ("quantified" as const),
    ...{ nuEff: null, interval: null, asymmetric: false, upperBound: null, flags: [] },
  };
  return decisionsByResult(subject, [held], days)[0]!.filter((d) => d.applies !== "other-quantity");
}
