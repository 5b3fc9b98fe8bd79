import { formatWordsIn } from "../formats.ts";
import { limitNotes } from "./limit-notes.ts";
import { placeNames } from "./limit-titles.ts";

/**
 * Why a limit applies or does not, in Spanish. A published page keeps the English sentences it was approved with; they are made of few
 * pieces (lib/limits), each of which has its Spanish here. A sentence that is none of these stays English, and is marked so.
 */
type Told = string | null;
type Rule = readonly [RegExp, (...groups: string[]) => Told];

/** "14 August 2011" as "14 de agosto de 2011", "August 2011" as "agosto de 2011"; a year is a year. */
const when = (text: string): string => {
  const [, day, month, year] = /^(?:(\d{1,2}) )?(?:([A-Z][a-z]+) )?(\d{4})$/.exec(text) ?? [];
  const name = formatWordsIn.es.months[formatWordsIn.en.months.indexOf(month ?? "")];
  if (year === undefined || (month !== undefined && name === undefined)) return text;
  return [day, name, year].filter((part) => part !== undefined).join(" de ");
};
/** "from 14 August 2011 up to 3 May 2012", either end of it. */
const windowOf = (text: string): string => {
  const [, from, until] = /^(?:from (.+?))? ?(?:up to (.+))?$/.exec(text) ?? [];
  return [from && `desde el ${when(from)}`, until && `hasta el ${when(until)}`].filter(Boolean).join(" ");
};
/** "in 2011", "on 3 May 2011", "by 3 May 2011, when it was got". */
const making = (text: string): string => {
  const [, got] = /^by (.+), when it was got$/.exec(text) ?? [];
  if (got !== undefined) return `a más tardar el ${when(got)}, cuando se obtuvo`;
  return text.replace(
    /^(in|on) (.+)$/,
    (_, word: string, day: string) => `${word === "on" ? "el" : "en"} ${when(day)}`,
  );
};

/** The first rule that a text is of, told by it. */
const byRules =
  (rules: readonly Rule[]) =>
  (text: string): Told => {
    for (const [form, tell] of rules) {
      const found = form.exec(text);
      if (found) return tell(...found.slice(1));
    }
    return null;
  };
const looked = (texts: Readonly<Record<string, string>>, text: string): Told =>
  Object.hasOwn(texts, text) ? texts[text]! : null;
const around = (before: string, told: Told, after: string): Told => (told === null ? null : `${before}${told}${after}`);

const targets: Record<string, string> = {
  "settled dust in homes": "el polvo depositado en viviendas",
  "paint in homes and places for children": "la pintura de viviendas y lugares para niños",
  soil: "el suelo",
  "drinking water": "el agua potable",
  food: "los alimentos",
  packaging: "los envases",
  "electrical and electronic equipment": "los aparatos eléctricos y electrónicos",
  "plumbing for drinking water": "las instalaciones de agua potable",
  "candle wicks": "las mechas de vela",
  "paint as it is sold": "la pintura tal como se vende",
  "utensils of food businesses": "los utensilios de empresas alimentarias",
  "what a person takes in each day": "lo que una persona ingiere cada día",
  "listed exceptions from another limit": "las excepciones enumeradas de otro límite",
};

const quantities: Record<string, string> = {
  "mass fraction in a bulk part": "la fracción de masa en una parte maciza",
  "mass fraction in a coating": "la fracción de masa en un recubrimiento",
  "areal loading of a coating": "la carga por superficie de un recubrimiento",
  "loading of settled dust": "la carga de polvo depositado",
  "concentration in a leachate": "la concentración en un lixiviado",
  "migration from a material": "la migración desde un material",
  "daily intake": "la ingesta diaria",
  mass: "la masa",
  "mass fraction in prepared soil": "la fracción de masa en suelo preparado",
  "concentration in drinking water": "la concentración en agua potable",
  "mass fraction in food": "la fracción de masa en un alimento",
};

