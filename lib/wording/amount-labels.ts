import type { AmountSource, AmountsState } from "../amounts/amounts-form.ts";
import type { GeometryShape } from "../amounts/types.ts";
import { amountLabels as spanish } from "./es/amount-labels.ts";
import { fieldName } from "./form-fields.ts";
import type { ByLanguage, Language } from "./language.ts";

/** Labels of the calculator's fields, as they stand over the field. */
export const amountFieldLabels: Record<keyof AmountsState, string> = {
  element: "Element",
  from: "Work the amount out from",
  shape: "Shape",
  diameter: "Diameter",
  outerDiameter: "Outer diameter",
  innerDiameter: "Inner diameter",
  baseDiameter: "Diameter of the base",
  bottomDiameter: "Diameter at the bottom",
  topDiameter: "Diameter at the top",
  length: "Length",
  width: "Width",
  height: "Height",
  thickness: "Thickness",
  wall: "Thickness of the wall",
  area: "Area",
  lengthUnit: "Unit of length",
  areaUnit: "Unit of area",
  densityFrom: "Density from",
  material: "Material",
  rest: "Other metal",
  density: "Density, g/cm³",
  content: "Content",
  contentUnit: "Unit of content",
  weight: "Weight of the part",
  weightUnit: "Unit of weight",
  coatLoading: "Amount on each square centimetre",
  coatLoadingUnit: "Unit of the amount on an area",
  coatThickness: "Thickness of the coat, µm",
  amount: "Amount",
  amountUnit: "Unit of the amount",
  itemWeight: "Weight of the whole object, g",
  sealed: "Nobody can reach this part: the figures are guesses",
  loading: "Loading of dust",
  loadingUnit: "Unit of loading",
  over: "Area it is spread over",
  overUnit: "Unit of that area",
  leached: "Leach result, µg/mL",
  volume: "What the vessel holds, mL",
  day: "Limits of this day",
};

/** "the outer diameter": a field inside a sentence, without its unit. */
export function amountFieldName(field: string, language: Language = "en"): string {
  const { fields, inSentence } = amountLabelsIn[language];
  const label = Object.hasOwn(fields, field) ? fields[field as keyof AmountsState] : fieldName(field);
  const words = label.replace(/, [^,]*$/, "");
  return inSentence(`${words.charAt(0).toLowerCase()}${words.slice(1)}`);
}

export const amountSourceLabels: Record<AmountSource, string> = {
  shape: "Its shape and size",
  weight: "Its weight",
  coat: "A coat on an area",
  amount: "An amount I know",
  none: "No amount: areas and loadings only",
};

export const shapeLabels: Record<GeometryShape, string> = {
  disc: "Disc",
  ring: "Flat ring",
  cylinder: "Cylinder",
  tube: "Tube",
  sphere: "Ball",
  cap: "Dome (part of a ball)",
  "half-ellipsoid": "Drop or bead cut in half",
  box: "Block",
  frustum: "Cone without its tip",
  wire: "Wire",
  sheet: "Sheet of a known area",
};

export const densitySourceLabels: Record<AmountsState["densityFrom"], string> = {
  material: "A material from the list",
  alloy: "Two metals: this one and another",
  entered: "A density I know",
};

/** How to write a quantity; stands once by the form. */
export const quantityHint =
  "Write one number (12), a number with ± (12 ± 0.5, meaning 95 times in 100), or a range (10 to 14, meaning anywhere between). Write < 5 for “below 5”.";

/** Names of the inputs for “what to know better”. */
export const shareNames: Readonly<Record<string, string>> = {
  density: "the density",
  "density-rule": "the rule for the density of an alloy",
  content: "the content",
  weight: "the weight of the part",
  loading: "the amount on each square centimetre",
};

export type AmountLabels = {
  fields: Record<keyof AmountsState, string>;
  inSentence: (label: string) => string;
  sources: Record<AmountSource, string>;
  shapes: Record<GeometryShape, string>;
  densitySources: Record<AmountsState["densityFrom"], string>;
  hint: string;
  dayHint: string;
  shares: Readonly<Record<string, string>>;
};
export const amountLabelsIn: ByLanguage<AmountLabels> = {
  en: {
    fields: amountFieldLabels,
    inSentence: (label) => `the ${label}`,
    sources: amountSourceLabels,
    shapes: shapeLabels,
    densitySources: densitySourceLabels,
    hint: quantityHint,
    dayHint: "Such as 2026-11-24. Empty: the limits of all days.",
    shares: shareNames,
  },
  es: spanish,
};
export const shareName = (input: string, language: Language = "en"): string =>
  amountLabelsIn[language].shares[input] ?? amountFieldName(input, language);
