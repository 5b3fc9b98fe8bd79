import type { AmountSentences } from "../amounts.ts";
import { counted } from "../formats.ts";
import { runTogether } from "./run-together.ts";

export const amountSentences: AmountSentences = {
  holds: (about, amount, element) => `Esta parte contiene ${about ? "alrededor de " : ""}${amount} de ${element}.`,
  sealed: "Es una estimación: nadie pudo llegar a esta parte, así que su tamaño y su composición son suposiciones.",
  brackets:
    "Los números entre paréntesis son el intervalo en que la cantidad verdadera queda 95 veces de cada 100, si las cifras introducidas son correctas.",
  dominates: (most, what, share) =>
    `${most ? "La mayor parte de la duda viene de" : "La parte más grande de la duda viene de"} ${what} (${share}). Mida eso mejor primero.`,
  density: (density, source, checked) => `Densidad usada: ${density}. De dónde viene: ${source}${checked}.`,
  spread: (loading, area) => `Repartido por igual, daría ${loading} sobre ${area}.`,
  surfaces: { floor: "pisos", sill: "alféizares", trough: "canales de ventana" },
  since: (day) => `desde el ${day}`,
  fromTo: (from, until) => `del ${from} al ${until}`,
  reference: (loading, surface, period, area) => `A ${loading}, el límite de polvo para ${surface} ${period}: ${area}.`,
  allOfIt: "Todo",
  half: "La mitad",
  halved: (times) => `Partido por la mitad ${counted(times, "vez", "veces")}`,
  about: (atMost, what) => runTogether(`${atMost ? "Como máximo, alrededor de" : "Alrededor de"} ${what}.`),
  areaOf: (thing) => runTogether(`la superficie de ${thing}`),
  weightOf: (thing) => runTogether(`el peso de ${thing}`),
  times: (times, what) => `${times} veces ${what}`,
  shareOf: (share, what) => `${share} de ${what}`,
  onePartIn: (parts) => `una parte de ${parts}`,
  coin: "El peso de una moneda es el peso de su metal. No es la cantidad de plomo en una pieza de ese tamaño.",
  ball: (element, amount, across) => `Como una bola de ${element} puro, ${amount} tendrían ${across} de diámetro.`,
  coating: (loading, content) => `En un recubrimiento de este grosor y densidad, ${loading} y ${content} son lo mismo.`,
  comparisons: {
    "total-over-daily-intake":
      "Solo aritmética: toda la cantidad que hay en el objeto, dividida por un valor diario de referencia para alimentos. Nadie ingiere toda la cantidad.",
    "leached-into-volume":
      "Solo aritmética: lo que el ácido de un laboratorio extrajo en un día. Una comida extrae otra cantidad, casi siempre menor.",
  },
  notInChild: {
    code: "amount-not-in-child",
    title: "En el objeto, no en un niño",
    text: "Esto es cuánto hay en el objeto. No es cuánto sale de él, ni cuánto entra en un niño.",
  },
  notDust: {
    code: "amount-not-dust",
    title: "Una imagen, no una predicción",
    text: "Las superficies muestran lo poco que hace falta para llegar a un límite de polvo. No dicen que este objeto vaya a convertirse en polvo.",
  },
  nextSteps: {
    code: "what-to-do",
    title: "Qué hacer ahora",
    text: "Mantenga el objeto lejos de los niños y de la comida. No lo lije, raspe, corte ni caliente. Si un niño lo ha usado o mordido, pregunte a un médico por un análisis de plomo en sangre.",
  },
  localRules: {
    code: "local-rules",
    title: "Pregunte a quien conoce el lugar",
    text: "Para pintura, polvo o tierra en una vivienda, consulte a un evaluador de plomo acreditado. Las normas locales van primero: pueden pedir más que los límites que se muestran aquí.",
  },
};
