import type { LimitChangeSentences } from "../limit-changes.ts";

export const limitChangeSentences: LimitChangeSentences = {
  title: "Los límites desde el ensayo",
  caution:
    "Los veredictos de esta página comparan el resultado con los límites del día del ensayo y del día de la publicación. Lo que cambió después solo se enumera aquí.",
  beside: "solo para comparar",
  noneSince: (tested) => `El ensayo fue el ${tested}. Ningún límite ha cambiado desde entonces.`,
  noneFromTo: (tested, today) =>
    `Ningún límite que conozcamos para estas partes y elementos ha cambiado desde el día del ensayo, ${tested}, hasta el ${today}.`,
  lead: (tested) => `Estos límites cambiaron después del día del ensayo, ${tested}:`,
  replaced: (day, after, before) => `El ${day}: ${after}. Antes era ${before}.`,
  begun: (day, limit) => `Nuevo el ${day}: ${limit}.`,
  changed: (day) => `Cambió el ${day}.`,
  ended: (day, limit) => `Terminó el ${day}: ${limit}.`,
  about: (what) => `Para ${what}.`,
  elementIn: (element, part) => `${element} en ${part}`,
};
