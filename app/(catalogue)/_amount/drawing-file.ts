import type { Drawing, DrawingMark, Ink } from "@/app/_components/scale-drawing-layout.ts";
import { textWidth } from "@/app/_components/text-width.ts";
import type { AmountsResult } from "@/lib/amounts/types.ts";
import { xmlText } from "@/lib/exports/xml-text.ts";
import { amountSentence, areaTitle, grainScaleNote, grainTitle } from "@/lib/wording/amount-figures.ts";
import { amountCautions, amountsIn, massSentence } from "@/lib/wording/amounts.ts";
import type { Language } from "@/lib/wording/language.ts";
import { areaOf, grainOf } from "./amount-drawings.ts";

/** Ink on paper, since a file has no page to take its colours from. */
const looks: Record<Ink, string> = {
  subject: 'fill="#1c2025"',
  area: 'fill="#5b2d86" fill-opacity="0.22" stroke="#5b2d86" stroke-width="2"',
  other: 'fill="none" stroke="#1c2025" stroke-width="1.5"',
  doubt: 'fill="none" stroke="#4f5657" stroke-width="1.25" stroke-dasharray="4 3"',
  rule: 'stroke="#1c2025"',
  leader: 'stroke="#7d8378"',
};
const n = (value: number): string => String(Number(value.toFixed(2)));
/** A machine without our typeface has a wider one: letters a little smaller keep to the room that was reckoned for them. */
const shrink = 0.88;
const margin = 32;
const width = 560;

function shape(mark: DrawingMark): string {
  switch (mark.kind) {
    case "line":
      return `<line x1="${n(mark.x1)}" y1="${n(mark.y1)}" x2="${n(mark.x2)}" y2="${n(mark.y2)}" ${looks[mark.ink]}/>`;
    case "rect":
      return `<rect x="${n(mark.x)}" y="${n(mark.y)}" width="${n(mark.width)}" height="${n(mark.height)}" ${looks[mark.ink]}/>`;
    case "circle":
      return `<circle cx="${n(mark.cx)}" cy="${n(mark.cy)}" r="${n(mark.r)}" ${looks[mark.ink]}/>`;
    case "text":
      return line(mark.text, mark.x, mark.y, mark.size, { anchor: mark.anchor, strong: mark.strong });
  }
}

function line(
  text: string,
  x: number,
  y: number,
  size: number,
  { anchor = "start", strong = false }: { anchor?: string; strong?: boolean } = {},
): string {
  const weight = strong ? ' font-weight="bold"' : "";
  return `<text x="${n(x)}" y="${n(y)}" font-size="${n(size * shrink)}" text-anchor="${anchor}"${weight}>${xmlText(text)}</text>`;
}

/** Words in lines no wider than the room; a word longer than a line, such as an address, is broken where the line ends. */
export function wrapped(text: string, size: number, room: number): string[] {
  const lines = [""];
  const put = (word: string): void => {
    const line = lines.at(-1) ?? "";
    const longer = line === "" ? word : `${line} ${word}`;
    if (textWidth(longer, size) <= room) lines[lines.length - 1] = longer;
    else if (line !== "") {
      lines.push("");
      put(word);
    } else {
      let end = word.length;
      while (end > 1 && textWidth(word.slice(0, end), size) > room) end--;
      lines[lines.length - 1] = word.slice(0, end);
      lines.push("");
      put(word.slice(end));
    }
  };
  for (const word of text.split(" ").filter((each) => each !== "")) put(word);
  return lines;
}

/**
 * The drawings of an amount as one SVG file with its words: the amount, the ball beside coins, the area, the cautions and the
 * address it came from. Null where there is nothing to draw.
 */
export function drawingFile(result: AmountsResult, address: string, language: Language = "en"): string | null {
  const { amount, mass, grain, spread, element } = result;
  const [ball, area] = [grainOf(result, "wide", language), areaOf(result, "wide", language)];
  if (amount === null || (ball === null && area === null)) return null;
  const parts: string[] = [];
  let y = margin;
  const words = (text: string, size: number, strong = false): void => {
    for (const each of wrapped(text, size, width)) {
      y += size * 1.35;
      parts.push(line(each, margin, y, size, { strong }));
    }
    y += size * 0.6;
  };
  const draw = (drawing: Drawing): void => {
    y += 10;
    parts.push(`<g transform="translate(${margin} ${n(y)})">${drawing.marks.map(shape).join("")}</g>`);
    y += drawing.height + 16;
  };
  const headline = mass ? massSentence(mass, element, language) : amountSentence(amount, element, language);
  words(headline, 19, true);
  if (ball && grain) {
    words(grainTitle(amount, grain, element, language), 14, true);
    draw(ball);
    words(`${grainScaleNote([ball.scale], language)} ${amountsIn[language].coin}`, 12);
  }
  if (area && spread) {
    words(areaTitle(spread, result.nearestArea, language), 14, true);
    draw(area);
  }
  for (const caution of amountCautions(element, language)) words(`${caution.title}. ${caution.text}`, 12);
  words(address, 11);
  const [w, h] = [width + 2 * margin, Math.ceil(y + margin)];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${w}" height="${h}" viewBox="0 0 ${w} ${h}" role="img" aria-labelledby="t" `,
    `font-family="'Source Sans 3','Liberation Sans',Arial,Helvetica,'DejaVu Sans',sans-serif" fill="#1c2025">`,
    `<title id="t">${xmlText(headline)}</title>`,
    `<rect width="${w}" height="${h}" fill="#ffffff"/>`,
    ...parts,
    "</svg>\n",
  ].join("");
}
