import type { ScanWords } from "../scan.ts";

export const scanWords: ScanWords = {
  open: "Escanear el código de barras",
  picture: "Lo que ve la cámara",
  title: "Ponga el código de barras delante de la cámara",
  hint: "Manténgalo plano, con buena luz, a una distancia como el ancho de su mano. Se busca en cuanto se puede leer.",
  starting: "Encendiendo la cámara …",
  looking: "Buscando un código de barras …",
  slow: "Todavía no se puede leer nada. Acérquese un poco, o escriba el número que hay bajo las barras.",
  found: (code) => `Leído ${code}. Buscándolo …`,
  refused:
    "No se permitió usar la cámara. Permítalo en los ajustes del navegador, o escriba el número que hay bajo las barras.",
  noCamera: "No se encontró ninguna cámara. Escriba el número que hay bajo las barras.",
  trouble: "No se pudo usar la cámara. Escriba el número que hay bajo las barras.",
  unscripted:
    "La cámara necesita scripts, y en este navegador están desactivados. Escriba el número que hay bajo las barras.",
  again: "Probar otra vez con la cámara",
  number: "O escriba el número que hay bajo las barras",
  numberHint: "De 8 a 14 cifras. La imagen no sale de este aparato: solo se busca el número.",
};
