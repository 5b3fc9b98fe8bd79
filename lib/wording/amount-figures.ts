import type { AmountsState } from "../amounts/amounts-form.ts";
import type { CoatConversion } from "../amounts/coat-of-part.ts";
import type { AmountsResult, AreaComparator, Estimate, MassComparator, ReferenceLoading } from "../amounts/types.ts";
import { amountFieldLabels, amountSourceLabels, densitySourceLabels, shapeLabels } from "./amount-labels.ts";
import {
  areaText,
  digitsFor,
  estimateText,
  massText,
  nearestSentence,
  referencePeriod,
  spreadSentence,
} from "./amounts.ts";
import { elementName, elementTitle } from "./elements.ts";
import { plainDate, significant, withUnit } from "./formats.ts";

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
  nothingText: "Fill in what you know, or begin with one of the examples.",
  unfinished: "Not all of it could be worked out. The reasons stand above.",
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

/** "144 mg of lead", "at most 35 mg of lead": the name of the ball in its drawing, to the digits the amount is known to. */
export const grainLabel = (amount: Estimate<"mg">, grain: NonNullable<AmountsResult["grain"]>, element: string) =>
  `${amount.atMost ? "at most " : ""}${massText(grain.massMg, digitsFor(amount))} of ${elementName(element)}`;

export const grainTitle = (amount: Estimate<"mg">, grain: NonNullable<AmountsResult["grain"]>, element: string) =>
  `${amount.atMost ? "At most this much: as" : "As"} one ball of pure ${elementName(element)}, ${massText(grain.massMg, digitsFor(amount))} would be ${withUnit(significant(grain.diameterMm, 2), "mm")} across.`;

export const enlargedLabel = (times: number): string => `the same ball, ${significant(times)} times as large`;

/** How the ball is drawn: life size, or smaller together with its ruler. */
export const grainScaleNote = (scales: readonly number[]): string =>
  scales.every((scale) => scale === 1)
    ? "Life size on paper printed at 100 %. A screen may show it larger or smaller, and the ruler with it."
    : "Drawn smaller than life, all of it alike: the ruler is drawn with it.";

export const grainTableCaption = "The sizes drawn";
export const areaTableCaption = "The areas drawn";
export const ballRow = (element: string): string => `a ball of ${elementName(element)}`;
export const ballSource = (density: number): string =>
  `worked out from its weight and the density of the metal, ${withUnit(significant(density, 4), "g/cm³")}`;

/** "28 800 ft² at 5 µg/ft²": the name of the area in its drawing. */
export const areaLabel = ({ area, loading }: NonNullable<AmountsResult["spread"]>): string => {
  const shown = area.atMost ? area.interval[1] : area.value;
  return `${area.atMost ? "at most " : ""}${withUnit(significant(shown, digitsFor(area)), "ft²")} at ${withUnit(significant(loading.value), "µg/ft²")}`;
};

/** The title of the areas: what is drawn, and the nearest thing a reader can picture. */
export function areaTitle(spread: NonNullable<AmountsResult["spread"]>, nearest: AmountsResult["nearestArea"]): string {
  const [first] = nearest;
  const like = first ? ` ${nearestSentence(first, { atMost: spread.area.atMost })}` : "";
  return `${spreadSentence(spread)}${like}`;
}
export const areaNote = (interval: boolean): string =>
  interval
    ? "All to one scale. The dashed squares are the ends of the range in which the area lies 95 times in 100."
    : "All to one scale.";

/** A name in a drawing: without its article and what stands in brackets. */
export const shortName = (one: AreaComparator | MassComparator): string =>
  one.name.replace(/^an? /, "").replace(/ \(.*\)$/, "");

/** Comparators' areas in both units. */
export const comparatorArea = (one: AreaComparator): string => areaText(one.area, 4);

