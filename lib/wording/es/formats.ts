import type { FormatWords } from "../formats.ts";

/** A decimal comma, groups of three from five digits on (Ortografía de la lengua española, 2010; SI Brochure, 5.4.4). */
export const formatWords: FormatWords = {
  decimal: ",",
  to: "a",
  and: (next) => (/^h?i(?!e)/i.test(next) ? "e" : "y"),
  months: "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre".split(" "),
  date: (day, month, year) => `${day} de ${month} de ${year}`,
  monthOf: (month, year) => `${month} de ${year}`,
  below: (amount) => `menos de ${amount}`,
  notDetected: "no detectado",
  differing: "distinto de un punto a otro",
  seenAt: (seen, spots) => `detectado en ${seen} de ${spots} puntos`,
  atMost: (amount) => `como máximo ${amount}`,
  noResult: "sin resultado",
  or: (one, other) => `${one}, o ${other}`,
  chances: {
    atLeast: "al menos 99 posibilidades de 100",
    atMost: "como máximo 1 posibilidad de 100",
    about: (whole) => `unas ${whole} posibilidades de 100`,
  },
  revision: (revision, date) => `revisión ${revision}, ${date}`,
  units: {
    "µg/day": "µg/día",
    "µg/cm²/week": "µg/cm²/semana",
    "days of the benchmark": "días del valor de referencia",
  },
};
