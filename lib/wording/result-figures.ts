import type { SnapshotDecision, SnapshotReading, SnapshotResult } from "../publication/snapshot.ts";
import type { QuantityKind } from "../quantity/kinds.ts";
import { normaliseShot } from "../reconcile/normalise.ts";
import { elementTitle } from "./elements.ts";
import { figureSentences as spanish } from "./es/result-figures.ts";
import { amountText, counted, formatWordsIn, listed, numberText, resultText } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";
import { limitName, placedTitle, verdictsIn } from "./verdicts.ts";

const english = {
  highestSpot: (amount: string) => `highest spot ${amount}`,
  highestSpotSentence: (amount: string) => `Highest spot ${amount}.`,
  limits: (names: string) => `Limits on the same scale: ${names}.`,
  noLimits: "No limit stands on the same scale.",
  reading: (name: string) => `reading ${name}`,
  nothingSeen: "Nothing was seen at any spot",
  seenAt: (seen: number, spots: number) => `Seen at ${seen} of ${spots} spots`,
  oneSpot: "One spot was measured",
  spotBySpot: "The readings, spot by spot",
  differ: (low: string, high: string) => `The spots differ a lot: from ${low} to ${high}`,
  lie: (low: string, high: string) => `The spots lie from ${low} to ${high}`,
  note: (unit: string) =>
    `In ${unit}. Each dot is one reading; its bar reaches two standard uncertainties to either side. An open bar was not detected and ends at what the analyser could see. A hollow dot was set aside and does not count. The thin upright line is the value of the spot.`,
  scale: (unit: string) => `Scale in ${unit}`,
  key: "A black bar is the range that most likely holds the true amount, its upright stroke the value. An open bar means not detected: at most up to its end. A lozenge is the highest spot, a thin line the range of an uneven part. Dashed lines are limits. Equal steps to the right multiply the amount.",
};
export type FigureSentences = Sentences<typeof english>;
export const figuresIn: ByLanguage<FigureSentences> = { en: english, es: spanish };

/** What the drawings of a result need, words and numbers, from the snapshot alone. Nothing is worked out anew here but units. */
export type StripFigure = {
  unit: string;
  value: number | null;
  interval: readonly [number, number] | null;
  bound: number | null;
  range: readonly [number, number] | null;
  worst: { value: number; label: string } | null;
  limits: { id: string; value: number; label: string }[];
  label: string;
};

const mostLimits = 5;

/**
 * Limits that can stand on the result's own axis: of the same quantity and unit, each number of a limit once; those that apply first,
 * then those for reference, five in all (the decisions table has them all).
 */
export function limitsOnAxis(result: SnapshotResult): (SnapshotDecision & { value: number })[] {
  const order = { applies: 0, "for-reference": 1, "other-quantity": 2 } as const;
  const seen = new Set<string>();
  return result.decisions
    .filter(
      (d): d is SnapshotDecision & { value: number } =>
        d.value !== null && d.value > 0 && d.unit === result.unit && d.applies !== "other-quantity",
    )
    .sort((a, b) => order[a.applies] - order[b.applies])
    .filter((d) => {
      const key = `${d.limitId} ${d.value}`;
      return seen.has(key) ? false : seen.add(key);
    })
    .slice(0, mostLimits);
}

const axisName = (d: SnapshotDecision, language: Language): string =>
  `${placedTitle(d, language)}${d.applies === "for-reference" ? verdictsIn[language].referenceBeside : ""}`;

/** The result's words on the strip: short, since the picture says the rest. */
const stripLabel = (result: SnapshotResult, language: Language): string => {
  if (result.state === "no-readings") return "";
  if (result.state === "not-quantified" && result.upperBound !== null)
    return formatWordsIn[language].atMost(amountText(result.upperBound, result.unit, language));
  return resultText(result, language);
};

/** The interval strip of a result. */
export function stripFigure(result: SnapshotResult, language: Language = "en"): StripFigure {
  const top = result.highestSpot;
  const several = result.counts.spots > 1;
  const uneven = result.flags.includes("uneven") || result.state === "range-only";
  return {
    unit: result.unit,
    value: result.state === "quantified" ? result.value : null,
    interval: result.state === "quantified" ? result.interval : null,
    bound:
      result.state === "not-detected" ? result.below : result.state === "not-quantified" ? result.upperBound : null,
    range: uneven ? result.range : null,
    worst:
      top !== null && several
        ? {
            value: top.value,
            label: figuresIn[language].highestSpot(numberText(top.value, 3, language)),
          }
        : null,
    limits: limitsOnAxis(result).map((d) => ({
      id: `${d.limitId}-${d.value}`,
      value: d.value,
      label: axisName(d, language),
    })),
    label: stripLabel(result, language),
  };
}

