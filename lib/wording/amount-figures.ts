import type { AmountsState } from "../amounts/amounts-form.ts";
import type { CoatConversion } from "../amounts/coat-of-part.ts";
import type { AmountsResult, AreaComparator, Estimate, MassComparator, ReferenceLoading } from "../amounts/types.ts";
import { amountLabelsIn } from "./amount-labels.ts";
import {
  amountRecord,
  areaText,
  digitsFor,
  estimateText,
  massText,
  nearestSentence,
  referencePeriod,
  spreadSentence,
} from "./amounts.ts";
import { elementName, elementTitle } from "./elements.ts";
import { amountFigureSentences as spanish } from "./es/amount-figures.ts";
import { formatWordsIn, numberText, plainDate, significant, withUnit } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";

/** The words of the drawings to scale and of the calculator's page. */
export const amountsPage = {
  title: "How much, and how far it would go",
  lead: "Work out how much lead is in a thing, and how little of it is enough. Nothing you enter is kept: it stands in the address of the page and nowhere else.",
  formTitle: "What you know",
  coatHint:
    "Give the amount on each square centimetre. Or leave it empty and give the content, the thickness and the density of the coat.",
  submit: "Work it out",
  clear: "Start again",
  examplesTitle: "Or begin with one of these",
  examplesNote: "Invented figures, to show how it works.",
  amountTitle: "How much",
  spreadTitle: "How far it would go",
  scaleTitle: "To scale",
  cautionsTitle: "What it does not tell",
  arithmeticTitle: "Beside daily benchmarks",
  arithmeticSummary: "Arithmetic only: nobody takes in what is in an object",
  arithmeticTotal: "The whole amount in the object",
  arithmeticLeach: "What the leach test drew out",
  takeTitle: "Take it along",
  print: "Print this page: it is made for one sheet, A4 or Letter. At 100 % the ball and the coins come out life size.",
  svg: "The drawings as SVG",
  png: "The drawings as PNG",
  address: "The address of this page holds all that was entered. Keep it or send it.",
  enteredTitle: "What was entered",
  pickTitle: "Pick a loading",
  pick: "Enter a loading of dust above, or take one that an authority has published:",
  nothing: "Nothing to work out yet",
  noDrawing: "There is no amount to draw in this address.",
  nothingText: "Fill in what you know, or begin with one of the examples.",
  unfinished: "Not all of it could be worked out. The reasons stand above.",
  partWeight: "Weight of the part",
  volume: "Volume",
  of: "Of",
  is: "Is",
  benchmark: "Benchmark",
  loading: "Loading",
  on: "On",
  goesOver: "It would go over",
  publishedFor: "Published for",
  drawing: "Drawing",
  drawn: "drawn",
  drawIt: "draw it",
  drawItAt: (loading: string): string => `draw it at ${loading}`,
  halved: "Halved",
  amount: "Amount",
  what: "What",
  across: "Across",
  weight: "Weight",
  sizeFrom: "Size from",
  area: "Area",
  howMany: "How many of it",
  workedOut: "worked out",
} as const;

export const amountExamples: readonly { text: string; state: Readonly<Record<string, string>> }[] = [
  {
    text: "A blob of solder, 2 to 3 mm across, 40 to 60 % lead",
    state: {
      from: "shape",
      shape: "sphere",
      diameter: "2 to 3",
      densityFrom: "alloy",
      rest: "Sn",
      content: "40 to 60",
      contentUnit: "%",
      loading: "10",
    },
  },
  {
    text: "A brass bell of 165 g with 2.5 to 3.7 % lead",
    state: { from: "weight", weight: "165 ± 1", content: "2.5 to 3.7", contentUnit: "%", loading: "5" },
  },
  {
    text: "Old paint on 25 cm², 1.0 ± 0.2 mg on each cm²",
    state: { from: "coat", area: "25", coatLoading: "1.0 ± 0.2", loading: "10" },
  },
];

