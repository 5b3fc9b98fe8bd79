import { canonicalUnit, type QuantityKind } from "../quantity/kinds.ts";
import { dayInWords, makingOf } from "./iso-day.ts";
import { isInForce } from "./limits-in-force.ts";
import { type ScopeFit, scopeFit } from "./scope-fit.ts";
import { allLimits } from "./tables/all-limits.ts";
import { testNeeded } from "./test-needed.ts";
import type { Decision, LimitRow, Subject, Target } from "./types.ts";

/** How one limit stands to one part: whether it applies, and why or why not, in words a reader can check. */
export type Standing = {
  limit: LimitRow;
  applies: Decision["applies"];
  why: string;
  fit: ScopeFit["fit"];
  /** How many reasons keep the part out of scope or leave it open; 0 where it is in. */
  open: number;
};

/** Elements an X-ray reading reports, where the limit is on one of their compounds or forms. */
const elementOf: Record<string, string> = { "Cr(VI)": "Cr", PBB: "Br", PBDE: "Br" };

const targetWords: Record<Exclude<Target, "object">, string> = {
  dust: "settled dust in homes",
  "housing-paint": "paint in homes and places for children",
  soil: "soil",
  water: "drinking water",
  food: "food",
  packaging: "packaging",
  electrical: "electrical and electronic equipment",
  plumbing: "plumbing for drinking water",
  candle: "candle wicks",
  "paint-as-sold": "paint as it is sold",
  "food-business": "utensils of food businesses",
  exposure: "what a person takes in each day",
  exemption: "listed exceptions from another limit",
};

/**
 * How a limit stands to a part on a day; null where it says nothing of the element or binds nothing on that day.
 *
 * A limit that binds by the date of making stays the number for goods of its time after it has been replaced.
 * Settlements, voluntary standards and limits not laid upon objects are never said to apply. A limit of another
 * quantity kind, or in a unit the kind cannot be turned into, or on a form of the element that X-rays cannot tell, is
 * "other-quantity" with the test that would be needed.
 *
 * Source: the limits' own scopes as read (each limit's citation); the rule of like with like is the registry's.
 */
export const standingOf = (
  limit: LimitRow,
  subject: Subject,
  kind: QuantityKind,
  element: string,
  day: string,
): Standing | null => {
  const direct = limit.substances.includes(element);
  const indirect = limit.substances.some((substance) => elementOf[substance] === element);
  if (!(direct || indirect) || limit.neverTookEffect || !bindsOn(limit, subject, day)) return null;
  const scope = scopeFit(limit.criteria, subject);
  const { fit, reasons } = scope;
  const comparable =
    direct &&
    kind === limit.quantity &&
    limit.unit === canonicalUnit(kind) &&
    (limit.value !== null || limit.rule !== null);
  const binds = limit.nature !== "settlement" && limit.nature !== "advisory" && limit.target === "object";
  const applies = !comparable ? "other-quantity" : fit === "in" && binds ? "applies" : "for-reference";
  const words = scopeWords(limit, scope, day);
  const why = applies === "other-quantity" ? `${testNeeded(limit, kind, element)} ${words}` : words;
  return { limit, applies, why, fit, open: reasons.length };
};

/**
 * In force on the day, or replaced since but still the number for goods made in its time: known to be of that time by the date of
 * making, or because the tester had it before that time was over.
 */
const bindsOn = (limit: LimitRow, subject: Subject, day: string): boolean => {
  if (isInForce(limit, day)) return true;
  const { first, last } = makingOf(subject);
  if (last === null || limit.until === null || day <= limit.until) return false;
  return limit.criteria.some(
    ({ made: window }) =>
      window !== undefined &&
      (window.from === null || last >= window.from) &&
      window.until !== null &&
      (first ?? last) <= window.until,
  );
};

const scopeWords = (limit: LimitRow, { fit, reasons, ifs, grounds, unless }: ScopeFit, day: string): string => {
  const words: string[] = [];
  if (limit.nature === "settlement") words.push("A settlement benchmark: it binds only its parties.");
  if (limit.nature === "advisory" && limit.target === "object") words.push("Voluntary unless a country adopts it.");
  if (limit.target !== "object" && fit !== "unsure")
    words.push(`For reference: it is laid upon ${targetWords[limit.target]}, not upon objects like this one.`);
  else if (fit === "in")
    words.push(
      `${limit.jurisdiction}: this kind of object and part is in its scope${ifs.map((one) => `, if ${one}`).join("")}.`,
      ...grounds,
      ...unless,
    );
  else if (fit === "unsure")
    words.push(`It may apply: ${[...reasons, ...ifs.map((one) => `only if ${one}`)].join("; ")}.`);
  else words.push(`For reference only: ${reasons.join("; ")}.`);
  if (limit.nature === "guidance") words.push("It is guidance, not a binding limit.");
  if (limit.until !== null && day > limit.until && fit !== "out")
    words.push("It has been replaced since, and stays the number for goods made in its time.");
  if (limit.complianceFrom && day < limit.complianceFrom)
    words.push(`The rule is in effect; compliance is asked for from ${dayInWords(limit.complianceFrom)}.`);
  return words.join(" ");
};

/** Targets whose limits help a reader of an object's page even though they are not laid upon it. */
const helpful: readonly Target[] = ["object", "housing-paint", "paint-as-sold"];
const most = { unsure: 4, references: 3, tests: 6 };

/**
 * The limits a page shows for one part, element and quantity kind on one day: all that apply; the few nearest for
 * reference (those that may apply first, then those the part misses by least); and those that would apply to the part but
 * ask for another test. The order is fixed: by standing, by how little is open, by jurisdiction in the order of the data,
 * by number, by id.
 */
export const applicability = (subject: Subject, kind: QuantityKind, element: string, day: string): Standing[] => {
  const standings = allLimits
    .map((limit) => standingOf(limit, subject, kind, element, day))
    .filter((standing) => standing !== null);
  const applying = standings.filter((s) => s.applies === "applies");
  const references = standings
    .filter((s) => s.applies === "for-reference" && (s.fit !== "out" || helpful.includes(s.limit.target)))
    .sort(byNearness);
  const unsure = references.filter((s) => s.fit !== "out").slice(0, most.unsure);
  const others = references.filter((s) => s.fit === "out").slice(0, Math.max(0, most.references - unsure.length));
  const tests = standings
    .filter((s) => s.applies === "other-quantity" && s.fit !== "out" && s.limit.target === "object")
    .sort(byNearness)
    .slice(0, most.tests);
  return [...applying.sort(byNearness), ...unsure, ...others, ...tests];
};

const jurisdictions = [...new Set(allLimits.map((limit) => limit.jurisdiction))];
const fitOrder = { in: 0, unsure: 1, out: 2 };

const numberOf = ({ limit }: Standing): number => limit.value ?? 0;
const byNearness = (a: Standing, b: Standing): number =>
  fitOrder[a.fit] - fitOrder[b.fit] ||
  a.open - b.open ||
  Number(a.limit.target !== "object") - Number(b.limit.target !== "object") ||
  jurisdictions.indexOf(a.limit.jurisdiction) - jurisdictions.indexOf(b.limit.jurisdiction) ||
  numberOf(a) - numberOf(b) ||
  (a.limit.id < b.limit.id ? -1 : 1);
