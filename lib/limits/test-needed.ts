import { type QuantityKind, quantityKinds } from "../quantity/kinds.ts";
import type { Limit } from "./types.ts";

const tests: Record<QuantityKind, string> = {
  "bulk-mass-fraction": "a reading or a laboratory analysis of the body itself, with no coating on it",
  "coating-mass-fraction":
    "a laboratory analysis of the coating scraped off, or an areal reading with the coat's thickness and density",
  "coating-areal": "a reading of the coating in an areal mode, by area",
  "dust-loading": "a wipe of settled dust over a measured area, analysed in a laboratory",
  leachate: "a leach test in a laboratory, with dilute acetic acid for 24 hours",
  migration: "a migration test in a laboratory",
  intake: "an account of what a person takes in each day, which no reading of an object gives",
  mass: "the mass of the element in a measured amount of paint or on a wipe",
  "soil-mass-fraction": "prepared soil read or analysed by a soil method",
  "water-concentration": "a water sample analysed in a laboratory",
  "food-mass-fraction": "a food sample analysed in a laboratory",
};

const forms: Record<string, string> = {
  "Cr(VI)": "hexavalent chromium, which X-rays do not tell from other chromium",
  PBB: "brominated retardants, which X-rays do not tell from other bromine",
  PBDE: "brominated retardants, which X-rays do not tell from other bromine",
};

/**
 * Why a limit cannot be set beside a reading, and what test would be needed, as one or two sentences.
 * A total content below a migration limit of the same unit cannot release more than it; above, it says nothing.
 */
export const testNeeded = (limit: Limit, kind: QuantityKind, element: string): string => {
  const form = limit.substances.includes(element) ? undefined : limit.substances.map((s) => forms[s]).find(Boolean);
  if (form && kind === limit.quantity)
    return `Cannot be compared: the limit is on ${form}; a chemical test would be needed.`;
  const unlike = `Cannot be compared: the limit is on ${quantityKinds[limit.quantity].title} (${limit.unit}), and what was measured is ${quantityKinds[kind].title} (${quantityKinds[kind].unit}).`;
  const needed = `It would need ${tests[limit.quantity]}${form ? `, for ${form}` : ""}.`;
  const bound =
    limit.quantity === "migration" && limit.unit === "mg/kg" && kind.endsWith("mass-fraction")
      ? " A total content below that number cannot release more than it; a total above it says nothing."
      : "";
  return `${unlike} ${needed}${bound}`;
};
