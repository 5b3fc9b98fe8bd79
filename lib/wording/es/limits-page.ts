import { counted } from "../formats.ts";
import type { LimitsPage } from "../limits-page.ts";

export const limitsPage: LimitsPage = {
  title: "Límites",
  lead: "Los números con los que comparamos los resultados: de qué trata cada uno, desde cuándo rige y hasta dónde lo comprobamos con la propia norma. Un número solo se compara con un límite del mismo tipo.",
  caution:
    "Las normas cambian de un lugar a otro y con el tiempo. Esta lista no es un consejo sobre lo que la ley le pide.",
  none: "Ningún límite encaja con estas opciones",
  count: (limits) => counted(limits, "límite"),
  shown: (limits, ofAnyDate) =>
    `${counted(limits, "límite")} ${ofAnyDate ? "de cualquier fecha" : limits === 1 ? "vigente hoy" : "vigentes hoy"}.`,
  asJson: "La lista entera como JSON",
  caption: (place) => `Límites: ${place}`,
  columns: {
    limit: "Límite",
    element: "Para",
    value: "Número",
    quantity: "De qué trata",
    period: "Vigencia",
    checked: "Cómo se sabe",
  },
  filters: {
    place: "Lugar",
    everyPlace: "Todos los lugares",
    element: "Elemento",
    everyElement: "Todos los elementos",
    when: "Cuándo",
    today: "Vigentes hoy",
    anyDate: "De cualquier fecha",
    show: "Mostrar estos",
  },
  facts: {
    quantity: "De qué trata el número",
    sum: "Suma de estos elementos",
    fails: "Un resultado no cumple",
    rule: "La regla",
    statistic: "Qué hay que comparar con él",
    scope: "Qué abarca",
    period: "Vigencia",
    nature: "Tipo de norma",
    source: "Fuente",
    checked: "Hasta dónde lo comprobamos",
    note: "Nota",
    id: "Nombre en los datos",
  },
};
