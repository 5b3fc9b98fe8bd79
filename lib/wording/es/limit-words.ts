import type { LimitSentences } from "../limit-words.ts";

export const limitSentences: LimitSentences = {
  noNumber: "una norma sin número",
  replaced: "sustituido antes de su primer día",
  nowUnknown: "ahora; no se sabe desde cuándo",
  since: (day) => `desde ${day}`,
  until: (day) => `hasta ${day}`,
  fromTo: (start, end) => `de ${start} a ${end}`,
  nature: {
    binding: "obligatorio donde y para lo que dice",
    guidance: "orientación: consejo de una autoridad",
    settlement: "acuerdo: convenido por ciertas empresas en un proceso judicial",
    advisory: "indicativo: un nivel ante el que actuar, no una cota",
  },
  fails: {
    ">": "por encima del número; el número mismo todavía cumple",
    ">=": "en el número y por encima",
  },
};
