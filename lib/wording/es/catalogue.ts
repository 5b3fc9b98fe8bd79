import type { Catalogue } from "../catalogue.ts";
import { counted } from "../formats.ts";
import { siteWords } from "./site-words.ts";

const chipped =
  "Deje de usarlo para comer o jugar en cuanto esté desportillado, gastado o se descame: lo que hay debajo no se ensayó.";
const batches = "Uno que parece igual puede ser de otro lote o de otro año y tener otro esmalte u otra pintura.";

export const catalogue: Catalogue = {
  site: siteWords,
  front: {
    title: "¿Está ensayado el mío?",
    searchLabel: "¿Qué es, o qué lleva escrito?",
    searchHint: "Un nombre, un dibujo o palabras en su base, un código de producto. Los nombres están en inglés.",
    whatTitle: "Qué es esto",
    what: [
      "Ensayamos cosas corrientes de la cocina y de la caja de juguetes para ver si contienen plomo y otros metales, con un aparato de rayos X (fluorescencia de rayos X) que no las daña.",
      "De cada parte decimos un solo número, lo seguro que es y cómo se compara con los límites que conocemos. Todas las lecturas en que se apoya están en la misma página.",
    ],
    newest: "Resultados más recientes",
    noItems: "Todavía no hay ningún resultado publicado",
    noItemsText: "El primer objeto aparece aquí en cuanto alguien lo publica.",
    howToRead: "Cómo leer una respuesta",
    readers: {
      above: "Tenemos al menos 95 posibilidades de 100 de que la cantidad esté en el lado del límite que no cumple.",
      below: "Tenemos al menos 95 posibilidades de 100 de que no lo esté.",
      "too-close": "El número está tan cerca del límite que no podemos decidir.",
      "not-detected": "El aparato no vio nada. Aun así puede haber un poco, hasta la cota que indicamos.",
    },
    allItems: "Todos los objetos ensayados",
    methods: "Cómo se hacen los resultados",
    limits: "Los límites con los que comparamos",
  },
  search: {
    title: (query) => (query === "" ? "Todos los objetos ensayados" : `Resultados para «${query}»`),
    count: (total, query) =>
      query === ""
        ? counted(total, "objeto ensayado", "objetos ensayados")
        : `${counted(total, "objeto hallado", "objetos hallados")}, primero el que mejor coincide`,
    sameCaution: `Ensayamos exactamente los objetos que se muestran aquí. ${batches}`,
    readAs: (read) =>
      read.map(({ typed, as }) => `Ningún objeto contiene «${typed}»; se buscó «${as}» en su lugar.`).join(" "),
    more: "Material, edad, año y orden",
    sorts: {
      best: "Primero el que mejor coincide",
      newest: "Primero el más reciente",
      name: "Por nombre, de la A a la Z",
    },
    form: "Buscar y acotar",
    words: "Palabras",
    order: "En orden de",
    search: "Buscar",
    facets: {
      category: { label: "Tipo", empty: "Cualquier tipo" },
      element: { label: "Elemento buscado", empty: "Cualquiera" },
      verdict: { label: "Respuesta", empty: "Cualquier respuesta" },
      material: { label: "Material", empty: "Cualquier material" },
      age: { label: "Hecho para", empty: "Cualquier edad" },
      year: { label: "Ensayado en", empty: "Cualquier año" },
    },
    tested: (day) => `ensayado el ${day}`,
    marks: "Marcas",
    askForTest: "Pídanos que ensayemos este",
    seeAll: "Ver todos los objetos ensayados",
    near: "Parecidos, pero no el mismo",
    nearText: "Estos contienen todas sus palabras menos una. Son otras cosas y no dicen nada de la suya.",
    wrongCheckDigit: (query, { found, expected }) =>
      `«${query.trim()}» tiene la longitud de un código de producto, pero su última cifra no encaja con las demás: debería ser ${expected}, no ${found}. Probablemente hay una cifra mal escrita; mire el código otra vez.`,
    nothing: "Aún no ensayado aquí",
    nothingText: (query) =>
      query === "" ? "Ningún objeto encaja con estos filtros." : `No tenemos ningún resultado para «${query}».`,
    proves:
      "Un objeto parecido no prueba nada del suyo: esmaltes, pinturas y aleaciones cambian de un lote a otro y de un año a otro.",
    whatToDo: [
      "Pruebe con menos palabras, o solo con lo que está dibujado o estampado en su base.",
      "Hasta que lo sepa, use otro para la comida y para los niños pequeños.",
      "Pregunte a un laboratorio. Solo un ensayo de lixiviación muestra cuánto pasa a los alimentos.",
      "Para pintura, polvo o tierra en una vivienda, pregunte a un evaluador de plomo acreditado o a su oficina de salud.",
      "¿Le preocupa un niño? Pregunte a un médico por un análisis de plomo en sangre. El número de un objeto no puede sustituirlo.",
    ],
  },
  compare: {
    title: "¿Cuál es el suyo?",
    most: 4,
    pick: "Comparar este",
    compare: "Comparar los objetos marcados",
    lead: "De dos a cuatro objetos ensayados, uno junto a otro. Mire primero las marcas: distinguen a los gemelos.",
    tooFew: "Todavía no hay nada que comparar",
    tooFewText: "Marque de dos a cuatro objetos en una lista de resultados y compárelos aquí.",
    notStated: "no indicado",
    caution: `Ensayamos exactamente los objetos que se describen aquí. ${batches}`,
    rows: {
      photo: "Foto",
      marks: "Marcas",
      otherNames: "También llamado",
      code: "Código de producto",
      kind: "Tipo",
      age: "Hecho para",
      object: "El objeto que ensayamos",
      answer: "La respuesta",
      results: "Lo que más pesa",
      tested: "Ensayado",
    },
  },
  toDo: {
    withdrawal: [
      "Trate el objeto como no ensayado. Vuelva a mirar aquí más adelante: un resultado nuevo recibe una nueva revisión en esta página.",
    ],
    above: [
      "No deje que un niño lo use ni se lo lleve a la boca.",
      "Use otro para la comida y la bebida.",
      "No lije, raspe ni caliente la parte: el polvo y los humos son la vía de entrada más rápida.",
      "Antes de tirarlo, pregunte a su servicio local de residuos.",
    ],
    "too-close": [
      "Trátelo como si estuviera por encima: use otro para la comida y para los niños hasta que haya más lecturas.",
      "Más lecturas, o un laboratorio, pueden resolverlo.",
    ],
    "cannot-say": [
      "Este resultado no puede decirle a qué lado de un límite está. La razón se da con cada límite más abajo.",
      "Un laboratorio puede hacer el ensayo que haría falta.",
    ],
    below: [
      "Esta parte está por debajo del límite que nombramos, y nada más. Otras partes y otras sustancias pueden ser distintas.",
      chipped,
    ],
    "not-detected": [
      "El aparato no vio nada, hasta la cota que indicamos. Otras partes y otras sustancias pueden ser distintas.",
      chipped,
    ],
  },
  review: {
    by: (names, day) => `Revisado por ${names || "una segunda persona"}${day === null ? "" : ` el ${day}`}`,
    none: "Sin revisión independiente: nadie más que quien lo ensayó lo ha revisado",
  },
  revision: { line: (number, kind, day) => `Revisión ${number}: ${kind}, ${day}` },
  banner: {
    newerTitle: "Hay una revisión más reciente",
    newer: (shown, newest) =>
      `Está leyendo la revisión ${shown}. Se queda aquí para que nada quede oculto, pero la revisión ${newest} la ha sustituido.`,
    withdrawnTitle: "Este resultado se ha retirado",
    withdrawn: "No lo use, por favor. Se queda aquí para que nada quede oculto.",
    correctionTitle: "Esta página se corrigió",
    linkText: "Ir a la revisión más reciente",
    reason: (reason) => `Motivo: ${reason}`,
  },
  notes: {
    restsOn: (readings, spots, part) =>
      `La primera respuesta se apoya en ${counted(readings, "lectura")} en ${counted(spots, "punto")} de la parte «${part}».`,
    noLimitOfKind: "No conocemos ningún límite de este tipo con el que comparar.",
    enteredByHand: "Las lecturas se introdujeron a mano.",
    otherLimits: (n) => (n === 0 ? "" : `, y ${counted(n, "límite más", "límites más")} de otro tipo`),
    yes: "sí",
    no: "no",
    gotOn: (day) => `el ${day}`,
    madeUnknown: "no se sabe cuándo",
  },
  invented:
    "Todo esto es inventado: los objetos, las personas y las lecturas se idearon para mostrar cómo funciona el registro. No se ensayó ningún producto real.",
  notFound: {
    title: "Esta página no está aquí",
    text: "Puede que la dirección esté mal escrita, o que la página nunca se haya publicado. Las páginas publicadas no se quitan nunca, así que busque el objeto.",
    search: "Búsquelo aquí",
  },
  corrections: {
    title: "Correcciones",
    lead: "Cada cambio de un resultado publicado, con su motivo. La página anterior se queda donde estaba, con una nota encima.",
    feed: "Lo mismo como canal de noticias",
    writeTo: (contact) => `¿Hay algo mal? Escriba a ${contact}.`,
    revisionOf: (name, revision) => `${name}, revisión ${revision}`,
    difference: "Qué cambió, campo por campo",
    before: "La revisión anterior",
    none: "No se ha corregido ni retirado nada",
    noneText: "Cuando un resultado se corrige, se actualiza o se retira, se enumera aquí con el motivo.",
  },
  log: {
    title: "Registro de publicaciones",
    lead: "Todo lo que se ha publicado, en orden. El hash de cada entrada abarca la entrada anterior, así que nada puede cambiarse ni quitarse sin que se note. Cualquiera puede comprobarlo.",
    none: "El registro está vacío",
    noneText: "Su primera entrada la hace la primera publicación.",
    asJson: "El registro como JSON",
    dataPackage: "Todo lo publicado, como paquete de datos",
    caption: "Entradas, la más reciente primero",
    columns: {
      entry: "Entrada",
      item: "Objeto y revisión",
      what: "Qué",
      published: "Publicado",
      snapshot: "SHA-256 de los datos de la página",
      hash: "Hash de la entrada",
    },
  },
};
