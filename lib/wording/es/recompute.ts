import { counted } from "../formats.ts";
import type { RecomputeSentences } from "../recompute.ts";

export const recomputeSentences: RecomputeSentences = {
  title: "Vuelva a calcularlo usted mismo",
  lead: "Su propio navegador pide las lecturas de esta revisión y el registro de publicaciones, vuelve a calcular cada resultado con el método publicado y compara cada cifra publicada con la suya. No se envía nada a ninguna parte.",
  withoutScripts:
    "Para calcular en el navegador hacen falta scripts. Lo mismo se hace en la línea de comandos, solo con los archivos públicos:",
  button: "Pedir las lecturas y volver a calcular",
  busy: "Pidiendo y calculando …",
  again: "Volver a calcular",
  failed: (why) => `No se pudo hacer: ${why}`,
  notThere: (path, status) => `${path} respondió con el estado ${status}.`,
  unreadable: (path) => `${path} no se pudo leer.`,
  noAnswer: "el registro no respondió. ¿Tiene conexión?",
  caption: "Cada resultado, como se publicó y como lo hace su navegador",
  tableCaption: "Resultados hechos de nuevo",
  columns: {
    what: "Parte y elemento",
    published: "Publicado",
    recomputed: "Hecho de nuevo",
    figures: "Cifras comparadas",
  },
  agrees: "coincide",
  differs: "difiere",
  notMade: "no hecho",
  verdictWords: { agrees: "Coincide", differs: "Difiere", "not-checked": "Sin comprobar" },
  refused: "El método rechazó los datos de partida",
  difference: (where, published, recomputed) => `${where}: publicado ${published}, hecho de nuevo ${recomputed}`,
  nothing: "nada",
  quote: (text) => `«${text}»`,
  figuresAgree: (n) => (n === 1 ? "1 cifra coincide" : `${n} cifras coinciden`),
  figuresDiffer: (n, of) => `${n} de ${counted(of, "cifra")} ${n === 1 ? "difiere" : "difieren"}`,
  needsSecure:
    "Los hashes no se comprobaron: los navegadores solo los hacen en una página que llegó por https o desde esta misma máquina.",
  noResult: "Esta revisión no indica ningún resultado, así que no hay nada que calcular.",
  allSame: (figures, results) =>
    `Las ${counted(figures, "cifra publicada", "cifras publicadas")} de ${counted(results, "resultado")} salen iguales.`,
  notSame: (differing, results) =>
    `${differing} de ${counted(results, "resultado")} ${differing === 1 ? "no sale" : "no salen"} como se publicó.`,
  partly: (n) =>
    `${counted(n, "resultado")} de esta revisión ${n === 1 ? "salió" : "salieron"} antes de que se guardaran los datos de partida: los tamaños del balance se tomaron como se publicaron, y los avisos no se compararon.`,
  fitness: "Si el analizador era apto se toma como se publicó: se sigue de sus lecturas de control, no de estas.",
  sameRows: (rows) => `readings.csv contiene ${counted(rows, "fila")}, igual que la revisión.`,
  otherRows: (cells, row, column) =>
    `readings.csv difiere de la revisión en ${counted(cells, "celda")}; la primera, en la fila ${row}, columna ${column}.`,
  sameInputs: (n) =>
    `Los datos de partida de ${n === 1 ? "el resultado" : `los ${n} resultados`} tienen el SHA-256 publicado.`,
  otherInputs: (n) => `Los datos de partida de ${counted(n, "resultado")} tienen otro SHA-256 que el publicado.`,
  notListed: "El registro de publicaciones no enumera esta revisión.",
  sealed: (seq, entries) =>
    `Los bytes de esta revisión tienen el SHA-256 que guarda la entrada ${seq} del registro, y ${entries === 1 ? "esa entrada está sellada" : `las ${entries} entradas están selladas y se siguen una a otra`}.`,
  signed: (seq) => `La firma de la entrada ${seq}, la cabeza del registro, es válida con la clave del registro.`,
  cannotSign:
    "La firma de la cabeza no se comprobó: este navegador no conoce Ed25519. La página del registro dice cómo hacerlo a mano.",
  notSigned: "La cabeza del registro no está firmada.",
};
