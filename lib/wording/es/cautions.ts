import type { CautionSentences } from "../cautions.ts";

export const cautionSentences: CautionSentences = {
  always: {
    "total-content": {
      code: "total-content",
      title: "Lo que contiene no es lo que suelta",
      text: "El analizador muestra cuánto hay en el material. No muestra cuánto sale de él ni cuánto entra en un cuerpo. Solo un ensayo de lixiviación en un laboratorio puede mostrar lo que sale.",
    },
    "no-known-level": {
      code: "no-known-level",
      title: "El plomo y los niños",
      text: "No se conoce ningún nivel de plomo que sea seguro para un niño. Un número por debajo de un límite no cambia eso.",
    },
    "blood-test": {
      code: "blood-test",
      title: "¿Le preocupa un niño?",
      text: "Pregunte a un médico por un análisis de plomo en sangre. Solo un análisis de sangre puede mostrar si ha entrado plomo en un cuerpo. Esta página no puede.",
    },
    "other-substances": {
      code: "other-substances",
      title: "Lo que no buscamos",
      text: "Informamos solo de lo que aquí se enumera. También puede contener otras sustancias.",
    },
    "this-one-only": {
      code: "this-one-only",
      title: "Este, y ningún otro",
      text: "Ensayamos exactamente el objeto que aquí se describe. Otro puede ser distinto, aunque parezca igual.",
    },
    "licensed-assessor": {
      code: "licensed-assessor",
      title: "Pintura en una vivienda",
      text: "Esta página trata de un objeto suelto. Para pintura, polvo o tierra en una vivienda, consulte a un evaluador de plomo acreditado.",
    },
    "local-law": {
      code: "local-law",
      title: "Las normas cambian de un lugar a otro",
      text: "Un límite que se muestra aquí puede no obligar donde usted vive, o no obligar a un objeto de esta época. Decimos cómo se compara un número. No decimos lo que la ley le pide a usted.",
    },
  },
  radiation: {
    code: "radiation",
    title: "Rayos X",
    text: "El analizador emite rayos X. No lo apunte nunca a una persona ni a un animal, y no sostenga nunca el objeto en la mano durante un disparo. Úselo solo con la formación, la protección y la licencia que se exigen en su lugar.",
  },
  lookedFor: (names) => `Aquí buscamos ${names}. `,
};
