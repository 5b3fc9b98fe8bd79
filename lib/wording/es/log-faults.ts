import type { LogFault } from "../../publication/verify-log.ts";
import type { LogFaultWords } from "../log-faults.ts";

const subject = (f: LogFault): string =>
  f.slug === null ? `La entrada ${f.seq}` : `La entrada ${f.seq} (${f.slug}, revisión ${f.revision})`;
const ofEntry = (f: LogFault): string => (f.seq === null ? "" : ` de la entrada ${f.seq}`);

export const logFaultWords: LogFaultWords = {
  "entry-malformed": (f) =>
    `${subject(f)} no es una entrada del registro${f.field ? `: su campo «${f.field}» no es como debería` : ""}.`,
  "entry-out-of-order": (f) => `${subject(f)} lleva el número ${f.found}; por su lugar debería ser ${f.expected}.`,
  "entry-fields-changed": (f) =>
    f.field === undefined || f.field === "hash"
      ? `${subject(f)} se cambió: sus campos dan otro hash que el que lleva.`
      : `${subject(f)} se cambió en su campo «${f.field}»: dice «${f.found}», y su hash se hizo sobre «${f.expected}».`,
  "entry-hash-changed": (f) =>
    `${subject(f)} lleva un hash cambiado; la entrada siguiente todavía contiene el verdadero.`,
  "previous-hash-differs": (f) => `${subject(f)} no sigue a la entrada anterior: los hashes difieren.`,
  "snapshot-missing": (f) => `${subject(f)}: falta su texto publicado.`,
  "snapshot-changed": (f) =>
    `${subject(f)}: su texto publicado se cambió; tiene otro SHA-256 que el que guarda el registro.`,
  "snapshot-not-canonical": (f) => `${subject(f)}: su texto publicado no está en forma canónica.`,
  "snapshot-unreadable": (f) =>
    `${subject(f)}: su texto publicado no se puede leer${f.field ? ` (en ${f.field})` : ""}.`,
  "snapshot-tells-otherwise": (f) =>
    `${subject(f)}: el texto publicado dice ${f.field} «${f.found}», el registro dice «${f.expected}».`,
  "snapshot-unlisted": (f) => `Hay un texto publicado número ${f.seq} que el registro no enumera.`,
  "head-differs": (f) =>
    `La entrada más reciente del registro debería ser la número ${f.seq} con el hash ${f.expected}; se halló: ${f.found}.`,
  "head-malformed": (f) =>
    `La cabeza firmada${ofEntry(f)} no es como debería${f.field ? `, en su campo «${f.field}»` : ""}.`,
  "head-signature-wrong": (f) =>
    f.field === "hash"
      ? `La cabeza firmada${ofEntry(f)} se cambió en su hash: su firma se hizo sobre ${f.expected}.`
      : `La firma de la cabeza firmada${ofEntry(f)} no es válida: se cambió la cabeza, su clave o su firma.`,
  "head-key-differs": (f) =>
    `La cabeza${ofEntry(f)} está firmada con otra clave que la que usted espera; se halló ${f.found}, se esperaba ${f.expected}.`,
};
