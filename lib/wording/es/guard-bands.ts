import type { GuardBandSentences } from "../guard-bands.ts";

export const guardBandSentences: GuardBandSentences = {
  aboveFrom: (amount) => `por encima desde ${amount}`,
  belowUpTo: (amount, above) => `por debajo hasta ${amount}, ${above}`,
  neverBelow: (above) => `nunca por debajo; ${above}`,
  bands: {
    under: "está en la marca inferior de la tabla de cribado o por debajo",
    between: "está entre sus marcas: la tabla pide un ensayo químico",
    over: "está en su marca superior o por encima",
  },
  matrices: { polymer: "polímero", metal: "metal", composite: "material compuesto" },
  lowerMark: (amount) => `marca inferior ${amount}`,
  upperMark: (amount) => `marca superior ${amount}`,
  moved: (marks) => ` (${marks}, cada una desplazada 3 incertidumbres típicas)`,
  screening: (element, matrix, band) => `Para ${element} en un ${matrix}, el número ${band}.`,
  title: "Además: la tabla de cribado para aparatos eléctricos",
  note: "IEC 62321-3-1:2013, leída como la reproduce un informe de ensayo; la edición de 2026 no se ha visto. Solo para comparar: lo que no es un aparato eléctrico queda fuera de su ámbito, y no es un veredicto.",
};
