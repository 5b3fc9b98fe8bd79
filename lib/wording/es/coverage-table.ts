import type { CoverageSentences } from "../coverage-table.ts";
import { counted } from "../formats.ts";

export const coverageSentences: CoverageSentences = {
  title: "Con qué frecuencia acierta el intervalo",
  lead: (parts, each, kinds, meeting) =>
    `Inventamos ${parts} partes cuyo contenido verdadero conocíamos y pasamos cada una por todo el método, ${each} de cada uno de ${kinds} tipos de parte. De estos tipos, ${meeting} cumplen nuestras metas.`,
  aims: (covered, unsafe, wrongBelow) =>
    `Las metas: de los intervalos indicados, al menos ${covered} de cada 100 contienen la media verdadera, no más de ${unsafe} de cada 100 quedan enteros por debajo de ella (el lado peligroso), y de no más de ${wrongBelow} de cada 100 partes se dice «por debajo» de un límite que en verdad superan.`,
  onPaper:
    "Las tablas en que esto se apoya llenan muchas hojas y se omiten en papel. Están en esta página, en una pantalla.",
  made: (version, policy) =>
    `Simulado con la versión ${version} del método, política ${policy}. Cualquiera puede repetirlo: npm run coverage. `,
  atEdge: (kinds) =>
    `${kinds} de los tipos que cumplen las metas salieron justo en el lado malo de una, por menos de lo que el azar solo explica con este número de partes.`,
  shortTitle: "Tipos de parte que no llegan",
  reading:
    "En cada celda: de los intervalos indicados, cuántos contenían la media verdadera y cuántos eran demasiado bajos; de todas las partes, de cuántas se dijo por error «por debajo» de un límite; cuántas recibieron un intervalo; y la anchura típica de un intervalo, como múltiplo de la media. Dispersión es cuánto difieren los lugares de una parte; error, el del propio analizador; los dos, frente a la media. «Sin ver» es la proporción de lecturas por debajo de lo que se detecta.",
  columns: { spots: "Puntos", spread: "Dispersión", error: "Error", parts: "Partes" },
  allSeen: "Todos los puntos vistos",
  notSeen: (share) => `${share} % sin ver`,
  group: (shape, kinds, short) =>
    `${shape}: ${counted(kinds, "tipo")} de parte, ${short === 0 ? "todos cumplen las metas" : `${short} de ellos no llegan`}`,
  shapes: {
    even: "Igual en todas partes",
    normal: "Desigual, tan a menudo por encima de la media como por debajo (normal)",
    lognormal: "Desigual, unos pocos lugares altos (lognormal)",
    gamma: "Desigual, muchos lugares bajos (gamma)",
  },
  missed: {
    covered: (times) => `el intervalo contenía la verdad ${times} veces de cada 100`,
    unsafe: (times) => `el intervalo era demasiado bajo ${times} veces de cada 100`,
    wrongBelow: (times) => `«por debajo» era un error ${times} veces de cada 100`,
  },
  edge: "En el borde: el azar solo podría explicarlo",
  short: (missed) => `No llega: ${missed}`,
  cell: (covered, unsafe, wrongBelow, stated, width) =>
    `contenía ${covered}, demasiado bajo ${unsafe}, «por debajo» por error ${wrongBelow}; indicado ${stated}, anchura ${width}`,
  over100: "más de 100",
  to: (least, most) => `de ${least} a ${most}`,
  kind: (shape, spots, spread, error, below) =>
    `${shape}, ${counted(spots, "punto")}, dispersión ${spread} %, error de recuento ${error} %, ${below} % sin ver`,
  inParts: (said, parts) => `${said} (${counted(parts, "parte")}).`,
};
