import { absoluteUrl } from "@/lib/exports/published-revision.ts";
import { xmlText } from "@/lib/exports/xml-text.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { plainDate, resultText } from "@/lib/wording/formats.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { cardAlt, shareHeadline, shareIn, shortCautions } from "@/lib/wording/share.ts";
import type { PictureFrame } from "./picture-handler.ts";
import { asRecorded, inks, type Line, svgFile, svgLines, textBlock } from "./svg-lines.ts";

const width = 480;
const edge = 20;
const room = width - 2 * edge;

/**
 * A card to show on another page: the answer, its number, when it was tested, the cautions and the address that never
 * changes. It runs nothing and asks for nothing. `newest` is the item's newest revision: a card of an older one says so.
 */
export function cardSvg(snapshot: Snapshot, { baseUrl, newest, language }: PictureFrame): string {
  const words = shareIn[language];
  const permanent = absoluteUrl(baseUrl, pathsIn[language].revision(snapshot.slug, snapshot.revision));
  const [lead] = resultsByWeight(snapshot);
  const block = (text: string, size: number, most: number, more: Omit<Line, "text" | "size"> = {}) =>
    textBlock(text, { size, room, most, ...more });
  const lines: Line[] = [
    ...block(snapshot.registry.name, 12, 1, { ink: inks.soft, ...asRecorded(language) }),
    ...block(snapshot.item.name, 20, 2, { serif: true, bold: true, ...asRecorded(language) }),
    ...(snapshot.revision < newest ? block(words.superseded(newest), 14, 1, { bold: true, before: 6 }) : []),
    ...block(shareHeadline(snapshot, language), 16, 3, { bold: true, before: 8 }),
    ...(lead
      ? block(
          `${elementTitle(lead.result.element, language)}, ${lead.part.name}: ${resultText(lead.result, language)}`,
          14,
          2,
          {
            before: 4,
          },
        )
      : []),
    ...block(words.testedOn(plainDate(snapshot.testedOn, language), snapshot.revision), 12, 1, {
      before: 4,
      ink: inks.soft,
    }),
    ...shortCautions(snapshot, language).flatMap((text, i) => block(text, 11, 2, { before: i === 0 ? 10 : 1 })),
    ...(snapshot.registry.invented ? block(words.invented, 11, 1, { before: 4, bold: true }) : []),
    ...block(permanent, 11, 2, { before: 8, ink: inks.accent }),
  ];
  const { height, body } = svgLines(lines, { x: edge, y: edge });
  const frame = `<rect x="0.75" y="0.75" width="${width - 1.5}" height="${height + edge - 1.5}" fill="#ffffff" stroke="${inks.ink}" stroke-width="1.5"/>`;
  const link = `<a href="${xmlText(permanent)}" target="_top">${frame}${body}</a>`;
  return svgFile({ width, height: height + edge, title: cardAlt(snapshot, language), body: link, language });
}
