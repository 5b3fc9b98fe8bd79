import { guardedLimits } from "../limits/guarded-limits.ts";
import { type IecBand, type IecElement, type IecMatrix, iecElements, iecScreening } from "../limits/iec-screening.ts";
import type { SnapshotDecision, SnapshotResult } from "../publication/snapshot.ts";
import { elementName } from "./elements.ts";
import { guardBandSentences as spanish } from "./es/guard-bands.ts";
import { amountText, numberText } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";

const bands: Record<Exclude<IecBand["band"], "none">, string> = {
  under: "at or under the lower mark of the screening table",
  between: "between its marks: the table asks for a chemical test",
  over: "at or over its upper mark",
};
const matrixNames: Record<IecMatrix, string> = { polymer: "polymer", metal: "metal", composite: "composite" };

const english = {
  aboveFrom: (amount: string) => `above from ${amount}`,
  belowUpTo: (amount: string, above: string) => `below up to ${amount}, ${above}`,
  neverBelow: (above: string) => `never below; ${above}`,
  bands,
  matrices: matrixNames,
  lowerMark: (amount: string) => `lower mark ${amount}`,
  upperMark: (amount: string) => `upper mark ${amount}`,
  moved: (marks: string) => ` (${marks}, each moved by 3 standard uncertainties)`,
  screening: (element: string, matrix: string, band: string) => `For ${element} in a ${matrix} the number is ${band}.`,
  title: "An extra: the screening table for electrical equipment",
  note: "IEC 62321-3-1:2013, read as reprinted in a test report; the edition of 2026 was not seen. To compare only: things that are no electrical equipment are not in its scope, and it is no verdict.",
};
export type GuardBandSentences = Sentences<typeof english>;
export const guardBandsIn: ByLanguage<GuardBandSentences> = { en: english, es: spanish };

/**
 * Where a verdict would turn for a result as uncertain as this one: "below up to 90.1, above from 110 mg/kg". Null where it hangs on
 * more than value and u: a lopsided or uneven result, a non-detect, a sum, a rule without a number.
 *
 * @example turnsText({ state: "quantified", u: 6, nuEff: null, asymmetric: false, flags: [], unit: "mg/kg" }, { value: 100, element: "Pb" })
 *   // "below up to 90.1, above from 110 mg/kg"
 */
export function turnsText(
  result: Pick<SnapshotResult, "state" | "u" | "nuEff" | "asymmetric" | "flags" | "unit">,
  decision: Pick<SnapshotDecision, "value" | "element">,
  language: Language = "en",
): string | null {
  const { state, u, nuEff, asymmetric, flags, unit } = result;
  if (state !== "quantified" || asymmetric || flags.includes("uneven") || decision.element?.includes("+")) return null;
  if (u === null || u === 0 || decision.value === null) return null;
  const { below, above } = guardedLimits(decision.value, { u, nu: nuEff });
  const say = guardBandsIn[language];
  const from = say.aboveFrom(amountText(above, unit, language));
  return below > 0 ? say.belowUpTo(numberText(below, 3, language), from) : say.neverBelow(from);
}

const matrices: Partial<Record<string, IecMatrix>> = {
  pvc: "polymer",
  abs: "polymer",
  "other-plastic": "polymer",
  brass: "metal",
  "zinc-alloy": "metal",
  solder: "metal",
  steel: "metal",
  aluminium: "metal",
  copper: "metal",
};

/**
 * A result beside the three-way screening table for electrical equipment, as an extra; null where the table has no row for it: other
 * elements, other materials, coats, results without a value or a detection limit.
 */
export function screeningSentence(
  part: { material: string; form: "bulk" | "coating" },
  result: Pick<SnapshotResult, "element" | "quantity" | "state" | "value" | "u" | "below" | "unit">,
  language: Language = "en",
): string | null {
  const say = guardBandsIn[language];
  const { element, state, value, u, below, unit } = result;
  const matrix = matrices[part.material];
  const listed = iecElements.find((one): one is IecElement => one === element);
  if (!matrix || !listed || part.form !== "bulk" || result.quantity !== "bulk-mass-fraction") return null;
  const detected = state === "quantified" && value !== null && u !== null;
  if (!detected && !(state === "not-detected" && below !== null)) return null;
  const { band, underUpTo, overFrom } = iecScreening({
    element: listed,
    matrix,
    value: detected ? value : null,
    below: detected ? null : below,
    sigma: detected ? u : 0,
  });
  if (band === "none") return null;
  const marks = [
    underUpTo === null ? null : say.lowerMark(amountText(underUpTo, unit, language)),
    overFrom === null ? null : say.upperMark(amountText(overFrom, unit, language)),
  ].filter((one) => one !== null);
  const told = marks.length === 0 ? "" : say.moved(marks.join(", "));
  return say.screening(elementName(element, language), say.matrices[matrix], `${say.bands[band]}${told}`);
}
