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
import { type Caution, cautionsIn } from "./cautions.ts";
import { elementName } from "./elements.ts";
import { amountRecords } from "./es/amount-records.ts";
import { amountSentences as spanish } from "./es/amounts.ts";
import {
  counted,
  formatWordsIn,
  groupDigits,
  numberText,
  plainDate,
  significant,
  toDigits,
  withUnit,
} from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";

export const surfaceNames: Record<ReferenceLoading["surface"], string> = {
  floor: "floors",
  sill: "window sills",
  trough: "window troughs",
};

/** What must stand beside a comparison that is arithmetic only. */
export const comparisonLabels: Record<ArithmeticComparison["label"], string> = {
  "total-over-daily-intake":
    "Arithmetic only: the whole amount in the object, divided by a daily benchmark for food. Nobody takes in the whole amount.",
  "leached-into-volume":
    "Arithmetic only: what a laboratory's acid drew out in a day. A meal draws out another amount, most often less.",
};

const english = {
  holds: (about: boolean, amount: string, element: string) =>
    `This part holds ${about ? "about " : ""}${amount} of ${element}.`,
  sealed: "This is an estimate: nobody could reach this part, so its size and what it is made of are guesses.",
  brackets:
    "The numbers in brackets are the range in which the true amount lies 95 times in 100, if the figures entered are right.",
  dominates: (most: boolean, what: string, share: string) =>
    `${most ? "Most of the doubt comes from" : "The largest part of the doubt comes from"} ${what} (${share}). Measure that better first.`,
  density: (density: string, source: string, checked: string) =>
    `Density used: ${density}. Where it comes from: ${source}${checked}.`,
  spread: (loading: string, area: string) => `Spread evenly, it would come to ${loading} over ${area}.`,
  surfaces: surfaceNames,
  since: (day: string) => `since ${day}`,
  fromTo: (from: string, until: string) => `from ${from} to ${until}`,
  reference: (loading: string, surface: string, period: string, area: string) =>
    `At ${loading}, the dust limit for ${surface} ${period}: ${area}.`,
  allOfIt: "All of it",
  half: "Half",
  halved: (times: number) => `Halved ${counted(times, "time")}`,
  about: (atMost: boolean, what: string) => `${atMost ? "At most about" : "About"} ${what}.`,
  areaOf: (thing: string) => `the area of ${thing}`,
  weightOf: (thing: string) => `the weight of ${thing}`,
  times: (times: string, what: string) => `${times} times ${what}`,
  shareOf: (share: string, what: string) => `${share} of ${what}`,
  onePartIn: (parts: string) => `one part in ${parts}`,
  coin: "The weight of a coin is the weight of its metal. It is not the amount of lead in a piece of that size.",
  ball: (element: string, amount: string, across: string) =>
    `As one ball of pure ${element}, ${amount} would be ${across} across.`,
  coating: (loading: string, content: string) =>
    `In a coat of this thickness and density, ${loading} and ${content} are the same thing.`,
  comparisons: comparisonLabels,
  notInChild: {
    code: "amount-not-in-child",
    title: "In the object, not in a child",
    text: "This is how much is in the object. It is not how much gets out, and not how much gets into a child.",
  },
  notDust: {
    code: "amount-not-dust",
    title: "A picture, not a forecast",
    text: "The areas show how little it takes to reach a dust limit. They do not say that this object will turn to dust.",
  },
  nextSteps: {
    code: "what-to-do",
    title: "What to do next",
    text: "Keep the object away from children and from food. Do not sand, scrape, cut or heat it. If a child has used it or chewed on it, ask a doctor about a blood lead test.",
  },
  localRules: {
    code: "local-rules",
    title: "Ask those who know the place",
    text: "For paint, dust or soil in a home, ask a licensed lead assessor. Local codes come first: they may ask for more than the limits shown here.",
  },
};
export type AmountSentences = Sentences<typeof english>;
export const amountsIn: ByLanguage<AmountSentences> = { en: english, es: spanish };
export const { sealed: sealedSentence, brackets: bracketsSentence, coin: coinSentence } = english;

