import type { FigureSentences } from "../result-figures.ts";

export const figureSentences: FigureSentences = {
  highestSpot: (amount) => `punto más alto ${amount}`,
  highestSpotSentence: (amount) => `Punto más alto ${amount}.`,
  limits: (names) => `Límites en la misma escala: ${names}.`,
  noLimits: "No hay ningún límite en la misma escala.",
  reading: (name) => `lectura ${name}`,
  nothingSeen: "No se vio nada en ningún punto",
  seenAt: (seen, spots) => `Visto en ${seen} de ${spots} puntos`,
  oneSpot: "Se midió un solo punto",
  spotBySpot: "Las lecturas, punto por punto",
  differ: (low, high) => `Los puntos difieren mucho: de ${low} a ${high}`,
  lie: (low, high) => `Los puntos van de ${low} a ${high}`,
  note: (unit) =>
    `En ${unit}. Cada círculo es una lectura; su barra alcanza dos incertidumbres típicas a cada lado. Una barra abierta no se detectó y termina en lo que el analizador podía ver. Un círculo hueco se apartó y no cuenta. La línea vertical fina es el valor del punto.`,
  scale: (unit) => `Escala en ${unit}`,
  key: "Una barra negra es el intervalo que con más probabilidad contiene la cantidad verdadera; su trazo vertical es el valor. Una barra abierta quiere decir no detectado: como máximo hasta su extremo. Un rombo es el punto más alto, una línea fina el intervalo de una parte desigual. Las líneas discontinuas son límites. Pasos iguales hacia la derecha multiplican la cantidad.",
};