const tests: Record<string, string> = {
  "a reading or a laboratory analysis of the body itself, with no coating on it":
    "una lectura o un análisis de laboratorio del cuerpo mismo, sin recubrimiento",
  "a laboratory analysis of the coating scraped off, or an areal reading with the coat's thickness and density":
    "un análisis de laboratorio del recubrimiento raspado, o una lectura por superficie con el grosor y la densidad de la capa",
  "a reading of the coating in an areal mode, by area": "una lectura del recubrimiento en un modo por superficie",
  "a wipe of settled dust over a measured area, analysed in a laboratory":
    "una toallita de polvo depositado sobre una superficie medida, analizada en un laboratorio",
  "a leach test in a laboratory, with dilute acetic acid for 24 hours":
    "un ensayo de lixiviación en un laboratorio, con ácido acético diluido durante 24 horas",
  "a migration test in a laboratory": "un ensayo de migración en un laboratorio",
  "an account of what a person takes in each day, which no reading of an object gives":
    "una cuenta de lo que una persona ingiere cada día, que ninguna lectura de un objeto da",
  "the mass of the element in a measured amount of paint or on a wipe":
    "la masa del elemento en una cantidad medida de pintura o en una toallita",
  "prepared soil read or analysed by a soil method": "suelo preparado y leído o analizado con un método para suelos",
  "a water sample analysed in a laboratory": "una muestra de agua analizada en un laboratorio",
  "a food sample analysed in a laboratory": "una muestra del alimento analizada en un laboratorio",
};

const forms: Record<string, string> = {
  "hexavalent chromium, which X-rays do not tell from other chromium":
    "cromo hexavalente, que los rayos X no distinguen del otro cromo",
  "brominated retardants, which X-rays do not tell from other bromine":
    "retardantes bromados, que los rayos X no distinguen del otro bromo",
};

/** What the record does not hold, and a limit hangs on. */
const conditions: Record<string, string> = {
  "the painted area is no more than 1 cm² or 10 mg of paint":
    "la zona pintada tiene no más de 1 cm² o 10 mg de pintura",
  "it is modelling clay": "es pasta de modelar",
  "it looks usable for food and leaches above the action level":
    "parece servir para alimentos y lixivia por encima del nivel de acción",
  "it is glass with a decoration on the outside": "es vidrio con una decoración por fuera",
  "it is a toy that contains paint, for a child under 12":
    "es un juguete que lleva pintura, para un niño de menos de 12 años",
  "it is a child-care article for a child under 6": "es un artículo para el cuidado de un niño de menos de 6 años",
  "the part is a key": "la parte es una llave",
  "the plastic is one of those the entry lists": "el plástico es uno de los que la entrada enumera",
  "it is a brazing filler": "es un aporte de soldadura fuerte",
  "it is a post for a pierced part of the body": "es una pieza para una parte perforada del cuerpo",
  "the part is dry, brittle, powder-like or pliable material":
    "la parte es material seco, quebradizo, en polvo o maleable",
  "the part is liquid or sticky material": "la parte es material líquido o pegajoso",
  "the part is dry, brittle, powder-like or pliable": "la parte es seca, quebradiza, en polvo o maleable",
  "the part is liquid or sticky": "la parte es líquida o pegajosa",
  "it is clothing, or is for a child under 4": "es ropa, o es para un niño de menos de 4 años",
  "it fits wholly inside the small-parts cylinder": "cabe entera en el cilindro de partes pequeñas",
  "it has an outside pattern within 20 mm of the rim": "tiene un dibujo exterior a menos de 20 mm del borde",
  "it is finger paint": "es pintura de dedos",
  "it is for a child up to 6": "es para un niño de hasta 6 años",
};