/** Names, sizes and sources of the calculator's lists in the language of the page; what is not listed there as it stands. */
export const amountRecord = (text: string, language: Language = "en"): string => {
  if (language === "en") return text;
  const [, metal, rest] = /^ideal-volume rule for (\w+) and (\w+)$/.exec(text) ?? [];
  if (metal && rest) return `regla del volumen ideal para ${metal} y ${rest}`;
  return amountRecords[text] ?? text;
};

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
export function estimateText(estimate: Estimate, language: Language = "en"): string {
  const words = formatWordsIn[language];
  const shown = estimate.atMost ? estimate.interval[1] : estimate.value;
  const { unit, factor } = readableUnit(estimate.unit, shown);
  const digits = digitsFor(estimate);
  if (estimate.atMost) return words.atMost(withUnit(toDigits(roundedUp(shown * factor), 2), unit, language));
  const [low, high] = estimate.interval;
  if (low === high) return withUnit(significant(estimate.value * factor, digits), unit, language);
  const say = (value: number): string => toDigits(value * factor, digits);
  return `${withUnit(say(estimate.value), unit, language)} (${groupDigits(say(low), language)} ${words.to} ${withUnit(say(high), unit, language)})`;
}

/** A bound is rounded up to two digits, never down. The small allowance is for 1.7 written in binary. */
function roundedUp(value: number): number {
  const place = 10 ** (Math.floor(Math.log10(value)) - 1);
  return Math.ceil(value / place - 1e-9) * place;
}

/** A mass without its interval, for captions and tables: "34 mg". */
export function massText(mg: number, digits = 3, language: Language = "en"): string {
  const { unit, factor } = readableUnit("mg", mg);
  return withUnit(significant(mg * factor, digits), unit, language);
}

/** "6804 ft² (632 m²)". */
export const areaText = (ft2: number, digits = 3, language: Language = "en"): string =>
  `${withUnit(significant(ft2, digits), "ft²", language)} (${withUnit(significant(convert(ft2, "ft²", "m²"), digits), "m²", language)})`;

/** "This part holds about 1.3 g (0.83 to 1.9 g) of lead." */
export function massSentence(result: MassResult, element: string, language: Language = "en"): string {
  const say = amountsIn[language];
  const about = !(result.mass.atMost || result.mass.u === 0);
  const sentence = say.holds(about, estimateText(result.mass, language), elementName(element, language));
  return result.sealed ? `${sentence} ${say.sealed}` : sentence;
}

/** "Most of the doubt comes from the content (93 %)." Null where nothing is in doubt. */
export function dominatesSentence({ dominates, shares }: MassResult, language: Language = "en"): string | null {
  const first = shares[0];
  if (dominates === null || first === undefined) return null;
  return amountsIn[language].dominates(
    first.share > 0.5,
    shareName(dominates, language),
    shareText(first.share, language),
  );
}

/** "Density used: 8.69 g/cm³. From …" */
export const densitySentence = (
  { value, source, checked }: NonNullable<MassResult["density"]>,
  language: Language = "en",
): string => {
  const how = checked === "entered" ? "" : ` (${amountRecord(checked, language)})`;
  const [name, ...rest] = source.split(": ");
  const said = [amountRecord(name!, language), ...(rest.length > 0 ? [amountRecord(rest.join(": "), language)] : [])];
  return amountsIn[language].density(withUnit(significant(value, 4), "g/cm³", language), said.join(": "), how);
};

/** "Spread evenly, that would come to 5 µg/ft² over 6804 ft² (632 m²)." */
export const spreadSentence = (
  { loading, area }: NonNullable<AmountsResult["spread"]>,
  language: Language = "en",
): string => amountsIn[language].spread(estimateText(loading, language), estimateText(area, language));

export const referencePeriod = ({ from, until }: ReferenceLoading, language: Language = "en"): string =>
  until === null
    ? amountsIn[language].since(plainDate(from, language))
    : amountsIn[language].fromTo(plainDate(from, language), plainDate(until, language));

