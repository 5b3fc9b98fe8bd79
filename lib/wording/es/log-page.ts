import type { HeadWords } from "../log-page.ts";

export const headWords: HeadWords = {
  title: "La cabeza firmada",
  lead: "Cada vez que se publica algo, el registro firma con su clave la entrada más reciente. Anote en un sitio suyo el número de la entrada, su hash y la clave: así nadie, ni el propio registro, puede quitar entradas o reescribirlo sin que usted lo vea.",
  entry: "Entrada más reciente",
  hash: "Su hash",
  signedAt: "Firmada",
  key: "Clave pública (Ed25519)",
  signature: "Firma",
  none: "La entrada más reciente no está firmada: no se pudo leer la clave del registro. La cadena de hashes se puede comprobar sin ella.",
  behind: (head, newest) =>
    `La entrada firmada más reciente es la ${head}; la ${newest} todavía no está firmada, porque no se pudo leer la clave del registro.`,
  keyChanged: (seqs) =>
    `El registro ha usado más de una clave. Una nueva se usó por primera vez para la entrada ${seqs.join(", después para la entrada ")}. Las firmas anteriores siguen siendo válidas con sus propias claves.`,
  byHand: "Cómo comprobarlo a mano",
  byHandLead:
    "Con OpenSSL 3 en un sistema Unix. Las tres primeras líneas escriben la clave, la firma y el texto firmado; la última debe imprimir «Signature Verified Successfully».",
  chain:
    "Después, la cadena: el hash de una entrada es el SHA-256 del JSON canónico (RFC 8785) de sus campos seq, slug, revision, kind, publishedAt, snapshotSha256 y previousHash; previousHash es el hash de la entrada anterior, 64 ceros para la primera; snapshotSha256 es el del JSON de la propia revisión, byte por byte.",
  command: "O deje que el programa lo haga todo:",
};