/** What keeps a part out of a scope, or leaves it open. */
const clauses: Record<string, string> = {
  "the record does not say what kind of object this is": "el registro no dice qué tipo de objeto es este",
  "it covers other kinds of object": "abarca otros tipos de objeto",
  "it covers things made for children, and the record does not say for what age":
    "abarca cosas hechas para niños, y el registro no dice para qué edad",
  "it covers things made for children, and this was made for adults":
    "abarca cosas hechas para niños, y esta se hizo para adultos",
  "it covers things made for younger children": "abarca cosas hechas para niños más pequeños",
  "it covers things that touch food": "abarca cosas que tocan alimentos",
  "it leaves out things that touch food, which have rules of their own":
    "deja fuera las cosas que tocan alimentos, que tienen normas propias",
  "it covers things a small child can put in the mouth": "abarca cosas que un niño pequeño puede llevarse a la boca",
  "it covers parts that can be reached": "abarca partes a las que se puede llegar",
  "it covers certain materials, and the record does not say which this is":
    "abarca ciertos materiales, y el registro no dice cuál es este",
  "it covers other materials": "abarca otros materiales",
  "it hangs on whether this layer can be scraped off like paint, which the record does not say":
    "depende de si esta capa se puede raspar como la pintura, y el registro no lo dice",
  "it covers paint and like coatings, not glaze, plating or the body itself":
    "abarca pintura y recubrimientos parecidos, no el esmalte cerámico, los baños metálicos ni el cuerpo mismo",
  "it covers the body itself, not the paint on it": "abarca el cuerpo mismo, no la pintura que lleva",
  "soft toys are covered; a textile that is not a toy is not, and the record's class holds both":
    "los peluches están dentro; un textil que no es un juguete no, y la clase del registro contiene los dos",
  "toys for children under 14 are covered; the record's age group also holds older ones":
    "los juguetes para niños de menos de 14 años están dentro; el grupo de edad del registro contiene también mayores",
  "only pieces at most 25 mm deep inside": "solo piezas de como máximo 25 mm de hondo por dentro",
  "only pieces deeper than 25 mm that hold less than 1.1 L":
    "solo piezas de más de 25 mm de hondo que contienen menos de 1,1 L",
  "only pieces deeper than 25 mm that hold 1.1 L or more":
    "solo piezas de más de 25 mm de hondo que contienen 1,1 L o más",
  "only pitchers": "solo jarras",
  "only flat pieces": "solo piezas planas",
  "only hollow pieces": "solo piezas hondas",
  "only small hollow pieces": "solo piezas hondas pequeñas",
  "only large hollow pieces": "solo piezas hondas grandes",
  "only cups and mugs": "solo tazas",
  "only pieces that cannot be filled or are at most 25 mm deep":
    "solo piezas que no se pueden llenar o que tienen como máximo 25 mm de hondo",
  "only pieces deeper than 25 mm that hold no more than 3 L":
    "solo piezas de más de 25 mm de hondo que contienen no más de 3 L",
  "only vessels that hold more than 3 L": "solo recipientes que contienen más de 3 L",
  "children's jewellery under 12 is covered and a key ring is not; the record's class holds both":
    "las joyas infantiles (menos de 12 años) están dentro y un llavero no; la clase del registro contiene los dos",
  "children's jewellery is covered and a key ring is not; the record's class holds both":
    "las joyas infantiles están dentro y un llavero no; la clase del registro contiene los dos",
  "jewellery is covered and a key ring is not; the record's class holds both":
    "las joyas están dentro y un llavero no; la clase del registro contiene los dos",
  "jewellery for children under 15 is covered; the record's age group also holds older ones":
    "las joyas para niños de menos de 15 años están dentro; el grupo de edad del registro contiene también mayores",
  "the law lists bowls, pots and pans, toys and clothing; the record's class also holds things it does not list":
    "la ley enumera cuencos, ollas y sartenes, juguetes y ropa; la clase del registro contiene también cosas que no enumera",
  "internal solder is out until 1 July 2028": "la soldadura interior queda fuera hasta el 1 de julio de 2028",
  "the limit is by total weight, and a coating alone does not say that":
    "el límite es por peso total, y un recubrimiento solo no lo dice",
  "cadmium in the enamel of some cast-iron and steel pans is out since June 2025":
    "el cadmio en el esmalte de algunas ollas y sartenes de hierro colado y de acero queda fuera desde junio de 2025",
  "packaging is covered; a box sold empty for the kitchen is not":
    "los envases están dentro; una caja vendida vacía para la cocina no",
  "crystal glass and vitreous enamel are out of its scope":
    "el vidrio de cristal y el esmalte vítreo quedan fuera de lo que abarca",
  "keys and locks are out, jewellery and toys have rules of their own, and other things in the record's class are in":
    "las llaves y cerraduras quedan fuera, las joyas y los juguetes tienen normas propias, y las otras cosas de la clase del registro están dentro",
  "brass with no more than 0.5 % lead is out (from memory)":
    "el latón con no más de 0,5 % de plomo queda fuera (de memoria)",
  "toys have rules of their own; a textile that is not a toy is covered":
    "los juguetes tienen normas propias; un textil que no es un juguete está dentro",
  "glassware is covered if it is decorated with a coat that holds lead or cadmium":
    "la cristalería está dentro si lleva una decoración que contiene plomo o cadmio",
};

