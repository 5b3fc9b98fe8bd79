import type { FlagCode } from "../../reconcile/types.ts";
import type { FlagWords } from "../flags.ts";

export const flagWords: Record<FlagCode, FlagWords> = {
  "one-spot": {
    label: "Un solo punto",
    sentence: "Solo se midió un punto de esta parte, así que no podemos decir cómo es el resto.",
  },
  "few-readings": {
    label: "Pocas lecturas",
    sentence: "Hay menos de tres lecturas, así que el resultado es menos seguro de lo que podría ser.",
  },
  "scatter-beyond-counting": {
    label: "Los puntos difieren",
    sentence:
      "Los puntos difieren más de lo que explica el error del propio analizador; el intervalo indicado ya lo tiene en cuenta.",
  },
  uneven: {
    label: "Desigual",
    sentence: "La cantidad cambia mucho de un punto a otro, así que mire primero el intervalo y el punto más alto.",
  },
  "outlier-candidate": {
    label: "Una lectura se aparta",
    sentence: "Al menos una lectura queda lejos de las demás; nadie la quitó, y una persona debería mirarla.",
  },
  "drift-in-session": {
    label: "Lecturas con deriva",
    sentence:
      "Las lecturas fueron cambiando en un mismo sentido durante la sesión, lo que puede significar que el analizador derivaba.",
  },
  "short-count": {
    label: "Disparo corto",
    sentence: "Al menos un disparo duró menos que el tiempo fijado para este analizador, así que su error es mayor.",
  },
  "check-missing": {
    label: "Sin patrón de control",
    sentence:
      "Ningún patrón de control muestra lo bien que el analizador leía este elemento ese día, así que su exactitud se toma de un valor declarado.",
  },
  "check-failed": {
    label: "Control fallido",
    sentence:
      "El analizador leyó mal un patrón de control antes o después de algunas de estas lecturas; se dejan fuera, o la página dice por qué se usan.",
  },
  "screening-only": {
    label: "Solo cribado",
    sentence:
      "Los rayos X vieron también lo que hay bajo el recubrimiento, así que el número es orientativo y no un contenido exacto.",
  },
  "not-infinitely-thick": {
    label: "Parte delgada",
    sentence:
      "La parte es más delgada que lo que alcanzan los rayos X, así que el número puede ser demasiado bajo o demasiado alto.",
  },
  "smaller-than-window": {
    label: "Menor que la ventana",
    sentence:
      "La parte es más pequeña que la ventana del analizador, así que el analizador vio también lo que hay alrededor.",
  },
  "lead-arsenic-overlap": {
    label: "El plomo oculta el arsénico",
    sentence:
      "El plomo y el arsénico se parecen para el analizador; junto a tanto plomo, un número de arsénico significa poco.",
  },
  "outside-calibrated-range": {
    label: "Fuera del intervalo calibrado",
    sentence: "El valor queda fuera del intervalo para el que se calibró el analizador.",
  },
  "error-unknown": {
    label: "Error no indicado",
    sentence:
      "El archivo no da el error de al menos una lectura, así que su parte del intervalo sale solo de la dispersión.",
  },
  "mixed-detection": {
    label: "Hallado en algunos puntos",
    sentence:
      "Se halló en algunos puntos y en otros no; los puntos sin él cuentan como por debajo de su límite de detección.",
  },
  "near-detection-limit": {
    label: "Cerca del límite de detección",
    sentence: "El valor está cerca de lo mínimo que puede ver el analizador, así que es menos seguro.",
  },
  "excluded-readings": {
    label: "Lecturas apartadas",
    sentence:
      "Al menos una lectura se dejó fuera, con la razón escrita a su lado; junto al resultado se muestra el valor con ella.",
  },
  "no-spots-named": {
    label: "Puntos sin nombre",
    sentence: "El archivo no dice dónde se hizo cada disparo, así que cada uno cuenta como un punto propio.",
  },
};
