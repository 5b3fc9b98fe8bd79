import type { LimitSentences } from "../limit-words.ts";
import { runTogether, withArticle } from "./run-together.ts";

export const limitSentences: LimitSentences = {
  noNumber: "una norma sin número",
  replaced: "sustituido antes de su primer día",
  nowUnknown: "ahora; no se sabe desde cuándo",
  since: (when) => `desde ${withArticle(when)}`,
  from: (when) => runTogether(`a partir de ${withArticle(when)}`),
  until: (when) => `hasta ${withArticle(when)}`,
  fromTo: (start, end) => runTogether(`de ${withArticle(start)} a ${withArticle(end)}`),
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