export const amountPanel = {
  title: "How much that is",
  lead: "The content times the weight of the part, if the whole part holds as much as the spots tested.",
  leadCoat:
    "The amount on each square centimetre times the area of the part, if all of it holds as much as the spots tested.",
  more: "Take another loading, or change the figures",
  others: "In the other parts",
  coats: "In a coat: by weight, and on an area",
  coatNote:
    "Worked out from the thickness in the record and the densities of such a coat in our list. A content read through a thin coat is of coat and ground together, and says less than an amount on an area.",
} as const;

const figures = {
  of: (amount: string, element: string) => `${amount} of ${element}`,
  ballTitle: (atMost: boolean, element: string, amount: string, across: string) =>
    `${atMost ? "At most this much: as" : "As"} one ball of pure ${element}, ${amount} would be ${across} across.`,
  enlarged: (times: string) => `the same ball, ${times} times as large`,
  lifeSize: "Life size on paper printed at 100 %. A screen may show it larger or smaller, and the ruler with it.",
  smaller: "Drawn smaller than life, all of it alike: the ruler is drawn with it.",
  sizes: "The sizes drawn",
  areas: "The areas drawn",
  ball: (element: string) => `a ball of ${element}`,
  ballSource: (density: string) => `worked out from its weight and the density of the metal, ${density}`,
  areaAt: (area: string, loading: string) => `${area} at ${loading}`,
  oneScale: "All to one scale.",
  dashed: "The dashed squares are the ends of the range in which the area lies 95 times in 100.",
  /** A name in a drawing: without its article and what stands in brackets. */
  short: (name: string) => name.replace(/^an? /, "").replace(/ \(.*\)$/, ""),
  density: "Density",
  withinReach: "Within reach",
  guesses: "no: size and make-up are guesses",
  published: "At the loadings that an authority has published",
  halvedAgain: "Halved again and again",
  ladder: (area: string) => `Spread evenly over ${area}. Half the amount gives half the loading.`,
  needed: (area: string, loading: string, mass: string) => `To bring ${area} to ${loading} it takes ${mass}.`,
  onArea: (area: string, loading: string) => `Spread evenly over ${area}, it would come to ${loading}.`,
  coat: (first: string, element: string, thick: string, dense: string, second: string) =>
    `${first} of ${element}, in a coat ${thick} thick of ${dense}, is ${second}.`,
  entered: (amount: string, element: string) => `The amount entered: ${amount} of ${element}.`,
  beside: "This is how much is in the object. It is not how much gets out, and not how much gets into a child.",
  allOfIt: "all of it",
  times: (halvings: number) => (halvings === 1 ? "once" : halvings === 2 ? "twice" : `${halvings} times`),
  drawnAt: (reference: string) => `Drawn at one published loading of dust: ${reference}. You may take another.`,
  sinceYear: (year: string) => `since ${year}`,
  years: (from: string, until: string) => `${from} to ${until}`,
  due: (held: string, year: string) => `${held}, due ${year}`,
  askedFrom: (period: string, day: string) => `${period}; asked for from ${day}`,
};

const english = { page: amountsPage, panel: amountPanel, figures, examples: amountExamples.map(({ text }) => text) };
export type AmountFigureSentences = Sentences<typeof english>;
export const amountFiguresIn: ByLanguage<AmountFigureSentences> = { en: english, es: spanish };
export const {
  sizes: grainTableCaption,
  areas: areaTableCaption,
  published: referencesCaption,
  halvedAgain: ladderCaption,
  beside: cautionBeside,
} = figures;

type Grain = NonNullable<AmountsResult["grain"]>;
type Spread = NonNullable<AmountsResult["spread"]>;

/** "144 mg of lead", "at most 35 mg of lead": the name of the ball in its drawing, to the digits the amount is known to. */
export const grainLabel = (
  amount: Estimate<"mg">,
  grain: Grain,
  element: string,
  language: Language = "en",
): string => {
  const mass = massText(grain.massMg, digitsFor(amount), language);
  return amountFiguresIn[language].figures.of(
    amount.atMost ? formatWordsIn[language].atMost(mass) : mass,
    elementName(element, language),
  );
};

