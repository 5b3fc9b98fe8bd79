import { elementPairs } from "./es/elements.ts";
import { formatWordsIn } from "./formats.ts";
import type { ByLanguage, Language } from "./language.ts";

/** English names of the elements an X-ray analyser can report, by symbol (IUPAC spelling). */
const pairs =
  "Li lithium,Be beryllium,B boron,C carbon,N nitrogen,O oxygen,F fluorine,Na sodium,Mg magnesium,Al aluminium," +
  "Si silicon,P phosphorus,S sulfur,Cl chlorine,Ar argon,K potassium,Ca calcium,Sc scandium,Ti titanium,V vanadium," +
  "Cr chromium,Mn manganese,Fe iron,Co cobalt,Ni nickel,Cu copper,Zn zinc,Ga gallium,Ge germanium,As arsenic," +
  "Se selenium,Br bromine,Kr krypton,Rb rubidium,Sr strontium,Y yttrium,Zr zirconium,Nb niobium,Mo molybdenum," +
  "Tc technetium,Ru ruthenium,Rh rhodium,Pd palladium,Ag silver,Cd cadmium,In indium,Sn tin,Sb antimony," +
  "Te tellurium,I iodine,Xe xenon,Cs caesium,Ba barium,La lanthanum,Ce cerium,Pr praseodymium,Nd neodymium," +
  "Pm promethium,Sm samarium,Eu europium,Gd gadolinium,Tb terbium,Dy dysprosium,Ho holmium,Er erbium,Tm thulium," +
  "Yb ytterbium,Lu lutetium,Hf hafnium,Ta tantalum,W tungsten,Re rhenium,Os osmium,Ir iridium,Pt platinum,Au gold," +
  "Hg mercury,Tl thallium,Pb lead,Bi bismuth,Po polonium,Ra radium,Th thorium,U uranium";
const namesOf = (text: string) =>
  new Map(text.split(",").map((pair) => pair.split(" ") as [symbol: string, name: string]));
const names: ByLanguage<ReadonlyMap<string, string>> = { en: namesOf(pairs), es: namesOf(elementPairs) };

/** "lead" for "Pb"; a symbol without a name, or a sum such as "Pb+Cd", part by part. */
export const elementName = (symbol: string, language: Language = "en"): string =>
  symbol
    .split("+")
    .map((one) => names[language].get(one) ?? one)
    .reduce((all, one) => `${all} ${formatWordsIn[language].and(one)} ${one}`);

/** "Lead (Pb)": for headings and table rows. */
export const elementTitle = (symbol: string, language: Language = "en"): string => {
  const name = elementName(symbol, language);
  return name === symbol ? symbol : `${name.charAt(0).toUpperCase()}${name.slice(1)} (${symbol})`;
};
