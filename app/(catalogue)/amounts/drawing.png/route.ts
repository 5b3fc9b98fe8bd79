import sharp from "sharp";
import { sendDrawing } from "../../_amount/send-drawing.ts";

/** Two dots to each CSS px: fine enough for paper. The renderer counts 72 px to an inch, CSS 96. */
const rendered = 2 * 72;
/** Written into the file, so that it prints life size like the SVG. */
const printed = 2 * 96;

/** The drawings as a picture of dots, for where an SVG cannot go. */
export const GET = (request: Request): Promise<Response> =>
  sendDrawing(request, {
    type: "image/png",
    name: "amount.png",
    make: async (svg) =>
      new Uint8Array(
        await sharp(Buffer.from(svg), { density: rendered }).withMetadata({ density: printed }).png().toBuffer(),
      ),
  });
