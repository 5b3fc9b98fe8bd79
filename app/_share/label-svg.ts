import { absoluteUrl } from "@/lib/exports/published-revision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { briefDate } from "@/lib/wording/formats.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { shareIn, shortCautions } from "@/lib/wording/share.ts";
import type { PictureFrame } from "./picture-handler.ts";
import { qrPath } from "./qr-path.ts";
import { asRecorded, type Line, svgFile, svgLines, textBlock } from "./svg-lines.ts";

/** Millimetres: three labels across and eight down an A4 page, inside margins that printers leave. */
export const labelSize = { width: 64, height: 34 } as const;
const code = 26;
const edge = 2;
const textAt = edge + code + 1.5;
const room = labelSize.width - textAt - edge;

/**
 * A label for the object itself: the QR code of the item's page (the newest revision, whichever that is by then), its name, the
 * day of the test and the cautions. It states no result: a label outlives it.
 */
export function labelSvg(snapshot: Snapshot, { baseUrl, language }: Omit<PictureFrame, "newest">): string {
  const { body, title } = labelBody(snapshot, baseUrl, language);
  return svgFile({ ...labelSize, title, body, unit: "mm", language });
}

/** The inside of a label, for the sheet. */
export function labelBody(snapshot: Snapshot, baseUrl: string, language: Language): { body: string; title: string } {
  const words = shareIn[language];
  const address = absoluteUrl(baseUrl, pathsIn[language].item(snapshot.slug));
  const symbolPath = qrPath(address);
  const block = (text: string, size: number, most: number, more: Omit<Line, "text" | "size"> = {}) =>
    textBlock(text, { size, room, most, ...more });
  const { body } = svgLines(
    [
      ...block(snapshot.item.name, 3.2, 2, { serif: true, bold: true, ...asRecorded(language) }),
      ...block(words.tested(briefDate(snapshot.testedOn, language)), 2.2, 1, { before: 0.4 }),
      ...block(words.scan, 2.2, 1),
      ...shortCautions(snapshot, language)
        .slice(0, 2)
        .flatMap((text, i) => block(text, 1.9, 4, { before: i === 0 ? 0.8 : 0.2 })),
      ...(snapshot.registry.invented ? block(words.inventedShort, 1.9, 1, { before: 0.2, bold: true }) : []),
    ],
    { x: textAt, y: edge - 0.5 },
  );
  const scale = code / symbolPath.size;
  const symbol = `<g transform="translate(${edge} ${(labelSize.height - code) / 2}) scale(${scale})" shape-rendering="crispEdges"><rect width="${symbolPath.size}" height="${symbolPath.size}" fill="#ffffff"/><path d="${symbolPath.path}" fill="#000000"/></g>`;
  return {
    title: `${words.scan}: ${snapshot.item.name}, ${address}`,
    body: `<rect width="${labelSize.width}" height="${labelSize.height}" fill="#ffffff"/>${symbol}${body}`,
  };
}