/**
 * The strip in words, for whoever does not see it: "Lead (Pb): 412 ± 35 mg/kg. Highest spot 423 mg/kg. Limits on the same
 * scale: US children's products, 100 mg/kg (above the limit)."
 */
export function stripSentence(result: SnapshotResult, language: Language = "en"): string {
  const say = figuresIn[language];
  const limits = limitsOnAxis(result).map(
    (d) => `${limitName(d, language)} (${verdictsIn[language].verdicts[d.verdict]})`,
  );
  const top = result.highestSpot;
  return [
    `${elementTitle(result.element, language)}: ${resultText(result, language)}.`,
    top !== null && result.counts.spots > 1
      ? say.highestSpotSentence(amountText(top.value, result.unit, language))
      : "",
    limits.length > 0 ? say.limits(listed(limits, language)) : say.noLimits,
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

export type SpotFigureRow = {
  spot: string;
  mean: number | null;
  points: { id: string; value: number | null; half: number | null; below: number | null; setAside: boolean }[];
};

const shotOf = (reading: SnapshotReading, quantity: QuantityKind) =>
  normaliseShot({ ...reading, factor: reading.factor ?? 1, quantity, setAside: reading.setAside }, quantity);

/**
 * Shots by spot in the result's unit, each with two standard uncertainties to either side. A shot whose unit cannot be
 * turned into the result's stays out of the drawing and in the table.
 */
export function spotFigure(result: SnapshotResult, language: Language = "en"): SpotFigureRow[] {
  const rows = new Map<string, SpotFigureRow>();
  for (const reading of result.readings) {
    const spot = reading.spot ?? figuresIn[language].reading(String(reading.number ?? reading.row ?? reading.id));
    const mean = result.spots.find((each) => each.spot === reading.spot && reading.spot !== null)?.value ?? null;
    const row = rows.get(spot) ?? { spot, mean, points: [] };
    rows.set(spot, row);
    try {
      const shot = shotOf(reading, result.quantity as QuantityKind);
      row.points.push({
        id: reading.id,
        value: shot.value,
        half: shot.u === null ? null : 2 * shot.u,
        below: shot.detected ? null : shot.limit,
        setAside: reading.setAside !== null,
      });
    } catch {
      // A unit of another kind: the table shows the reading as written.
    }
  }
  return [...rows.values()].filter((row) => row.points.length > 0);
}

/** What the spot drawing shows, as its title. */
export function spotFigureTitle(result: SnapshotResult, language: Language = "en"): string {
  const { counts, range, unit } = result;
  const say = figuresIn[language];
  if (counts.spotsDetected === 0) return say.nothingSeen;
  if (counts.spotsDetected < counts.spots) return say.seenAt(counts.spotsDetected, counts.spots);
  if (counts.spots === 1) return say.oneSpot;
  if (range === null) return say.spotBySpot;
  const [low, high] = [numberText(range[0], 3, language), amountText(range[1], unit, language)];
  return result.flags.includes("uneven") ? say.differ(low, high) : say.lie(low, high);
}

/** Said under the spot drawing. */
export const spotFigureNote = (unit: string, language: Language = "en"): string => figuresIn[language].note(unit);

/** One shot of the drawing in words: "A, near the rim: 398 ± 24 mg/kg (two standard uncertainties)". */
export function pointSentence(spot: string, point: SpotFigureRow["points"][number], unit: string): string {
  const aside = point.setAside ? "; set aside" : "";
  if (point.value === null)
    return `${spot}: not detected${point.below === null ? "" : `, below ${amountText(point.below, unit)}`}${aside}`;
  if (point.half === null) return `${spot}: ${amountText(point.value, unit)}, without an error${aside}`;
  return `${spot}: ${numberText(point.value)} ± ${amountText(point.half, unit)} (two standard uncertainties)${aside}`;
}

/** A spot of the drawing in words: "Spot A, near the rim: 401 mg/kg from 3 readings". */
export const spotSentence = (spot: string, mean: number | null, readings: number, unit: string): string =>
  `Spot ${spot}: ${mean === null ? "" : `${amountText(mean, unit)} from `}${counted(readings, "reading")}`;

/** Said under the drawing of the bench, which also has the interval and answers to pointer and keys. */
export const liveFigureNote = (unit: string): string =>
  `${spotFigureNote(unit)} The grey band is the range that most likely holds the true amount. Point at a reading, or press Tab and then the arrow keys, and it is said in words.`;

/** Said under the interval strip. */
export const axisNote = (unit: string, language: Language = "en"): string => figuresIn[language].scale(unit);

/** How to read the strip, once on a page. */
export const stripKey = english.key;
