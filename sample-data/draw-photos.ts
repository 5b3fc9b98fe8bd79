import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { type Drawing, page } from "./drawing-kit.ts";
import { kitchenDrawings } from "./drawings-kitchen.ts";
import { nurseryDrawings } from "./drawings-nursery.ts";

/** Draws the pictures of the invented objects: `npx tsx sample-data/draw-photos.ts [part of a name]`. */
const folder = join(import.meta.dirname, "photos");
/** Bytes; the best quality that stays below is kept. */
const largest = 58_000;
const wanted = process.argv[2] ?? "";

async function draw(drawing: Drawing): Promise<void> {
  const image = sharp(Buffer.from(page(drawing))).flatten({ background: "#ffffff" });
  for (let quality = 74; quality >= 40; quality -= 4) {
    const bytes = await image.clone().jpeg({ quality, mozjpeg: true }).toBuffer();
    if (bytes.length > largest && quality > 42) continue;
    writeFileSync(join(folder, drawing.file), bytes);
    console.log(`${drawing.file}: ${bytes.length} bytes, quality ${quality}`);
    return;
  }
}

mkdirSync(folder, { recursive: true });
for (const drawing of [...kitchenDrawings, ...nurseryDrawings]) {
  if (drawing.file.includes(wanted)) await draw(drawing);
}