export const grainTitle = (amount: Estimate<"mg">, grain: Grain, element: string, language: Language = "en"): string =>
  amountFiguresIn[language].figures.ballTitle(
    amount.atMost,
    elementName(element, language),
    massText(grain.massMg, digitsFor(amount), language),
    withUnit(significant(grain.diameterMm, 2), "mm", language),
  );

export const enlargedLabel = (times: number, language: Language = "en"): string =>
  amountFiguresIn[language].figures.enlarged(numberText(times, 3, language));

/** How the ball is drawn: life size, or smaller together with its ruler. */
export const grainScaleNote = (scales: readonly number[], language: Language = "en"): string => {
  const { lifeSize, smaller } = amountFiguresIn[language].figures;
  return scales.every((scale) => scale === 1) ? lifeSize : smaller;
};

export const ballRow = (element: string, language: Language = "en"): string =>
  amountFiguresIn[language].figures.ball(elementName(element, language));
export const ballSource = (density: number, language: Language = "en"): string =>
  amountFiguresIn[language].figures.ballSource(withUnit(significant(density, 4), "g/cm³", language));

/** "28 800 ft² at 5 µg/ft²": the name of the area in its drawing. */
export const areaLabel = ({ area, loading }: Spread, language: Language = "en"): string => {
  const shown = withUnit(significant(area.atMost ? area.interval[1] : area.value, digitsFor(area)), "ft²", language);
  return amountFiguresIn[language].figures.areaAt(
    area.atMost ? formatWordsIn[language].atMost(shown) : shown,
    withUnit(significant(loading.value), "µg/ft²", language),
  );
};

/** The title of the areas: what is drawn, and the nearest thing a reader can picture. */
export function areaTitle(spread: Spread, nearest: AmountsResult["nearestArea"], language: Language = "en"): string {
  const [first] = nearest;
  const like = first ? ` ${nearestSentence(first, { atMost: spread.area.atMost }, language)}` : "";
  return `${spreadSentence(spread, language)}${like}`;
}
export const areaNote = (interval: boolean, language: Language = "en"): string => {
  const { oneScale, dashed } = amountFiguresIn[language].figures;
  return interval ? `${oneScale} ${dashed}` : oneScale;
};

/** A name in a drawing: without its article and what stands in brackets. */
export const shortName = (one: AreaComparator | MassComparator, language: Language = "en"): string =>
  amountFiguresIn[language].figures.short(amountRecord(one.name, language));

/** Comparators' areas in both units. */
export const comparatorArea = (one: AreaComparator, language: Language = "en"): string =>
  areaText(one.area, 4, language);

/** What was typed, field by field, as it bears on the answer: the head of a printed sheet. */
export function enteredFacts(
  state: AmountsState,
  names: { material: (id: string) => string; dimensions: readonly string[]; dimensionKind: (name: string) => string },
  language: Language = "en",
): { name: string; value: string }[] {
  const { fields, sources, shapes, densitySources } = amountLabelsIn[language];
  const words = amountFiguresIn[language].figures;
  const facts: { name: string; value: string }[] = [
    { name: fields.element, value: elementTitle(state.element, language) },
  ];
  // What was typed stays as it was typed.
  const add = (field: keyof AmountsState, unit = "") => {
    if (state[field].trim() !== "")
      facts.push({
        name: fields[field].replace(/, [^,]*$/, ""),
        value: unit === "" ? state[field] : withUnit(state[field], unit),
      });
  };
  if (state.from !== "none") facts.push({ name: fields.from, value: sources[state.from] });
  if (state.from === "shape") {
    facts.push({ name: fields.shape, value: shapes[state.shape] });
    for (const name of names.dimensions)
      add(name as keyof AmountsState, names.dimensionKind(name) === "area" ? state.areaUnit : state.lengthUnit);
  }
  if (state.from === "weight") add("weight", state.weightUnit);
  if (state.from === "coat") {
    add("area", state.areaUnit);
    add("coatLoading", state.coatLoadingUnit);
    add("coatThickness", "µm");
  }
  if (state.from === "shape" || state.from === "coat") {
    if (state.densityFrom === "material" && state.material !== "")
      facts.push({ name: words.density, value: names.material(state.material) });
    if (state.densityFrom === "alloy" && state.rest !== "")
      facts.push({ name: words.density, value: `${densitySources.alloy}, ${elementName(state.rest, language)}` });
    if (state.densityFrom === "entered") add("density", "g/cm³");
  }
  if (state.from !== "amount" && state.from !== "none") add("content", state.contentUnit);
  if (state.from === "amount") add("amount", state.amountUnit);
  add("leached", "µg/mL");
  add("volume", "mL");
  add("itemWeight", "g");
  if (state.sealed === "yes") facts.push({ name: words.withinReach, value: words.guesses });
  add("loading", state.loadingUnit);
  add("over", state.overUnit);
  add("day");
  return facts;
}

