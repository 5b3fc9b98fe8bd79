import type { VerdictSentences } from "../verdicts.ts";

export const verdictSentences: VerdictSentences = {
  verdicts: {
    above: "por encima del límite",
    below: "por debajo del límite",
    "too-close": "demasiado cerca para decidir",
    "not-detected": "no detectado",
    "cannot-say": "no se puede comparar",
  },
  thatItIsAbove: (chances) => `${chances} de que esté por encima`,
  testDayRules: (day) => `; según las normas del día del ensayo, ${day}`,
  laterRules: (day) => `; según las normas del ${day}, posteriores al ensayo`,
  reference: " (solo para comparar; este límite no se aplica aquí)",
  referenceBeside: " (solo para comparar)",
  checked: {
    verified: "leído en el texto de la propia norma",
    "second-hand": "leído en un texto sobre la norma, no en la norma misma",
    "from memory": "de memoria, sin comprobar con la norma",
  },
  whichDay: {
    "test-day": "el día del ensayo",
    today: "el día en que se hizo esta página",
    both: "el día del ensayo; igual el día en que se hizo esta página",
  },
};
