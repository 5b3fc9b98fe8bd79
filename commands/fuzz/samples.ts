import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";

const folder = join(import.meta.dirname, "..", "..", "sample-data");

/** The scenario's instrument files and the hostile texts beside them. */
export function sampleTables(): { name: string; text: string }[] {
  const texts = (at: string) =>
    readdirSync(at)
      .filter((name) => /\.(csv|tsv)$/.test(name))
      .sort()
      .map((name) => ({ name, text: readFileSync(join(at, name), "utf8") }));
  const good = texts(join(folder, "files"));
  return [...good, ...good, ...texts(join(folder, "files", "hostile"))];
}

/** Photos of the scenario in every kind we take, with metadata in them, and drawings of other kinds: small, since it is their making that is tried. */
export async function samplePictures(): Promise<{ name: string; bytes: Uint8Array }[]> {
  const photo = readFileSync(join(folder, "photos", readdirSync(join(folder, "photos")).sort()[0] ?? ""));
  const exif = { IFD0: { Artist: "invented", ImageDescription: "a place that is nobody's business" } };
  const small = () => sharp(photo).resize({ width: 640 }).withExif(exif);
  const flat = sharp({
    create: { width: 300, height: 200, channels: 4, background: { r: 1, g: 9, b: 200, alpha: 0.5 } },
  });
  const made: [string, Promise<Buffer>][] = [
    ["a.jpg", small().withMetadata({ orientation: 6 }).jpeg().toBuffer()],
    ["progressive.jpg", small().jpeg({ progressive: true, chromaSubsampling: "4:4:4" }).toBuffer()],
    ["cmyk.jpg", small().toColourspace("cmyk").jpeg().toBuffer()],
    ["a.png", small().png().toBuffer()],
    ["palette.png", small().png({ palette: true }).toBuffer()],
    ["alpha.png", flat.clone().png().toBuffer()],
    ["a.webp", small().webp().toBuffer()],
    ["lossless.webp", small().webp({ lossless: true }).toBuffer()],
    ["a.avif", small().avif({ effort: 0 }).toBuffer()],
    ["a.gif", small().gif().toBuffer()],
    ["a.tiff", small().tiff().toBuffer()],
  ];
  return Promise.all(made.map(async ([name, bytes]) => ({ name, bytes: new Uint8Array(await bytes) })));
}