export const ladderSentence = (area: Estimate<"ft²">, language: Language = "en"): string =>
  amountFiguresIn[language].figures.ladder(estimateText(area, language));
export const neededSentence = (
  { area, loading, mass }: NonNullable<AmountsResult["needed"]>,
  language: Language = "en",
): string =>
  amountFiguresIn[language].figures.needed(
    estimateText(area, language),
    estimateText(loading, language),
    estimateText(mass, language),
  );
export const onAreaSentence = (
  { area, loading }: NonNullable<AmountsResult["onArea"]>,
  language: Language = "en",
): string => amountFiguresIn[language].figures.onArea(estimateText(area, language), estimateText(loading, language));

/** "1.0 mg/cm² (0.8 to 1.2 mg/cm²) of lead, in a coat 100 µm thick of 1.2 to 4 g/cm³, is 38 500 mg/kg (…)." */
export function coatConversionSentence(coat: CoatConversion, element: string, language: Language = "en"): string {
  const [first, second] = coat.from === "loading" ? [coat.loading, coat.content] : [coat.content, coat.loading];
  const { to } = formatWordsIn[language];
  return amountFiguresIn[language].figures.coat(
    estimateText(first, language),
    elementName(element, language),
    withUnit(significant(coat.thicknessUm, 3), "µm", language),
    withUnit(`${coat.density.min} ${to} ${coat.density.max}`, "g/cm³", language),
    estimateText(second, language),
  );
}

/** "The amount entered: 2.189 g of lead." */
export const amountSentence = (amount: Estimate<"mg">, element: string, language: Language = "en"): string =>
  amountFiguresIn[language].figures.entered(estimateText(amount, language), elementName(element, language));

/** "all of it", "once", "3 times". */
export const halvedText = (halvings: number, language: Language = "en"): string => {
  const { allOfIt, times } = amountFiguresIn[language].figures;
  return halvings === 0 ? allOfIt : times(halvings);
};

/** Which loading an item's page draws at: the newest published one for floors. */
export const loadingSentence = (reference: string, language: Language = "en"): string =>
  amountFiguresIn[language].figures.drawnAt(reference);

/** The same in years, for a printed sheet: "2001 to 2020", "since 2025, due 2026". */
export function referenceYears({ from, until, complianceFrom }: ReferenceLoading, language: Language = "en"): string {
  const words = amountFiguresIn[language].figures;
  const year = (day: string): string => day.slice(0, 4);
  const held = until === null ? words.sinceYear(year(from)) : words.years(year(from), year(until));
  return complianceFrom === null ? held : words.due(held, year(complianceFrom));
}

/** The days a published loading holds, with the day from which it is asked for where that is later. */
export const referenceDays = (reference: ReferenceLoading, language: Language = "en"): string => {
  const period = referencePeriod(reference, language);
  return reference.complianceFrom === null
    ? period
    : amountFiguresIn[language].figures.askedFrom(period, plainDate(reference.complianceFrom, language));
};
