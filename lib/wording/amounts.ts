import type { ArithmeticComparison } from "../amounts/arithmetic-comparisons.ts";
import type {
  AmountsResult,
  AreaComparator,
  Estimate,
  HalvingStep,
  MassComparator,
  MassResult,
  Nearest,
  ReferenceLoading,
} from "../amounts/types.ts";
import { convert } from "../quantity/units.ts";
import { shareName } from "./amount-labels.ts";
import { shareText } from "./budget.ts";
import { type Caution, cautions } from "./cautions.ts";
import { elementName } from "./elements.ts";
import { counted, plainDate, significant, withUnit } from "./formats.ts";

/** The unit a person would choose for a size: µg below 0.1 mg, g from 1000 mg, kg from 1000 g. */
function readableUnit(unit: string, value: number): { unit: string; factor: number } {
  const mg = unit === "g" ? 1000 : unit === "mg" ? 1 : null;
  if (mg === null) return { unit, factor: 1 };
  const inMg = value * mg;
  const best = inMg < 0.1 ? "µg" : inMg < 1000 ? "mg" : inMg < 1e6 ? "g" : "kg";
  return { unit: best, factor: convert(mg, "mg", best) };
}

/** Two digits where the figure is known to 5 % or worse, three where better, four where nothing is uncertain. */
export const digitsFor = ({ value, u, interval }: Estimate): number =>
  interval[0] === interval[1] ? 4 : u > 0.05 * value ? 2 : 3;

/**
 * An estimate as pages print it: "34.02 mg" (exact), "1.3 g (0.83 to 1.9 g)", "at most 0.12 mg". The brackets hold the middle 95 %.
 */
export function estimateText(estimate: Estimate): string {
  const shown = estimate.atMost ? estimate.interval[1] : estimate.value;
  const { unit, factor } = readableUnit(estimate.unit, shown);
  const digits = digitsFor(estimate);
  const say = (value: number) => significant(value * factor, digits);
  if (estimate.atMost) return `at most ${withUnit(significant(roundedUp(shown * factor), 2), unit)}`;
  const [low, high] = estimate.interval;
  return low === high
    ? withUnit(say(estimate.value), unit)
    : `${withUnit(say(estimate.value), unit)} (${withUnit(say(low), "to").replace(/ to$/, "")} to ${withUnit(say(high), unit)})`;
}

/** A bound is rounded up to two digits, never down. The small allowance is for 1.7 written in binary. */
function roundedUp(value: number): number {
  const place = 10 ** (Math.floor(Math.log10(value)) - 1);
  return Math.ceil(value / place - 1e-9) * place;
}

/** A mass without its interval, for captions and tables: "34 mg". */
export function massText(mg: number, digits = 3): string {
  const { unit, factor } = readableUnit("mg", mg);
  return withUnit(significant(mg * factor, digits), unit);
}

/** "6804 ft² (632 m²)". */
export const areaText = (ft2: number, digits = 3): string =>
  `${withUnit(significant(ft2, digits), "ft²")} (${withUnit(significant(convert(ft2, "ft²", "m²"), digits), "m²")})`;

/** "This part holds about 1.3 g (0.83 to 1.9 g) of lead." */
export function massSentence(result: MassResult, element: string): string {
  const text = estimateText(result.mass);
  const about = result.mass.atMost || result.mass.u === 0 ? "" : "about ";
  const sentence = `This part holds ${about}${text} of ${elementName(element)}.`;
  return result.sealed ? `${sentence} ${sealedSentence}` : sentence;
}

export const sealedSentence =
  "This is an estimate: nobody could reach this part, so its size and what it is made of are guesses.";

/** What the brackets mean; stands once on a page. */
export const bracketsSentence =
  "The numbers in brackets are the range in which the true amount lies 95 times in 100, if the figures entered are right.";

/** "Most of the doubt comes from the content (93 %)." Null where nothing is in doubt. */
export function dominatesSentence({ dominates, shares }: MassResult): string | null {
  const first = shares[0];
  if (dominates === null || first === undefined) return null;
  const lead = first.share > 0.5 ? "Most of the doubt comes from" : "The largest part of the doubt comes from";
  return `${lead} ${shareName(dominates)} (${shareText(first.share)}). Measure that better first.`;
}

/** "Density used: 8.69 g/cm³. From …" */
export const densitySentence = ({ value, source, checked }: NonNullable<MassResult["density"]>): string => {
  const how = checked === "entered" ? "" : ` (${checked})`;
  return `Density used: ${withUnit(significant(value, 4), "g/cm³")}. Where it comes from: ${source}${how}.`;
};

/** "Spread evenly, that would come to 5 µg/ft² over 6804 ft² (632 m²)." */
export function spreadSentence({ loading, area }: NonNullable<AmountsResult["spread"]>): string {
  return `Spread evenly, it would come to ${estimateText(loading)} over ${estimateText(area)}.`;
}

export const surfaceNames: Record<ReferenceLoading["surface"], string> = {
  floor: "floors",
  sill: "window sills",
  trough: "window troughs",
};
export const referencePeriod = ({ from, until }: ReferenceLoading): string =>
  until === null ? `since ${plainDate(from)}` : `from ${plainDate(from)} to ${plainDate(until)}`;

