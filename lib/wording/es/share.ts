import type { ShareSentences } from "../share.ts";

export const shareSentences: ShareSentences = {
  title: "Para imprimir y pasar a otros",
  report: "Informe en una página",
  labels: "Hoja de etiquetas con código QR",
  label: "Una etiqueta (SVG)",
  card: "Tarjeta para su propia página (SVG)",
  embed: "Para mostrar la tarjeta en una página suya, ponga esto en ella:",
  labelsTitle: (name) => `Etiquetas: ${name}`,
  labelsLead:
    "Veinticuatro etiquetas en una página A4. Imprima a tamaño real, no «ajustado a la página». El código lleva a la página del objeto, que siempre muestra la revisión más reciente.",
  print: "Imprima con la orden de imprimir de su navegador.",
  scan: "Escanee y vea el resultado",
  reportTitle: (name) => `Informe: ${name}`,
  reportOf: (revision, day) => `Revisión ${revision}, publicada el ${day}`,
  more: (n) =>
    n === 1 ? "1 resultado más está en la página del objeto." : `${n} resultados más están en la página del objeto.`,
  method: "Cómo se calculó",
  columns: { what: "Parte y elemento", result: "Resultado", verdict: "Frente al límite" },
  noLimit: "sin límite con el que comparar",
  made: (method) =>
    `El resultado principal se hizo con ${method}; un intervalo indicado aquí acierta unas 19 veces de cada 20.`,
  by: (on, testers, instruments) =>
    `Ensayado el ${on}${testers ? ` por ${testers}` : ""}${instruments ? ` con ${instruments}` : ""}.`,
  review: (text) => `Revisión: ${text}${text.endsWith(".") ? "" : "."}`,
  codeOf: (address) => `Código QR de ${address}`,
  sealed: (seq) => `La entrada ${seq} del registro de publicaciones guarda el SHA-256 de los datos de esta revisión:`,
  terms: (licence, contact) => `Datos: ${licence}.${contact ? ` Preguntas y correcciones: ${contact}.` : ""}`,
  superseded: (newest) => `Hay una revisión más reciente: ${newest}.`,
  withdrawn: "Este resultado se retiró. No lo use.",
  invented: "Datos inventados, hechos para una demostración.",
  inventedShort: "Inventado para una demostración.",
  dataset: (name) => `Lo que contiene: ${name}`,
  tested: (day) => `Ensayado el ${day}`,
  testedOn: (day, revision) => `Ensayado el ${day}, revisión ${revision}.`,
  cautions: {
    total: "Los rayos X muestran qué hay en el material, no qué sale de él ni qué entra en un cuerpo.",
    lead: "No se conoce ningún nivel de plomo que sea seguro para un niño.",
    thisOne: "Solo el objeto que se ensayó. Otros pueden ser distintos.",
    blood: "¿Le preocupa un niño? Pregunte a un médico por un análisis de plomo en sangre.",
    place:
      "Para pintura, polvo o tierra en una vivienda, consulte a un evaluador acreditado. Las normas cambian de un lugar a otro.",
  },
};
