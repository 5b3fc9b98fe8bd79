import { counted } from "../formats.ts";
import type { RevisionSentences } from "../revisions.ts";

export const revisionSentences: RevisionSentences = {
  difference: {
    title: (name, revision) => `${name}: lo que cambió la revisión ${revision}`,
    lead: (before, after) =>
      `Cada campo en que la revisión ${after} difiere de la revisión ${before}, ambas tal como se publicaron.`,
    same: "Las dos revisiones dicen lo mismo.",
    derived: "Lo que se siguió de estos",
    added: "no estaba",
    removed: "quitado",
    wasThere: "estaba",
    isAdded: "añadido",
    revision: (n) => `revisión ${n}`,
    reason: (reason) => `Motivo: ${reason}`,
    fields: (n) => counted(n, "campo"),
    columns: { place: "Campo", before: "Antes", now: "Ahora" },
  },
  none: {
    title: "No existe esa revisión",
    text: "Este objeto no tiene ninguna revisión con ese número. Su página más reciente enumera todas las que hay.",
    search: "Buscar el objeto",
  },
  maker: {
    title: "La respuesta del fabricante",
    lead: "Con las palabras del propio fabricante y completa. No forma parte de la medición, y nadie aquí la ha comprobado.",
    receivedOn: (fromWhom, day) => `${fromWhom}, recibida el ${day}`,
  },
};