/** Dates that nobody knows. */
const ifOf = byRules([
  [
    /^it was made (.+), and when it was made is not known$/,
    (made) => `se hizo ${windowOf(made!)}, y no se sabe cuándo se hizo`,
  ],
  [
    /^it was made (.+), and it is known only that it was made (.+)$/,
    (made, known) => `se hizo ${windowOf(made!)}, y solo se sabe que se hizo ${making(known!)}`,
  ],
  [
    /^it was put on the market (.+), and when that was is not known$/,
    (since) => `se puso en el mercado ${windowOf(since!)}, y no se sabe cuándo fue`,
  ],
]);

const clauseOf = byRules([
  [/^only if (.+)$/, (one) => around("solo si ", ifOf(one!), "")],
  [
    /^it applies only if (.+), which the record does not say$/,
    (one) => around("se aplica solo si ", looked(conditions, one!), ", y el registro no lo dice"),
  ],
  [
    /^it binds goods made (.+), and this was made (.+)$/,
    (window, made) => `obliga para artículos hechos ${windowOf(window!)}, y este se hizo ${making(made!)}`,
  ],
  [
    /^it binds goods put on the market (.+), and this was got on (.+), before that$/,
    (since, got) =>
      `obliga para artículos puestos en el mercado ${windowOf(since!)}, y este se obtuvo antes, el ${when(got!)}`,
  ],
  [
    /^it binds goods put on the market (.+); this was made (.+), and when it was first sold is not known$/,
    (since, made) =>
      `obliga para artículos puestos en el mercado ${windowOf(since!)}; este se hizo ${making(made!)}, y no se sabe cuándo se vendió por primera vez`,
  ],
  [/^(.+)$/, (text) => looked(clauses, text!)],
]);

/** Clauses behind one another, parted by semicolons that some of them hold themselves. */
function clausesOf(text: string): Told {
  const whole = clauseOf(text);
  if (whole !== null) return whole;
  for (let at = text.indexOf("; "); at >= 0; at = text.indexOf("; ", at + 1)) {
    const first = clauseOf(text.slice(0, at));
    const rest = first === null ? null : clausesOf(text.slice(at + 2));
    if (rest !== null) return `${first}; ${rest}`;
  }
  return null;
}

const all = (told: readonly Told[], between: string): Told => (told.includes(null) ? null : told.join(between));

