import type { RequestPage } from "../test-requests.ts";

export const requestPage: RequestPage = {
  title: "Ensayen este, por favor",
  lead: "Díganos qué tiene, como se lo diría a un amigo por teléfono. Quienes ensayan ven lo que más se pide.",
  label: "¿Qué es, y qué lleva dibujado o estampado?",
  hint: "Por ejemplo: taza de niño, amarilla, tres patos, un ancla pequeña en la base.",
  photo: "Una foto, si la tiene",
  photoHint: (megabytes) =>
    `De todo el objeto, o de la marca de su base; hasta ${megabytes} MB. Solo la ven quienes ensayan. Guardamos una copia pequeña sin lugar, hora ni teléfono, y la borramos cuando la petición recibe respuesta.`,
  privacy: "Guardamos estas palabras y cuántas veces se pidieron. De usted no guardamos nada.",
  send: "Pedir un ensayo",
  caution: "No podemos prometer un ensayo. Hasta que lo sepa, use otro para la comida y para los niños pequeños.",
  asked: (count) => (count === 1 ? "Pedido una vez hasta ahora." : `Pedido ${count} veces hasta ahora.`),
  states: {
    open: "Todavía sin ensayar.",
    tied: "Se ha hecho un ensayo, o se está haciendo.",
    closed: "Este no lo ensayaremos. Las personas que se nombran más abajo pueden ayudar.",
  },
  read: "Leer el resultado",
  notPublished: "Alguien lo tiene en la mesa de ensayo. Todavía no se ha publicado nada.",
  follow:
    "Para enterarse cuando pase algo, guarde la dirección de esta página o siga su canal. No necesitamos su correo electrónico.",
  feed: "Canal de esta petición",
  event: (description, state) => `«${description}»: ${state}`,
  tested: (description) => `Ensayado: «${description}». Lea el resultado.`,
};
