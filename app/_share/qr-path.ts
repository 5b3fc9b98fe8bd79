import encodeQR from "qr";

export type QrPath = {
  /** Modules along an edge, the quiet zone of four on each side counted in (ISO/IEC 18004: four modules; from memory). */
  size: number;
  /** An SVG path of the dark modules, one unit each. */
  path: string;
};

const quiet = 4;

/** A text as a QR code: error correction "medium", so that a scratched label still reads. */
export function qrPath(text: string): QrPath {
  const rows = encodeQR(text, "raw", { ecc: "medium", border: quiet });
  const path = rows
    .flatMap((row, y) => runs(row).map(([from, length]) => `M${from} ${y}h${length}v1h-${length}z`))
    .join("");
  return { size: rows.length, path };
}

/** Where dark modules follow one another in a row: fewer shapes, and no hairlines between them in print. */
function runs(row: readonly boolean[]): [from: number, length: number][] {
  const found: [number, number][] = [];
  row.forEach((dark, x) => {
    const last = found.at(-1);
    if (!dark) return;
    if (last && last[0] + last[1] === x) last[1] += 1;
    else found.push([x, 1]);
  });
  return found;
}
