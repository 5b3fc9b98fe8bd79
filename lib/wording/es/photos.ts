import type { PhotoSentences } from "../photos.ts";

export const photoSentences: PhotoSentences = {
  spot: (spot) => `punto ${spot}`,
  noSize: "Los círculos muestran dónde, no el tamaño del punto.",
  asWindow: (across, some) =>
    `Los círculos son tan grandes como la ventana del analizador, de ${across} mm de diámetro${some ? " donde se conoce" : ""}, según la longitud conocida en la foto.`,
};