/** What was typed, field by field, as it bears on the answer: the head of a printed sheet. */
export function enteredFacts(
  state: AmountsState,
  names: { material: (id: string) => string; dimensions: readonly string[]; dimensionKind: (name: string) => string },
): { name: string; value: string }[] {
  const facts: { name: string; value: string }[] = [
    { name: amountFieldLabels.element, value: elementTitle(state.element) },
  ];
  const add = (field: keyof AmountsState, unit = "") => {
    if (state[field].trim() !== "")
      facts.push({
        name: amountFieldLabels[field].replace(/, [^,]*$/, ""),
        value: unit === "" ? state[field] : withUnit(state[field], unit),
      });
  };
  if (state.from !== "none") facts.push({ name: amountFieldLabels.from, value: amountSourceLabels[state.from] });
  if (state.from === "shape") {
    facts.push({ name: amountFieldLabels.shape, value: shapeLabels[state.shape] });
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
      facts.push({ name: "Density", value: names.material(state.material) });
    if (state.densityFrom === "alloy" && state.rest !== "")
      facts.push({ name: "Density", value: `${densitySourceLabels.alloy}, ${elementName(state.rest)}` });
    if (state.densityFrom === "entered") add("density", "g/cm³");
  }
  if (state.from !== "amount" && state.from !== "none") add("content", state.contentUnit);
  if (state.from === "amount") add("amount", state.amountUnit);
  add("leached", "µg/mL");
  add("volume", "mL");
  add("itemWeight", "g");
  if (state.sealed === "yes") facts.push({ name: "Within reach", value: "no: size and make-up are guesses" });
  add("loading", state.loadingUnit);
  add("over", state.overUnit);
  add("day");
  return facts;
}

/** The caption of a list of published loadings. */
export const referencesCaption = "At the loadings that an authority has published";
export const ladderCaption = "Halved again and again";
export const ladderSentence = (area: Estimate<"ft²">): string =>
  `Spread evenly over ${estimateText(area)}. Half the amount gives half the loading.`;
export const neededSentence = ({ area, loading, mass }: NonNullable<AmountsResult["needed"]>): string =>
  `To bring ${estimateText(area)} to ${estimateText(loading)} it takes ${estimateText(mass)}.`;
export const onAreaSentence = ({ area, loading }: NonNullable<AmountsResult["onArea"]>): string =>
  `Spread evenly over ${estimateText(area)}, it would come to ${estimateText(loading)}.`;

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

/** "1.0 mg/cm² (0.8 to 1.2 mg/cm²) of lead, in a coat 100 µm thick of 1.2 to 4 g/cm³, is 38 500 mg/kg (…)." */
export function coatConversionSentence(coat: CoatConversion, element: string): string {
  const [first, second] = coat.from === "loading" ? [coat.loading, coat.content] : [coat.content, coat.loading];
  const thick = withUnit(significant(coat.thicknessUm, 3), "µm");
  const dense = withUnit(`${coat.density.min} to ${coat.density.max}`, "g/cm³");
  return `${estimateText(first)} of ${elementName(element)}, in a coat ${thick} thick of ${dense}, is ${estimateText(second)}.`;
}

/** "The amount entered: 2.189 g of lead." */
export const amountSentence = (amount: Estimate<"mg">, element: string): string =>
  `The amount entered: ${estimateText(amount)} of ${elementName(element)}.`;

/** Beside every amount. */
export const cautionBeside =
  "This is how much is in the object. It is not how much gets out, and not how much gets into a child.";

/** "all of it", "once", "3 times". */
export const halvedText = (halvings: number): string =>
  halvings === 0 ? "all of it" : halvings === 1 ? "once" : halvings === 2 ? "twice" : `${halvings} times`;

/** Which loading an item's page draws at: the newest published one for floors. */
export const loadingSentence = (reference: string): string =>
  `Drawn at one published loading of dust: ${reference}. You may take another.`;

/** The same in years, for a printed sheet: "2001 to 2020", "since 2025, due 2026". */
export function referenceYears({ from, until, complianceFrom }: ReferenceLoading): string {
  const year = (day: string): string => day.slice(0, 4);
  const held = until === null ? `since ${year(from)}` : `${year(from)} to ${year(until)}`;
  return complianceFrom === null ? held : `${held}, due ${year(complianceFrom)}`;
}

/** The days a published loading holds, with the day from which it is asked for where that is later. */
export const referenceDays = (reference: ReferenceLoading): string =>
  reference.complianceFrom === null
    ? referencePeriod(reference)
    : `${referencePeriod(reference)}; asked for from ${plainDate(reference.complianceFrom)}`;