const loadingText = (value: number, language: Language, digits = 3): string =>
  withUnit(significant(value, digits), "µg/ft²", language);

/** "40 µg/ft², floors, from 6 March 2001 to 5 January 2020" */
export const referenceText = (reference: ReferenceLoading, language: Language = "en"): string =>
  `${loadingText(reference.value, language)}, ${amountsIn[language].surfaces[reference.surface]}, ${referencePeriod(reference, language)}`;

export const referenceSentence = (
  { reference, area }: AmountsResult["references"][number],
  language: Language = "en",
): string =>
  amountsIn[language].reference(
    loadingText(reference.value, language),
    amountsIn[language].surfaces[reference.surface],
    referencePeriod(reference, language),
    estimateText(area, language),
  );

/** "Half of that, and the loading is half: 20 µg/ft²." One line a step. */
export function halvingText({ halvings, mass, loading }: HalvingStep, language: Language = "en"): string {
  const say = amountsIn[language];
  const of = mass === null ? "" : `${massText(mass, 4, language)}: `;
  const step = halvings === 0 ? say.allOfIt : halvings === 1 ? say.half : say.halved(halvings);
  return `${step}, ${of}${loadingText(loading, language, 4)}`;
}

/**
 * "About 2.4 times the area of a tennis court (doubles lines)." A page names the size and its source beside it. `atMost` for a bound:
 * "At most about …".
 */
export function nearestSentence(
  { comparator, times }: Nearest<AreaComparator | MassComparator>,
  { atMost = false }: { atMost?: boolean } = {},
  language: Language = "en",
): string {
  const say = amountsIn[language];
  const name = amountRecord(comparator.name, language);
  const what = comparator.kind === "area" ? say.areaOf(name) : say.weightOf(name);
  if (times > 0.95 && times < 1.05) return say.about(atMost, what);
  return say.about(
    atMost,
    times >= 1 ? say.times(numberText(times, 2, language), what) : say.shareOf(shareOf(times, language), what),
  );
}
const shareOf = (times: number, language: Language): string =>
  times >= 0.01
    ? `${numberText(100 * times, 2, language)} %`
    : amountsIn[language].onePartIn(numberText(1 / times, 2, language));

/** Where a comparator's size comes from: "78 × 36 ft (2808 ft²); pages on court sizes …, second-hand". */
export const comparatorSource = (
  { size, source, checked }: AreaComparator | MassComparator,
  language: Language = "en",
): string => {
  const said = `${amountRecord(size, language)}; ${amountRecord(source, language)}`;
  return checked === "assumption" ? said : `${said} (${amountRecord(checked, language)})`;
};

export const grainSentence = (
  { massMg, diameterMm }: NonNullable<AmountsResult["grain"]>,
  element: string,
  language: Language = "en",
): string =>
  amountsIn[language].ball(
    elementName(element, language),
    massText(massMg, 3, language),
    withUnit(significant(diameterMm, 2), "mm", language),
  );

export const coatingSentence = (
  { loading, content }: NonNullable<AmountsResult["coating"]>,
  language: Language = "en",
): string => amountsIn[language].coating(estimateText(loading, language), estimateText(content, language));

export const comparisonText = ({ label, value, unit }: ArithmeticComparison, language: Language = "en"): string =>
  `${withUnit(significant(value), unit, language)}. ${amountsIn[language].comparisons[label]}`;

/** "79.5 days of the benchmark 2.2 µg/day (…)". */
export const dailyText = ({ benchmark, days }: AmountsResult["daily"][number], language: Language = "en"): string =>
  `${withUnit(significant(days.value), days.unit, language)} ${withUnit(significant(benchmark.value), "µg/day", language)}`;

/** The cautions wherever a mass or an area is shown, in reading order. The one on lead stands where the element is lead. */
export const amountCautions = (element: string, language: Language = "en"): Caution[] => {
  const say = amountsIn[language];
  return [
    say.notInChild,
    say.notDust,
    ...(element === "Pb" ? [cautionsIn[language].always["no-known-level"]] : []),
    say.nextSteps,
    say.localRules,
  ];
};
