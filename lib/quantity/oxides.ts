import { atomicWeights } from "./atomic-weights.ts";
import { DomainError } from "./domain-error.ts";

/** The oxides instruments report, as [element, atoms of it, atoms of oxygen]. A closed list: anything else is refused. */
const oxideTable = {
  Na2O: ["Na", 2, 1],
  MgO: ["Mg", 1, 1],
  Al2O3: ["Al", 2, 3],
  SiO2: ["Si", 1, 2],
  P2O5: ["P", 2, 5],
  SO3: ["S", 1, 3],
  K2O: ["K", 2, 1],
  CaO: ["Ca", 1, 1],
  TiO2: ["Ti", 1, 2],
  V2O5: ["V", 2, 5],
  Cr2O3: ["Cr", 2, 3],
  MnO: ["Mn", 1, 1],
  MnO2: ["Mn", 1, 2],
  FeO: ["Fe", 1, 1],
  Fe2O3: ["Fe", 2, 3],
  CoO: ["Co", 1, 1],
  Co3O4: ["Co", 3, 4],
  NiO: ["Ni", 1, 1],
  CuO: ["Cu", 1, 1],
  Cu2O: ["Cu", 2, 1],
  ZnO: ["Zn", 1, 1],
  As2O3: ["As", 2, 3],
  As2O5: ["As", 2, 5],
  SeO2: ["Se", 1, 2],
  Rb2O: ["Rb", 2, 1],
  SrO: ["Sr", 1, 1],
  Y2O3: ["Y", 2, 3],
  ZrO2: ["Zr", 1, 2],
  Nb2O5: ["Nb", 2, 5],
  MoO3: ["Mo", 1, 3],
  Ag2O: ["Ag", 2, 1],
  CdO: ["Cd", 1, 1],
  SnO2: ["Sn", 1, 2],
  Sb2O3: ["Sb", 2, 3],
  Sb2O5: ["Sb", 2, 5],
  BaO: ["Ba", 1, 1],
  La2O3: ["La", 2, 3],
  CeO2: ["Ce", 1, 2],
  Nd2O3: ["Nd", 2, 3],
  HfO2: ["Hf", 1, 2],
  WO3: ["W", 1, 3],
  HgO: ["Hg", 1, 1],
  PbO: ["Pb", 1, 1],
  PbO2: ["Pb", 1, 2],
  Pb3O4: ["Pb", 3, 4],
  Bi2O3: ["Bi", 2, 3],
  ThO2: ["Th", 1, 2],
  U3O8: ["U", 3, 8],
} as const satisfies Record<string, readonly [string, number, number]>;

export type Oxide = keyof typeof oxideTable;
export const oxides = Object.keys(oxideTable) as Oxide[];

/**
 * Whether a text is an oxide of the closed list, in its exact case.
 * @example isOxide("PbO") // true
 */
export const isOxide = (text: string): text is Oxide => Object.hasOwn(oxideTable, text);

/**
 * Mass of the element in a unit mass of its oxide: m·A(element) / (m·A(element) + n·A(O)).
 *
 * A reading "PbO 1.00 %" holds 0.928 % lead. Formulas as written with plain digits and exact case ("Fe2O3").
 * Refuses (DomainError `unknown-oxide`) anything not in the closed list.
 * Source: atomic weights in `atomicWeights`.
 *
 * @example elementInOxide("PbO") // { element: "Pb", factor: 0.92832 }
 */
export const elementInOxide = (oxide: string): { element: string; factor: number } => {
  if (!isOxide(oxide)) throw new DomainError("unknown-oxide", "not an oxide of the closed list", oxide);
  const [element, atoms, oxygens] = oxideTable[oxide];
  const mass = atoms * atomicWeights[element]!;
  return { element, factor: mass / (mass + oxygens * atomicWeights["O"]!) };
};
