import { fitText, textWidth } from "@/app/_components/text-width.ts";

/**
 * A text broken into lines no wider than `room`, at most `most` of them; the last ends in an ellipsis where there is more. A word wider
 * than the room is cut.
 *
 * @example wrappedLines("Above the limit: lead", 10, 70, 2)   // ["Above the", "limit: lead"]
 */
export function wrappedLines(text: string, fontSize: number, room: number, most: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/ +/)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (textWidth(longer, fontSize) <= room || line === "") line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  lines.push(line);
  if (lines.length <= most) return lines.map((one) => fitText(one, fontSize, room));
  const kept = lines.slice(0, most);
  const rest = lines.slice(most - 1).join(" ");
  return [...kept.slice(0, -1), fitText(rest, fontSize, room)].map((one) => fitText(one, fontSize, room));
}
