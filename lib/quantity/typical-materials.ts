import type { Ingredients } from "./element-fractions.ts";
import type { Material } from "./item-words.ts";

/**
 * What a part of a listed material is typically made of. A recipe stands for its kind: fillers, pigments and alloying
 * move the real one, so a figure made from it is "about" and never a measurement of the part in hand.
 */
export type TypicalMaterial = {
  ingredients: Ingredients; // chemical formula → mass fraction, adding to 1
  /** g/cm³ of this recipe; the range of all that the material may be stands in `material-densities.ts`. */
  density: number;
  compositionSource: string;
  /** The weaker of the two: how well recipe and density are checked. */
  checked: "verified" | "second-hand" | "from memory";
};

const trade = "common practice, no source";
const silicate: Ingredients = { SiO2: 0.73, Na2O: 0.15, CaO: 0.1, Al2O3: 0.02 };

/** One entry for each listed material but "other", of which nothing can be said. */
export const typicalMaterials: Readonly<Record<Exclude<Material, "other">, TypicalMaterial>> = {
  glaze: {
    ingredients: silicate, // without lead: a leaded glaze is denser and is seen less deep
    density: 2.5,
    compositionSource: `a soda-lime glaze without lead; ${trade}`,
    checked: "from memory",
  },
  enamel: {
    ingredients: { SiO2: 0.5, B2O3: 0.15, Na2O: 0.15, TiO2: 0.12, Al2O3: 0.05, K2O: 0.03 },
    density: 2.6,
    compositionSource: `a white borosilicate enamel for steel; ${trade}`,
    checked: "from memory",
  },
  paint: {
    ingredients: { C5H8O2: 0.6, CaCO3: 0.25, TiO2: 0.15 },
    density: 1.5,
    compositionSource: `a dried acrylic film with chalk and titanium white; ${trade}`,
    checked: "from memory",
  },
  brass: {
    ingredients: { Cu: 0.6, Zn: 0.4 },
    density: 8.5,
    compositionSource: `brass of 60 % copper and 40 % zinc; ${trade}`,
    checked: "from memory",
  },
  "zinc-alloy": {
    ingredients: { Zn: 0.96, Al: 0.04 },
    density: 6.7,
    compositionSource: `die-casting zinc with 4 % aluminium; ${trade}`,
    checked: "from memory",
  },
  solder: {
    ingredients: { Sn: 0.6, Pb: 0.4 },
    density: 8.5,
    compositionSource: `solder of 60 % tin and 40 % lead; ${trade}`,
    checked: "second-hand",
  },
  steel: {
    ingredients: { Fe: 0.71, Cr: 0.18, Ni: 0.09, Mn: 0.02 },
    density: 7.9,
    compositionSource: `stainless steel with 18 % chromium and 9 % nickel; ${trade}`,
    checked: "from memory",
  },
  aluminium: {
    ingredients: { Al: 1 },
    density: 2.7,
    compositionSource: `taken as pure; ${trade}`,
    checked: "second-hand",
  },
  copper: {
    ingredients: { Cu: 1 },
    density: 8.96,
    compositionSource: `taken as pure; ${trade}`,
    checked: "second-hand",
  },
  pvc: {
    ingredients: { C2H3Cl: 1 }, // without filler or plasticiser: with plasticiser it is seen deeper
    density: 1.4,
    compositionSource: `vinyl without fillers; ${trade}`,
    checked: "from memory",
  },
  abs: {
    ingredients: { C3H3N: 0.25, C4H6: 0.2, C8H8: 0.55 },
    density: 1.05,
    compositionSource: `acrylonitrile 25, butadiene 20, styrene 55 %; ${trade}`,
    checked: "from memory",
  },
  "other-plastic": {
    ingredients: { C2H4: 1 },
    density: 0.93,
    compositionSource: `taken as polyethylene, the plastic that is seen deepest; ${trade}`,
    checked: "from memory",
  },
  glass: {
    ingredients: silicate,
    density: 2.5,
    compositionSource: `soda-lime glass; ${trade}`,
    checked: "from memory",
  },
  crystal: {
    ingredients: { PbO: 0.24, SiO2: 0.76 },
    density: 2.9,
    compositionSource: "lead crystal: at least 24 % PbO (Directive 69/493/EEC); the rest taken as silica",
    checked: "from memory",
  },
  "ceramic-body": {
    ingredients: { SiO2: 0.7, Al2O3: 0.22, K2O: 0.03, CaO: 0.02, Fe2O3: 0.02, Na2O: 0.01 },
    density: 2.3,
    compositionSource: `a fired stoneware; ${trade}`,
    checked: "from memory",
  },
  wood: {
    ingredients: { C: 0.5, O: 0.44, H: 0.06 },
    density: 0.6,
    compositionSource: `dry wood; ${trade}`,
    checked: "from memory",
  },
  textile: {
    ingredients: { C6H10O5: 1 },
    density: 0.5, // of the cloth with the air in it
    compositionSource: `cellulose; ${trade}`,
    checked: "from memory",
  },
  "textile-print": {
    ingredients: { C2H3Cl: 0.45, C24H38O4: 0.45, TiO2: 0.1 },
    density: 1.2,
    compositionSource: `vinyl print ink: PVC with as much plasticiser, and titanium white; ${trade}`,
    checked: "from memory",
  },
};

/**
 * The entry of a listed material; null for "other" and for a word that is not on the list.
 *
 * @example typicalMaterial("other") // null
 */
export const typicalMaterial = (material: string): TypicalMaterial | null =>
  Object.hasOwn(typicalMaterials, material) ? typicalMaterials[material as Exclude<Material, "other">] : null;
