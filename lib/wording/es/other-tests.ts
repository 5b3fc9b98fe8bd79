import type { OtherTestSentences } from "../other-tests.ts";

export const otherTestSentences: OtherTestSentences = {
  labels: {
    wipe: "Toallita pasada por una superficie",
    leachate: "Lo que pasó a un líquido",
    laboratory: "Resultado de un laboratorio",
  },
  notes: {
    wipe: "Una toallita húmeda recoge lo que está suelto en una superficie. Dice lo que recogería una mano, no lo que hay en el objeto.",
    leachate:
      "Un líquido estuvo en el objeto y se analizó. Dice lo que salió en esas condiciones, no lo que hay en él.",
    laboratory: "Un trozo o una muestra se analizó en un laboratorio. Dice lo que contenía esa muestra.",
  },
  words: {
    title: "Otros ensayos",
    lead: "Son ensayos de otros tipos. Nunca se mezclan con las lecturas del analizador, y cada uno se compara solo con límites de su propio tipo.",
    blank: "El blanco del laboratorio",
    noUncertainty: "sin incertidumbre declarada",
    none: "No hay anotado ningún resultado de toallita, lixiviado o laboratorio.",
    noLimit: "Ningún límite de este tipo en nuestra tabla lo cubre.",
    noFigure: "sin cifra",
    below: (amount) => `menos de ${amount}`,
    uncertainty: (amount) => `incertidumbre típica ${amount}`,
    asWritten: "Como lo escribe el informe",
    areaWiped: "Superficie recogida",
    laboratory: "Laboratorio",
    method: "Método",
    reportedOn: "Informe del",
    certificate: "Certificado",
    note: "Nota",
    inForceOn: "En vigor el",
  },
};
