import type { DepthSentences } from "../depth.ts";

export const depthSentences: DepthSentences = {
  sees: (element, depth, material) => `El analizador ve ${element} hasta unos ${depth} de profundidad en ${material}.`,
  caution: "Esta profundidad está calculada para una composición típica del material; la real puede ser mayor o menor.",
  thicker: "La parte es más gruesa que eso, así que más grosor no cambiaría el número.",
  thinner: (share) =>
    `La parte es más delgada que eso: da ${share} de la señal que daría una gruesa, y el analizador ve también lo que hay detrás.`,
  underOne: "menos de 1 de cada 100 partes",
  about: (parts) => `unas ${parts} de cada 100 partes`,
  materials: { pvc: "vinilo (PVC)", abs: "plástico ABS" },
};