/** One sentence of a reason; null where it is none of these. */
export const reasonSentence = byRules([
  [
    /^A settlement benchmark: it binds only its parties\.$/,
    () => "Un valor de un acuerdo judicial: obliga solo a sus partes.",
  ],
  [/^Voluntary unless a country adopts it\.$/, () => "Voluntario si ningún país lo adopta."],
  [
    /^For reference: it is laid upon (.+), not upon objects like this one\.$/,
    (target) => around("Como referencia: rige para ", looked(targets, target!), ", no para objetos como este."),
  ],
  [
    /^(.+): this kind of object and part is in its scope(?:, if (.+))?\.$/,
    (place, ifs) =>
      around(
        `${looked(placeNames, place!) ?? place}: este tipo de objeto y de parte está en lo que abarca`,
        ifs === undefined ? "" : around(", si ", all(ifs.split(", if ").map(ifOf), ", si "), ""),
        ".",
      ),
  ],
  [
    /^It binds goods made (.+); this was made (.+)\.$/,
    (window, made) => `Obliga para artículos hechos ${windowOf(window!)}; este se hizo ${making(made!)}.`,
  ],
  [
    /^It binds goods put on the market (.+); this was made (.+)\.$/,
    (since, made) => `Obliga para artículos puestos en el mercado ${windowOf(since!)}; este se hizo ${making(made!)}.`,
  ],
  [
    /^Used goods sold for charity or by people who had them for use have partial relief\.$/,
    () =>
      "Los artículos usados que se venden con fines benéficos, o que vende quien los tenía para usar, tienen un alivio parcial.",
  ],
  [
    /^A key itself is out until 1 July 2028; a key ring and its fob are not\.$/,
    () => "Una llave misma queda fuera hasta el 1 de julio de 2028; un llavero y su colgante no.",
  ],
  [
    /^Casual resale and resale by nonprofits are out\.$/,
    () => "La reventa ocasional y la de entidades sin fines de lucro quedan fuera.",
  ],
  [/^It may apply: (.+)\.$/, (text) => around("Puede aplicarse: ", clausesOf(text!), ".")],
  [/^For reference only: (.*)\.$/, (text) => around("Solo como referencia: ", clausesOf(text!), ".")],
  [/^It is guidance, not a binding limit\.$/, () => "Es una orientación, no un límite obligatorio."],
  [
    /^It has been replaced since, and stays the number for goods made in its time\.$/,
    () => "Se ha sustituido desde entonces, y sigue siendo el número para los artículos hechos en su tiempo.",
  ],
  [
    /^The rule is in effect; compliance is asked for from (.+)\.$/,
    (day) => `La norma ya rige; su cumplimiento se exige desde el ${when(day!)}.`,
  ],
  [
    /^Cannot be compared: the limit is on (.+); a chemical test would be needed\.$/,
    (form) =>
      around("No se puede comparar: el límite es para ", looked(forms, form!), "; haría falta un ensayo químico."),
  ],
  [
    /^Cannot be compared: the limit is on (.+) \(([^)]+)\), and what was measured is (.+) \(([^)]+)\)\.$/,
    (limit, unit, measured, measuredUnit) => {
      const unitIn = (one: string): string => formatWordsIn.es.units[one] ?? one;
      const [asked, had] = [looked(quantities, limit!), looked(quantities, measured!)];
      if (asked === null || had === null) return null;
      return `No se puede comparar: el límite es para ${asked} (${unitIn(unit!)}), y lo que se midió es ${had} (${unitIn(measuredUnit!)}).`;
    },
  ],
  [
    /^It would need (.+?)(?:, for ((?:hexavalent|brominated).+))?\.$/,
    (test, form) =>
      around("Haría falta ", looked(tests, test!), form === undefined ? "." : `, para ${looked(forms, form) ?? form}.`),
  ],
  [
    /^A total content below that number cannot release more than it; a total above it says nothing\.$/,
    () => "Un contenido total por debajo de ese número no puede soltar más que él; un total por encima no dice nada.",
  ],
  [/^The rule: (.+)\.$/, (rule) => around("La regla: ", looked(limitNotes, rule!), ".")],
]);
