import type { Ingredients } from "./element-fractions.ts";
import type { Material } from "./item-words.ts";

/**
 * What a part of a listed material is typically made of. A recipe stands for its kind: fillers, pigments and alloying
 * move the real one, so a figure made from it is "about" and never a measurement of the part in hand.
 */
export type TypicalMaterial = {
  ingredients: Ingredients; // chemical formula → mass fraction, adding to 1
  /** g/cm³: the usual figure, and the range met in practice. */
  density: { typical: number; low: number; high: number };
  compositionSource: string;
  densitySource: string;
  /** The weaker of the two: how well recipe and density are checked. */
  checked: "verified" | "second-hand" | "from memory";
};

const trade = "common practice, no source";
const handbook = "handbook tables of the elements";
const silicate: Ingredients = { SiO2: 0.73, Na2O: 0.15, CaO: 0.1, Al2O3: 0.02 };

/** One entry for each listed material but "other", of which nothing can be said. */
export const typicalMaterials: Readonly<Record<Exclude<Material, "other">, TypicalMaterial>> = {
  glaze: {
    ingredients: silicate, // without lead: a leaded glaze is denser and is seen less deep
    density: { typical: 2.5, low: 2.3, high: 4.5 },
    compositionSource: `a soda-lime glaze without lead; ${trade}`,
    densitySource: `as soda-lime glass; leaded glazes to 4.5; ${trade}`,
    checked: "from memory",
  },
  enamel: {
    ingredients: { SiO2: 0.5, B2O3: 0.15, Na2O: 0.15, TiO2: 0.12, Al2O3: 0.05, K2O: 0.03 },
    density: { typical: 2.6, low: 2.4, high: 2.9 },
    compositionSource: `a white borosilicate enamel for steel; ${trade}`,
    densitySource: trade,
    checked: "from memory",
  },
  paint: {
    ingredients: { C5H8O2: 0.6, CaCO3: 0.25, TiO2: 0.15 },
    density: { typical: 1.5, low: 1.2, high: 4 },
    compositionSource: `a dried acrylic film with chalk and titanium white; ${trade}`,
    densitySource: `dried film 1.2 to 1.8, white-lead paint to 4; ${trade}`,
    checked: "from memory",
  },
  brass: {
    ingredients: { Cu: 0.6, Zn: 0.4 },
    density: { typical: 8.5, low: 8.4, high: 8.7 },
    compositionSource: `brass of 60 % copper and 40 % zinc; ${trade}`,
    densitySource: trade,
    checked: "from memory",
  },
  "zinc-alloy": {
    ingredients: { Zn: 0.96, Al: 0.04 },
    density: { typical: 6.7, low: 6.6, high: 7.14 },
    compositionSource: `die-casting zinc with 4 % aluminium; ${trade}`,
    densitySource: `ideal volumes of zinc 7.13 and aluminium 2.70 (${handbook}); pure zinc 7.14`,
    checked: "from memory",
  },
  solder: {
    ingredients: { Sn: 0.6, Pb: 0.4 },
    density: { typical: 8.5, low: 7.29, high: 9.5 },
    compositionSource: `solder of 60 % tin and 40 % lead; ${trade}`,
    densitySource: "solder tables: 8.50 for 60/40; from tin alone, 7.29, to 65 % lead",
    checked: "second-hand",
  },
  steel: {
    ingredients: { Fe: 0.71, Cr: 0.18, Ni: 0.09, Mn: 0.02 },
    density: { typical: 7.9, low: 7.8, high: 8 },
    compositionSource: `stainless steel with 18 % chromium and 9 % nickel; ${trade}`,
    densitySource: `stainless 7.9 to 8.0, plain steel from 7.8; ${trade}`,
    checked: "from memory",
  },
  aluminium: {
    ingredients: { Al: 1 },
    density: { typical: 2.7, low: 2.65, high: 2.8 },
    compositionSource: `taken as pure; ${trade}`,
    densitySource: `2.70 (${handbook}); range of its alloys: ${trade}`,
    checked: "second-hand",
  },
  copper: {
    ingredients: { Cu: 1 },
    density: { typical: 8.96, low: 8.9, high: 8.96 },
    compositionSource: `taken as pure; ${trade}`,
    densitySource: `8.94 to 8.96 (${handbook})`,
    checked: "second-hand",
  },
  pvc: {
    ingredients: { C2H3Cl: 1 }, // without filler or plasticiser: with plasticiser it is seen deeper
    density: { typical: 1.4, low: 1.2, high: 1.41 },
    compositionSource: `vinyl without fillers; ${trade}`,
    densitySource: `rigid 1.38 to 1.41, flexible 1.2 to 1.35; ${trade}`,
    checked: "from memory",
  },
  abs: {
    ingredients: { C3H3N: 0.25, C4H6: 0.2, C8H8: 0.55 },
    density: { typical: 1.05, low: 1.03, high: 1.07 },
    compositionSource: `acrylonitrile 25, butadiene 20, styrene 55 %; ${trade}`,
    densitySource: trade,
    checked: "from memory",
  },
  "other-plastic": {
    ingredients: { C2H4: 1 },
    density: { typical: 0.93, low: 0.9, high: 1.4 },
    compositionSource: `taken as polyethylene, the plastic that is seen deepest; ${trade}`,
    densitySource: `polyethylene 0.930 (NIST composition tables); heavier plastics to 1.4; ${trade}`,
    checked: "from memory",
  },
  glass: {
    ingredients: silicate,
    density: { typical: 2.5, low: 2.45, high: 2.6 },
    compositionSource: `soda-lime glass; ${trade}`,
    densitySource: trade,
    checked: "from memory",
  },
  crystal: {
    ingredients: { PbO: 0.24, SiO2: 0.76 },
    density: { typical: 2.9, low: 2.9, high: 3.2 },
    compositionSource: "lead crystal: at least 24 % PbO (Directive 69/493/EEC); the rest taken as silica",
    densitySource: "at least 2.90 (Directive 69/493/EEC); upper figure: common practice, no source",
    checked: "from memory",
  },
  "ceramic-body": {
    ingredients: { SiO2: 0.7, Al2O3: 0.22, K2O: 0.03, CaO: 0.02, Fe2O3: 0.02, Na2O: 0.01 },
    density: { typical: 2.3, low: 1.8, high: 2.5 },
    compositionSource: `a fired stoneware; ${trade}`,
    densitySource: `earthenware 1.8 to 2.2, stoneware 2.2 to 2.5, porcelain 2.3 to 2.5; ${trade}`,
    checked: "from memory",
  },
  wood: {
    ingredients: { C: 0.5, O: 0.44, H: 0.06 },
    density: { typical: 0.6, low: 0.4, high: 0.8 },
    compositionSource: `dry wood; ${trade}`,
    densitySource: trade,
    checked: "from memory",
  },
  textile: {
    ingredients: { C6H10O5: 1 },
    density: { typical: 0.5, low: 0.2, high: 0.9 }, // of the cloth with the air in it
    compositionSource: `cellulose; ${trade}`,
    densitySource: trade,
    checked: "from memory",
  },
  "textile-print": {
    ingredients: { C2H3Cl: 0.45, C24H38O4: 0.45, TiO2: 0.1 },
    density: { typical: 1.2, low: 1.1, high: 1.4 },
    compositionSource: `vinyl print ink: PVC with as much plasticiser, and titanium white; ${trade}`,
    densitySource: trade,
    checked: "from memory",
  },
};

/** The entry of a listed material; null for "other" and for a word that is not on the list. */
export const typicalMaterial = (material: string): TypicalMaterial | null =>
  Object.hasOwn(typicalMaterials, material) ? typicalMaterials[material as Exclude<Material, "other">] : null;
