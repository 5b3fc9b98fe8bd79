import { counted } from "../formats.ts";
import type { SessionSentences } from "../sessions.ts";

export const sessionSentences: SessionSentences = {
  fitness: {
    fit: (about) =>
      `El analizador era apto para ${about}: leyó el patrón de control a menos de un 20 % de su valor certificado.`,
    "fit-with-correction": (about) =>
      `El analizador era apto para ${about} tras una corrección: leyó el patrón de control con una desviación constante, y las lecturas se corrigen por ella.`,
    "not-fit": (about) =>
      `No se demostró que el analizador fuera apto para ${about}: leyó mal un patrón de control, y estas lecturas quedan entre ese control y los buenos que lo rodean.`,
    "not-shown": (about) =>
      `No se ha demostrado si el analizador era apto para ${about}: ese día no se leyó ningún patrón de control con un valor certificado para ello.`,
  },
  word: {
    fit: "apto",
    "fit-with-correction": "apto, con una corrección",
    "not-fit": "no apto: falló un control",
    "not-shown": "no demostrado",
  },
  day: {
    fit: "apto",
    "fit-with-correction": "apto, con una corrección",
    "not-fit": "no apto",
    "not-shown": "no demostrado",
  },
  inMode: (mode) => `, en el modo «${mode}»`,
  noModeNamed: "modo sin nombre",
  failedCheck:
    "Dejada fuera por el método: un patrón de control se leyó mal antes o después, y no hay un control bueno entre medias.",
  notEnded: (start) => `${start}, todavía sin terminar`,
  startToEnd: (start, end) => `${start} a ${end}`,
  fromBeginning: "desde el principio, ya que antes no hubo ningún control bueno",
  afterCheck: (time) => `después del control bueno de las ${time}`,
  toEnd: "hasta el final, ya que después no hubo ningún control bueno",
  untilCheck: (time) => `hasta el control bueno de las ${time}`,
  shifted: (by, earlier) =>
    `El reloj del analizador iba mal: cada hora que escribió se toma ${by} ${earlier ? "antes" : "después"}. Lo que escribió se conserva y se muestra.`,
  ofCertified: (range) => `${range} del valor certificado`,
  missed: (n) => `no detectado ${counted(n, "vez", "veces")}`,
  saysNothing: "no dice nada",
  good: "bueno",
  failed: "fallido",
  untrained: "Nadie anotó que el operador tuviera formación en protección radiológica y en este analizador.",
  leftOut:
    "Las lecturas de ese tramo se dejan fuera de todos los números de aquí. Figuran en la lista con el motivo, y cada resultado dice cuál sería con ellas.",
  usedAnyway: (reason) => `Aun así se usan, y cada página que se apoya en ellas lo dice, con este motivo: ${reason}`,
  inDoubt: (elements, mode, stretch) =>
    `Falló un control para ${elements}${mode}: las lecturas están en duda ${stretch}.`,
  noStandard: "no demostrado: no se leyó ningún patrón de control",
  noUncertainty: (elements) =>
    `El certificado no declara incertidumbre para ${elements}. Sus controles muestran si el analizador es apto, pero no se corrige nada con él, y la calibración que se declara del propio analizador se queda en el balance.`,
  uncertainty: (recovery, u) => `${recovery}, u ${u}`,
  notCorrected: "no",
  corrected: (factor, material) => `× ${factor}, partes de ${material}`,
  earlierSession: "una anterior",
  thisSession: "esta",
};
