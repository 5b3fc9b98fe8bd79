/**
 * Elements an X-ray analyser can report, with the names people write in headers: English, German, French, Spanish
 * (lower case, accents folded away; further spellings after the fourth).
 *
 * Atomic weights: IUPAC CIAAW standard atomic weights 2021, abridged to five digits, from memory. They serve only to
 * turn an oxide figure into the element's.
 */
export type Element = { symbol: string; weight: number; names: readonly string[] };

const row = (symbol: string, weight: number, names: string): Element => ({ symbol, weight, names: names.split(" ") });

export const elements: readonly Element[] = [
  row("Li", 6.94, "lithium lithium lithium litio"),
  row("Be", 9.0122, "beryllium beryllium beryllium berilio"),
  row("B", 10.81, "boron bor bore boro"),
  row("C", 12.011, "carbon kohlenstoff carbone carbono"),
  row("N", 14.007, "nitrogen stickstoff azote nitrogeno"),
  row("O", 15.999, "oxygen sauerstoff oxygene oxigeno"),
  row("F", 18.998, "fluorine fluor fluor fluor"),
  row("Na", 22.99, "sodium natrium sodium sodio"),
  row("Mg", 24.305, "magnesium magnesium magnesium magnesio"),
  row("Al", 26.982, "aluminium aluminium aluminium aluminio aluminum"),
  row("Si", 28.085, "silicon silizium silicium silicio"),
  row("P", 30.974, "phosphorus phosphor phosphore fosforo"),
  row("S", 32.06, "sulfur schwefel soufre azufre sulphur"),
  row("Cl", 35.45, "chlorine chlor chlore cloro"),
  row("K", 39.098, "potassium kalium potassium potasio"),
  row("Ca", 40.078, "calcium calcium calcium calcio kalzium"),
  row("Sc", 44.956, "scandium scandium scandium escandio"),
  row("Ti", 47.867, "titanium titan titane titanio"),
  row("V", 50.942, "vanadium vanadium vanadium vanadio"),
  row("Cr", 51.996, "chromium chrom chrome cromo"),
  row("Mn", 54.938, "manganese mangan manganese manganeso"),
  row("Fe", 55.845, "iron eisen fer hierro"),
  row("Co", 58.933, "cobalt kobalt cobalt cobalto"),
  row("Ni", 58.693, "nickel nickel nickel niquel"),
  row("Cu", 63.546, "copper kupfer cuivre cobre"),
  row("Zn", 65.38, "zinc zink zinc zinc cinc"),
  row("Ga", 69.723, "gallium gallium gallium galio"),
  row("Ge", 72.63, "germanium germanium germanium germanio"),
  row("As", 74.922, "arsenic arsen arsenic arsenico"),
  row("Se", 78.971, "selenium selen selenium selenio"),
  row("Br", 79.904, "bromine brom brome bromo"),
  row("Rb", 85.468, "rubidium rubidium rubidium rubidio"),
  row("Sr", 87.62, "strontium strontium strontium estroncio"),
  row("Y", 88.906, "yttrium yttrium yttrium itrio"),
  row("Zr", 91.224, "zirconium zirkonium zirconium circonio zirconio"),
  row("Nb", 92.906, "niobium niob niobium niobio"),
  row("Mo", 95.95, "molybdenum molybdan molybdene molibdeno molybdaen"),
  row("Ru", 101.07, "ruthenium ruthenium ruthenium rutenio"),
  row("Rh", 102.91, "rhodium rhodium rhodium rodio"),
  row("Pd", 106.42, "palladium palladium palladium paladio"),
  row("Ag", 107.87, "silver silber argent plata"),
  row("Cd", 112.41, "cadmium cadmium cadmium cadmio kadmium"),
  row("In", 114.82, "indium indium indium indio"),
  row("Sn", 118.71, "tin zinn etain estano"),
  row("Sb", 121.76, "antimony antimon antimoine antimonio"),
  row("Te", 127.6, "tellurium tellur tellure telurio"),
  row("I", 126.9, "iodine iod iode yodo jod"),
  row("Cs", 132.91, "caesium casium cesium cesio"),
  row("Ba", 137.33, "barium barium baryum bario"),
  row("La", 138.91, "lanthanum lanthan lanthane lantano"),
  row("Ce", 140.12, "cerium cer cerium cerio"),
  row("Pr", 140.91, "praseodymium praseodym praseodyme praseodimio"),
  row("Nd", 144.24, "neodymium neodym neodyme neodimio"),
  row("Sm", 150.36, "samarium samarium samarium samario"),
  row("Eu", 151.96, "europium europium europium europio"),
  row("Gd", 157.25, "gadolinium gadolinium gadolinium gadolinio"),
  row("Tb", 158.93, "terbium terbium terbium terbio"),
  row("Dy", 162.5, "dysprosium dysprosium dysprosium disprosio"),
  row("Ho", 164.93, "holmium holmium holmium holmio"),
  row("Er", 167.26, "erbium erbium erbium erbio"),
  row("Tm", 168.93, "thulium thulium thulium tulio"),
  row("Yb", 173.05, "ytterbium ytterbium ytterbium iterbio"),
  row("Lu", 174.97, "lutetium lutetium lutetium lutecio"),
  row("Hf", 178.49, "hafnium hafnium hafnium hafnio"),
  row("Ta", 180.95, "tantalum tantal tantale tantalo"),
  row("W", 183.84, "tungsten wolfram tungstene wolframio tungsteno"),
  row("Re", 186.21, "rhenium rhenium rhenium renio"),
  row("Os", 190.23, "osmium osmium osmium osmio"),
  row("Ir", 192.22, "iridium iridium iridium iridio"),
  row("Pt", 195.08, "platinum platin platine platino"),
  row("Au", 196.97, "gold gold or oro"),
  row("Hg", 200.59, "mercury quecksilber mercure mercurio"),
  row("Tl", 204.38, "thallium thallium thallium talio"),
  row("Pb", 207.2, "lead blei plomb plomo"),
  row("Bi", 208.98, "bismuth bismut bismuth bismuto wismut"),
  row("Th", 232.04, "thorium thorium thorium torio"),
  row("U", 238.03, "uranium uran uranium uranio"),
];

/** Oxides that analysers list in place of the element. Anything else ("CO", "NO") is not taken for an oxide. */
export const oxides: readonly string[] = (
  "Li2O BeO B2O3 Na2O MgO Al2O3 SiO2 P2O5 SO3 K2O CaO Sc2O3 TiO2 V2O5 Cr2O3 MnO MnO2 FeO Fe2O3 Fe3O4 CoO Co3O4 NiO " +
  "CuO Cu2O ZnO Ga2O3 GeO2 As2O3 As2O5 SeO2 Rb2O SrO Y2O3 ZrO2 Nb2O5 MoO3 Ag2O CdO SnO SnO2 Sb2O3 Sb2O5 TeO2 Cs2O " +
  "BaO La2O3 CeO2 Nd2O3 HfO2 Ta2O5 WO3 HgO Tl2O PbO PbO2 Pb3O4 Bi2O3 ThO2 U3O8"
).split(" ");
