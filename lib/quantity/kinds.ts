/**
 * Quantity kinds never mix: a comparison across kinds is refused (`lib/wording` says what would be needed).
 * Source of the list: the registry's design; the units are those the trade uses for each kind.
 */
export const quantityKinds = {
  "bulk-mass-fraction": { unit: "mg/kg", title: "mass fraction in a bulk part" },
  "coating-mass-fraction": { unit: "mg/kg", title: "mass fraction in a coating" },
  "coating-areal": { unit: "mg/cm²", title: "areal loading of a coating" },
  "dust-loading": { unit: "µg/ft²", title: "loading of settled dust" },
  leachate: { unit: "µg/mL", title: "concentration in a leachate" },
  migration: { unit: "mg/kg", title: "migration from a material" },
  intake: { unit: "µg/day", title: "daily intake" },
  mass: { unit: "mg", title: "mass" },
  // Carried so that limits of these kinds can be listed; no reading of an object is ever of one of them.
  "soil-mass-fraction": { unit: "mg/kg", title: "mass fraction in prepared soil" },
  "water-concentration": { unit: "mg/L", title: "concentration in drinking water" },
  "food-mass-fraction": { unit: "µg/kg", title: "mass fraction in food" },
} as const;

export type QuantityKind = keyof typeof quantityKinds;
export type CanonicalUnit<K extends QuantityKind = QuantityKind> = (typeof quantityKinds)[K]["unit"];

declare const brand: unique symbol;
/** A number that the compiler will not mix with a number of another kind. Always in the kind's canonical unit. */
export type Amount<K extends QuantityKind> = number & { readonly [brand]: K };
/** The one door from a bare number to an amount of a kind; the number must already be in the canonical unit. */
export const amount = <K extends QuantityKind>(_kind: K, value: number): Amount<K> => value as Amount<K>;

/**
 * The unit in which amounts of a kind are kept.
 * @example canonicalUnit("coating-areal") // "mg/cm²"
 */
export const canonicalUnit = <K extends QuantityKind>(kind: K): CanonicalUnit<K> => quantityKinds[kind].unit;
