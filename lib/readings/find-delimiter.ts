import { findHeader } from "./find-header.ts";
import { splitRecords } from "./split-records.ts";
import type { Delimiter } from "./table.ts";

export const delimiters: readonly Delimiter[] = [";", "\t", ","];

/** The first lines, enough to judge by; cut at a line end. */
function headOf(text: string): string {
  if (text.length <= 65_536) return text;
  const cut = text.lastIndexOf("\n", 65_536);
  return cut > 0 ? text.slice(0, cut) : text.slice(0, 65_536);
}

/**
 * Which separator divides the cells: the one under which a header is recognised and most rows below it are as wide.
 * A first line "sep=;" (a hint some spreadsheets write) settles it. A file of one column under a name that is recognised needs
 * none. Null where nothing names a column.
 */
export function findDelimiter(text: string): Delimiter | null {
  const hint = /^sep=([,;\t])\s*(?:\n|$)/i.exec(text);
  if (hint) return hint[1] as Delimiter;
  const head = headOf(text);
  let best: { delimiter: Delimiter; score: number } | null = null;
  for (const delimiter of delimiters) {
    const score = findHeader(splitRecords(head, delimiter).records)?.score ?? 0;
    if (score > (best?.score ?? 0)) best = { delimiter, score };
  }
  if (best) return best.delimiter;
  const { records } = splitRecords(head, ",");
  const single = records.every((cells) => cells.length === 1) ? findHeader(records, 1) : null;
  return single && single.score >= 1 ? "," : null;
}
