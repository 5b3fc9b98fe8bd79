import type { BudgetWords } from "../budget.ts";

export const budgetWords: BudgetWords = {
  names: {
    "scatter-and-counting": "Dispersión entre puntos y recuento",
    scatter: "Dispersión entre puntos",
    counting: "Recuento en el analizador",
    calibration: "Calibración del analizador",
    "certified-value": "Valor certificado del patrón de control",
    recovery: "Lo que mostró el patrón de control",
    "matrix-geometry": "Material y forma de la parte",
    matrix: "Material de la parte",
    geometry: "Forma de la parte",
    thickness: "Grosor de la parte",
  },
  sources: {
    "instrument-default":
      "declarado por quien ensayó para este analizador; ningún patrón de control lo ha demostrado todavía",
    "check-standard-certificate": "el certificado del patrón de control",
    "check-standard-difference":
      "el patrón de control se leyó a esa distancia de su valor certificado; las lecturas no se corrigen por ello",
    "check-standard-corrected": "las lecturas del patrón de control, con las que se corrigen estas lecturas",
    "one-spot": "las lecturas en el único punto",
    "random-effects": "los puntos y cuánto difieren",
    lognormal: "los puntos y cuánto difieren, como cantidades que se dispersan más hacia arriba",
    "censored-normal": "los puntos; los que quedan por debajo de la detección cuentan como tales",
    "censored-lognormal": "los puntos; los que quedan por debajo de la detección cuentan como tales",
    "mean-of-spots": "cuánto difieren los puntos; el archivo no da errores",
  },
  evaluation: { A: "de las propias lecturas (tipo A)", B: "de otros conocimientos (tipo B)" },
  underOne: "menos del 1 %",
  shared: (session) =>
    `; igual para todos los resultados de la sesión ${session}, así que se deja fuera donde se comparan dos de ellos`,
};
