import type { Problem } from "../../quantity/problem.ts";
import { amountFieldName } from "../amount-labels.ts";
import { plainDate } from "../formats.ts";
import { type ProblemWords, quoted } from "../problem-sentence.ts";

const said = (text: string | undefined): string => quoted(text, 80, "es");
const found = ({ found: text }: Problem): string => (text ? ` Se encontró: ${said(text)}.` : "");
/** What is allowed comes as a number or two with an English word between or before. */
const allowed = ({ allowed: text }: Problem): string =>
  text ? ` Se admite: ${text.replace(/^at most /, "como máximo ").replace(/(?<=\d) to (?=[-\d])/, " a ")}.` : "";
const name = ({ where }: Problem): string =>
  where?.field ? `el campo ${amountFieldName(where.field, "es")}` : "esta cifra";
const start = (problem: Problem): string => {
  const words = name(problem);
  return words.charAt(0).toUpperCase() + words.slice(1);
};
const day = (text: string | undefined): string =>
  text !== undefined && /^\d{4}-\d{2}-\d{2}$/.test(text) ? plainDate(text, "es") : said(text);

/** The problems that a reader can meet: the calculator's and those of a request for a test. */
export const problemWords: ProblemWords = {
  "quantity-unreadable": (p) =>
    `${start(p)} no se puede leer como número.${found(p)} Escríbalo como 12, o 12 ± 0,5, o 10 a 14, o < 5.`,
  "quantity-ambiguous": (p) =>
    `${start(p)} se puede leer de dos maneras, con decimales o con millares.${found(p)} Si son decimales, añada un cero al final (1,2340) o escriba un punto; entre los millares, nada.`,
  "quantity-out-of-range": (p) =>
    `${start(p)} es mucho mayor o mucho menor de lo que puede ser.${found(p)} Compruebe el número y su unidad.`,
  "amount-field-needed": (p) => `Rellene ${name(p)}, por favor.`,
  "missing-dimension": (p) => `Esta forma no se puede calcular sin ${name(p)}. Indíquelo, por favor.`,
  "not-above-zero": (p) => `${start(p)} debe ser mayor que cero.${found(p)}`,
  "loading-zero": (p) =>
    `${start(p)} debe ser mayor que cero: ninguna cantidad, por pequeña que sea, queda en nada al repartirse.${found(p)}`,
  "area-zero": (p) =>
    `${start(p)} debe ser mayor que cero: nada se puede repartir sobre ninguna superficie.${found(p)}`,
  "content-over-100": (p) =>
    p.where?.field === "coatThickness"
      ? `No cabe tanto en un recubrimiento tan fino: el contenido pasaría del 100 %.${found(p)} Compruebe la carga y el grosor.`
      : `${start(p)} no puede pasar del 100 %.${found(p)} Compruebe el número y su unidad: 1 % son 10\u202F000 ppm.`,
  "range-upside-down": (p) => `El intervalo de ${name(p)} está al revés. Escriba primero el número menor.${found(p)}`,
  "range-from-zero": (p) =>
    `El intervalo de ${name(p)} empieza en cero, y uno lognormal no puede.${found(p)} Dé un extremo inferior mayor que cero, o quite «lognormal».`,
  "uncertainty-negative": (p) => `El número tras ± de ${name(p)} debe ser cero o más.${found(p)}`,
  "value-outside-interval": (p) =>
    `El valor de ${name(p)} debe quedar entre los dos números entre paréntesis.${found(p)}${allowed(p)}`,
  "below-not-usable": (p) =>
    `${start(p)} debe ser aquí un número o un intervalo: «menos de» dejaría la respuesta sin un extremo.${found(p)}`,
  "unknown-material": (p) => `La lista no tiene el material ${said(p.found)}. Elija uno de la lista.`,
  "density-needed": () =>
    "Aquí hace falta una densidad. Elija un material o introduzca una densidad. Un tamaño solo, o un grosor solo, no da un peso.",
  "thickness-needed": () =>
    "Aquí hace falta el grosor del recubrimiento. Sin grosor y densidad, una cantidad por superficie no se puede convertir en un contenido, ni al revés.",
  "unknown-metal": (p) =>
    `No tenemos la densidad de ${said(p.found)} como metal de una aleación.${p.allowed ? ` Tenemos ${p.allowed}.` : ""} Elija un material o introduzca una densidad.`,
  "same-metal-twice": (p) => `Una aleación se hace de dos metales. ${said(p.found)} aparece dos veces.`,
  "ring-without-rim": () =>
    "El agujero es tan ancho como el anillo o más. Compruebe el diámetro interior y el exterior.",
  "wall-too-thick": () => "La pared es tan gruesa que llena el tubo. Compruebe la pared y el diámetro exterior.",
  "heavier-than-item": (p) =>
    `Esta parte pesaría más que todo el objeto.${found(p)}${allowed(p)} Compruebe los tamaños, la densidad y el peso.`,
  "date-before-any-limit": (p) =>
    `El ${day(p.found)} todavía no regía ninguno de estos límites de polvo.${p.allowed ? ` Elija un día posterior al ${day(/\d{4}-\d{2}-\d{2}/.exec(p.allowed)?.[0])}.` : ""}`,
  "bad-date": (p) => `Ese día no existe.${found(p)} Escríbalo como año, mes y día, por ejemplo 2026-11-24.`,
  "no-content": () => "No hay ningún resultado a partir del cual calcular la cantidad.",
  "content-of-another-kind": () =>
    "De un resultado de este tipo no se puede calcular una cantidad. Hace falta un contenido o una cantidad por superficie de recubrimiento.",
  "request-too-vague": (p) =>
    `${said(p.found)} no le dice a quien ensaya qué buscar. Escriba qué es y qué lleva dibujado o estampado: «taza azul, caracol en la base».`,
  "invalid-form": () => "Revise el formulario, por favor: falta algo o algo no encaja.",
  "rate-limited": (p) =>
    `Demasiados intentos en poco tiempo. Espere ${(p.allowed ?? "1 minute").replace(/minutes?/, "min")} e inténtelo de nuevo, por favor. No se cambió nada.`,
  "too-large": () => "El archivo es demasiado grande. No se guardó nada.",
  "photo-heic": () => "Una foto HEIC no se puede leer aquí. Envíela como JPEG, PNG, WebP o AVIF, por favor.",
  "photo-other-kind": () =>
    "Ese archivo no es una foto que se pueda leer aquí. Envíe JPEG, PNG, WebP o AVIF, por favor.",
  "photo-too-many-pixels": () => "La foto tiene demasiados píxeles. Envíe una más pequeña, por favor.",
  "photo-unreadable": () => "La foto no se pudo leer. Puede que el archivo esté dañado; envíe otra, por favor.",
};
