import { defaultPolicy } from "../../reconcile/types.ts";
import type { MethodPage } from "../method-page.ts";

const per100 = (share: number): string => String(Math.round(share * 100));

export const methodPage: MethodPage = {
  title: "Cómo se hacen los resultados",
  lead: "De los disparos sueltos a un número publicado, en pasos que cualquiera puede seguir. Las mismas lecturas dan siempre el mismo resultado.",
  version: "cupboard-assay-reconcile",
  step: (n) => `Paso ${n}`,
  notTold: "Lo que ninguna lectura dice",
  sourcesTitle: "Fuentes",
  policy: `Los números marcados como «política» son elección nuestra y pueden cambiar con un motivo; esta página cuenta la política ${defaultPolicy.version}. Cada página publicada nombra el método y la política con que se hizo.`,
  steps: [
    {
      title: "Tomar las lecturas como son",
      text: "Cada valor conserva las cifras y la unidad con que se escribió. Además se pasa a una misma unidad, una sola vez. Lo que significa la cifra de error del analizador (una, dos o tres incertidumbres típicas) se pregunta a quien ensaya y se muestra.",
    },
    {
      title: "No hacer nunca un número de la nada",
      text: "«No detectado» no es cero ni la mitad de nada. Se guarda como «por debajo de lo que el analizador podía ver», con un tercio de eso como incertidumbre típica, pero nunca más que el mayor error entre las lecturas detectadas de la parte. Un blanco quiere decir no medido.",
    },
    {
      title: "Apartar solo una persona, con un motivo",
      text: "El programa no descarta nunca una lectura. Una persona puede apartar una y debe escribir por qué. Se queda en la tabla, y la página muestra el resultado con ella y sin ella.",
    },
    {
      title: "Un valor de cada punto",
      text: "Las lecturas en un mismo punto se unen de modo que las más seguras cuentan más. Si difieren más de lo que explican sus errores, el error del punto crece en consecuencia.",
    },
    {
      title: "Un valor de la parte",
      text: `Con dos puntos o más, el intervalo admite que los puntos sean distintos de verdad (efectos aleatorios, Paule–Mandel, con el intervalo de Hartung y Knapp, que nunca se hace más estrecho que el simple). Si los puntos difieren en más del ${per100(defaultPolicy.unevenFrom)} % de la media (política), la parte se llama desigual: la página empieza por el punto más bajo y el más alto, y el intervalo llega más lejos hacia arriba que hacia abajo (lognormal, perfil de verosimilitud). Con cinco puntos o menos, un intervalo así se hace todavía más ancho (política). Donde los errores de las propias lecturas pasan del ${per100(defaultPolicy.evenSeenTo)} % de la media (política), nadie podría ver si la parte es uniforme: su extremo superior llega entonces también más lejos.`,
    },
    {
      title: "Puntos en los que no se vio nada",
      text: "Si se vio en al menos dos puntos y en al menos la mitad de ellos, los demás cuentan como «menos que eso», nunca como un número. Si en menos, decimos dónde se vio y cuánto puede haber como máximo. Si en ninguno, indicamos el más alto de los límites de detección de los puntos: todos estaban por debajo. Pocos puntos pueden pasar por alto los lugares que contienen más. Por eso se calcula también lo máximo que toda la parte puede contener de media, para una parte cuyos lugares difieren tanto como su media (política): con tres puntos es 1,9 veces ese límite, con cinco 1,3 veces, con ocho el límite mismo.",
    },
    {
      title: "El peor lugar importa",
      text: "Junto al valor de la parte se dice siempre el punto más alto.",
    },
    {
      title: "¿Bastante grueso?",
      text: "Los rayos X solo ven hasta cierta profundidad. Para el plomo son unas centésimas de milímetro en latón, alrededor de un milímetro en esmalte cerámico y centímetros en plástico simple. Para cada material y elemento calculamos la profundidad de la que vienen 99 de cada 100 partes de la señal, con una composición típica y con los rayos X entrando y saliendo a 45°. Una parte más delgada se señala: su número puede ser demasiado bajo o demasiado alto. La profundidad es aproximada y no una medición. No se calcula donde el material es «otra cosa».",
    },
    {
      title: "Añadir lo que las lecturas no pueden mostrar",
      text: "La dispersión de las lecturas no lo es todo. La calibración del analizador, el material y la forma de la parte aumentan la duda. Cada una se enumera con su tamaño, de dónde viene y su proporción (ley de propagación, Welch–Satterthwaite; JCGM 100).",
    },
    {
      title: "Indicar el intervalo",
      text: "El intervalo está hecho para contener la cantidad verdadera unas 19 veces de cada 20 (incertidumbre expandida, con su factor de cobertura k). Las cifras impresas no son más finas que la duda (dos cifras de la incertidumbre). Un contenido no se indica nunca por debajo de cero.",
    },
    {
      title: "Mirar otra vez de otras maneras",
      text: "La mediana, una media robusta y los resultados sin un punto se muestran junto al valor. Lo comprueban. No lo sustituyen nunca.",
    },
    {
      title: "Comparar con límites",
      text: `Un resultado solo se compara con un límite de la misma magnitud. Del número y su duda calculamos lo probable que es que la cantidad verdadera esté en el lado que no cumple. Con ${per100(1 - defaultPolicy.decisionRisk)} de cada 100 o más: «por encima del límite». Con ${per100(defaultPolicy.decisionRisk)} de cada 100 o menos: «por debajo del límite». Entre medias: «demasiado cerca para decidir» (política). En una parte desigual, «por debajo del límite» exige además que el extremo superior del intervalo quede por debajo. Donde no se vio nada, «por debajo del límite» exige que lo máximo que la parte puede contener quede por debajo, no solo lo que el analizador podía ver; un punto solo habla únicamente de sí mismo.`,
    },
    {
      title: "Publicar para siempre",
      text: "Una página publicada no cambia nunca. Una corrección es una revisión nueva; la antigua se queda, con una nota encima. El registro enlaza cada publicación con la anterior.",
    },
  ],
  sources:
    "Fuentes: JCGM 100, 101 y 106; ISO 13528; ISO 5725-2; Paule y Mandel (1982); Hartung y Knapp (2001); Currie (1968) e ISO 11843 para la detección; Helsel sobre lo no detectado; Hubbell y Seltzer (NISTIR 5632) sobre cómo se atenúan los rayos X, con coeficientes de la biblioteca libre xraylib.",
};