/** "40 µg/ft², floors, from 6 March 2001 to 5 January 2020" */
export const referenceText = (reference: ReferenceLoading): string =>
  `${withUnit(significant(reference.value), "µg/ft²")}, ${surfaceNames[reference.surface]}, ${referencePeriod(reference)}`;

export const referenceSentence = ({ reference, area }: AmountsResult["references"][number]): string =>
  `At ${withUnit(significant(reference.value), "µg/ft²")}, the dust limit for ${surfaceNames[reference.surface]} ${referencePeriod(reference)}: ${estimateText(area)}.`;

/** "Half of that, and the loading is half: 20 µg/ft²." One line a step. */
export function halvingText({ halvings, mass, loading }: HalvingStep): string {
  const of = mass === null ? "" : `${massText(mass, 4)}: `;
  const step = halvings === 0 ? "All of it" : halvings === 1 ? "Half" : `Halved ${counted(halvings, "time")}`;
  return `${step}, ${of}${withUnit(significant(loading, 4), "µg/ft²")}`;
}

/**
 * "About 2.4 times the area of a tennis court (doubles lines)." A page names the size and its source beside it. `atMost` for a bound:
 * "At most about …".
 */
export function nearestSentence(
  { comparator, times }: Nearest<AreaComparator | MassComparator>,
  { atMost = false }: { atMost?: boolean } = {},
): string {
  const about = atMost ? "At most about" : "About";
  const what = comparator.kind === "area" ? `the area of ${comparator.name}` : `the weight of ${comparator.name}`;
  if (times > 0.95 && times < 1.05) return `${about} ${what}.`;
  return times >= 1 ? `${about} ${significant(times, 2)} times ${what}.` : `${about} ${shareOf(times)} of ${what}.`;
}
const shareOf = (times: number): string =>
  times >= 0.01 ? `${significant(100 * times, 2)} %` : `one part in ${withUnit(significant(1 / times, 2), "").trim()}`;

/** Where a comparator's size comes from: "78 × 36 ft (2808 ft²); pages on court sizes …, second-hand". */
export const comparatorSource = ({ size, source, checked }: AreaComparator | MassComparator): string =>
  checked === "assumption" ? `${size}; ${source}` : `${size}; ${source} (${checked})`;

/** A coin is for its size on the page only. */
export const coinSentence =
  "The weight of a coin is the weight of its metal. It is not the amount of lead in a piece of that size.";

export const grainSentence = ({ massMg, diameterMm }: NonNullable<AmountsResult["grain"]>, element: string): string =>
  `As one ball of pure ${elementName(element)}, ${massText(massMg)} would be ${withUnit(significant(diameterMm, 2), "mm")} across.`;

export const coatingSentence = ({ loading, content }: NonNullable<AmountsResult["coating"]>): string =>
  `In a coat of this thickness and density, ${estimateText(loading)} and ${estimateText(content)} are the same thing.`;

/** What must stand beside a comparison that is arithmetic only. */
export const comparisonLabels: Record<ArithmeticComparison["label"], string> = {
  "total-over-daily-intake":
    "Arithmetic only: the whole amount in the object, divided by a daily benchmark for food. Nobody takes in the whole amount.",
  "leached-into-volume":
    "Arithmetic only: what a laboratory's acid drew out in a day. A meal draws out another amount, most often less.",
};
export const comparisonText = ({ label, value, unit }: ArithmeticComparison): string =>
  `${withUnit(significant(value), unit)}. ${comparisonLabels[label]}`;

/** "79.5 days of the benchmark 2.2 µg/day (…)". */
export const dailyText = ({ benchmark, days }: AmountsResult["daily"][number]): string =>
  `${withUnit(significant(days.value), days.unit)} ${withUnit(significant(benchmark.value), "µg/day")}`;

const notInChild: Caution = {
  code: "amount-not-in-child",
  title: "In the object, not in a child",
  text: "This is how much is in the object. It is not how much gets out, and not how much gets into a child.",
};
const notDust: Caution = {
  code: "amount-not-dust",
  title: "A picture, not a forecast",
  text: "The areas show how little it takes to reach a dust limit. They do not say that this object will turn to dust.",
};
const nextSteps: Caution = {
  code: "what-to-do",
  title: "What to do next",
  text: "Keep the object away from children and from food. Do not sand, scrape, cut or heat it. If a child has used it or chewed on it, ask a doctor about a blood lead test.",
};
const localRules: Caution = {
  code: "local-rules",
  title: "Ask those who know the place",
  text: "For paint, dust or soil in a home, ask a licensed lead assessor. Local codes come first: they may ask for more than the limits shown here.",
};

/** The cautions wherever a mass or an area is shown, in reading order. The one on lead stands where the element is lead. */
export const amountCautions = (element: string): Caution[] => [
  notInChild,
  notDust,
  ...(element === "Pb" ? [cautions["no-known-level"]] : []),
  nextSteps,
  localRules,
];
