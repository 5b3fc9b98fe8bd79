import { xmlText } from "@/lib/exports/xml-text.ts";
import { type Language, recordLanguage } from "@/lib/wording/language.ts";
import { wrappedLines } from "./wrapped-lines.ts";

/** Ink of what is printed or shown elsewhere: it stands on white always. */
export const inks = { ink: "#1c2025", soft: "#4f5657", accent: "#5b2d86" } as const;

export type Line = {
  text: string;
  size: number;
  bold?: boolean;
  serif?: boolean;
  ink?: string;
  /** Where it is another than that of the drawing. */
  lang?: Language;
  /** Room above the line beyond its own leading. */
  before?: number;
};

const faces = { sans: "Segoe UI, Helvetica, Arial, sans-serif", serif: "Georgia, Times New Roman, serif" } as const;

/** How what testers wrote is marked in a drawing of another language. */
export const asRecorded = (language: Language): { lang?: Language } =>
  language === recordLanguage ? {} : { lang: recordLanguage };

/** A text as lines no wider than `room`, at most `most` of them; room above it is kept once. */
export const textBlock = (
  text: string,
  { size, room, most, before = 0, ...more }: Omit<Line, "text"> & { room: number; most: number },
): Line[] =>
  wrappedLines(text, size, room, most).map((one, i) => ({ ...more, text: one, size, before: i === 0 ? before : 0 }));

/** Lines set one under the other from a corner; `height` is where the last one ends. */
export function svgLines(lines: readonly Line[], { x, y }: { x: number; y: number }): { height: number; body: string } {
  let at = y;
  const body = lines.map(({ text, size, bold, serif, ink = inks.ink, lang, before = 0 }) => {
    at += before + size * 1.3;
    return `<text x="${x}" y="${round(at - size * 0.3)}" font-size="${size}" font-family="${serif ? faces.serif : faces.sans}"${bold ? ' font-weight="700"' : ""} fill="${ink}"${lang ? ` xml:lang="${lang}"` : ""}>${xmlText(text)}</text>`;
  });
  return { height: round(at), body: body.join("") };
}

const round = (value: number): number => Math.round(value * 100) / 100;

/** A drawing as a file of its own. `unit` is that of its measures; the title is what a screen reader says. */
export const svgFile = ({
  width,
  height,
  title,
  body,
  unit = "",
  language,
}: {
  width: number;
  height: number;
  title: string;
  body: string;
  unit?: "" | "mm";
  language: Language;
}): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<svg xmlns="http://www.w3.org/2000/svg" xml:lang="${language}" width="${width}${unit}" height="${height}${unit}" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="t"><title id="t">${xmlText(title)}</title>${body}</svg>\n`;
