import { counted } from "../formats.ts";
import type { ModelSentences } from "../models.ts";

const listedAllTheSame = (n: number): string =>
  n === 1 ? "Aun así figura en la lista." : "Aun así figuran en la lista.";

export const modelSentences: ModelSentences = {
  sentences: {
    "one-spot": "Solo se midió un punto, así que su valor representa la parte.",
    "random-effects":
      "Los puntos se unieron de modo que los más seguros cuentan más, y el intervalo admite que los puntos difieran (efectos aleatorios, Paule–Mandel con Hartung–Knapp).",
    lognormal:
      "Los puntos difieren mucho, así que el intervalo llega más lejos hacia arriba que hacia abajo (efectos aleatorios lognormales, perfil de verosimilitud).",
    "censored-normal":
      "Algunos puntos estaban por debajo de lo que el analizador puede ver; cuentan como «menos que eso», nunca como cero (normal censurada, perfil de verosimilitud).",
    "censored-lognormal":
      "Los puntos difieren mucho y algunos estaban por debajo de lo que el analizador puede ver; cuentan como «menos que eso», nunca como cero (lognormal censurada, perfil de verosimilitud).",
    "mean-of-spots":
      "El archivo no da errores, así que se indica la media simple de los puntos, y su intervalo sale de cuánto difieren.",
    none: "No se pudo indicar un solo número.",
  },
  labels: {
    "one-spot": "Un punto",
    "random-effects": "Efectos aleatorios",
    lognormal: "Lognormal",
    "censored-normal": "Normal censurada",
    "censored-lognormal": "Lognormal censurada",
    "mean-of-spots": "Media de los puntos",
    none: "Ninguno",
  },
  notes: {
    "interval-from-zero":
      "El intervalo llegaría por debajo de cero. Ningún contenido puede, así que se indica desde cero.",
    "interval-to-whole":
      "El intervalo llegaría más allá del total de la parte. Se corta ahí, lo que dice que los puntos no fijan un extremo superior útil: hacen falta más puntos.",
    "model-cannot-serve":
      "Los puntos difieren tanto, y son tan pocos, que no se puede calcular un intervalo. Indicamos el punto más bajo y el más alto.",
    "no-upper-bound": "No se pudo calcular una cota superior con tan pocas detecciones.",
    "non-detect-without-limit":
      "Al menos un punto se dio como no detectado sin decir por debajo de qué, así que no se puede indicar una cota a partir de él.",
  },
  steps: {
    took: (readings, spots) => `Tomamos ${counted(readings, "lectura")} en ${counted(spots, "punto")}.`,
    sameSpot:
      "Las lecturas en un mismo punto pasaron a ser un valor de ese punto. Si difieren más de lo que explican sus errores, el error del punto creció en consecuencia.",
    notDetected:
      "No se vio nada en ningún punto. Indicamos el más alto de los límites de detección de los puntos: todos los puntos estaban por debajo.",
    fewSpots:
      "Tan pocos puntos pueden haber pasado por alto lugares que contienen más, así que un límite se compara con una cota más alta, que admite una parte tan desigual como fija la política.",
    notQuantified:
      "Se vio en demasiado pocos puntos para dar un solo número a la parte. Decimos dónde se vio y cuánto puede haber como máximo.",
    budget: "Después añadimos las demás fuentes de error, como la calibración del analizador.",
    range: "El intervalo está hecho para contener el valor verdadero unas 19 veces de cada 20.",
    byPerson: (n) => `Una persona apartó ${counted(n, "lectura")} y escribió por qué. ${listedAllTheSame(n)}`,
    nearFailedCheck: (n) =>
      `${n === 1 ? "Se dejó fuera 1 lectura cercana" : `Se dejaron fuera ${n} lecturas cercanas`} a un control fallido del analizador. ${listedAllTheSame(n)}`,
    noneLeftOut: "No se dejó fuera ninguna lectura.",
    corrected:
      "Las lecturas se corrigieron según lo que el analizador leyó en un patrón de control del mismo material.",
    method: (name, version, policy) => `${name}, versión ${version}, política ${policy}`,
  },
};
