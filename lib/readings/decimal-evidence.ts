/**
 * What numbers in a file show about their marks. One mark alone with three digits behind it and one to three before ("1,234") shows
 * nothing: it may be a decimal mark or a thousands separator.
 */
export type MarkEvidence = "decimal-point" | "decimal-comma" | "either-point" | "either-comma" | "none";

export type DecimalEvidence = Record<
  Exclude<MarkEvidence, "none">,
  { count: number; examples: { row: number; column: string; text: string }[] }
> & {
  /** Seen as a thousands separator beyond doubt: "1,234.5", "1.234.567". */
  groupsWithComma: boolean;
  groupsWithPoint: boolean;
};

export const noDecimalEvidence = (): DecimalEvidence => ({
  ...{ "decimal-point": { count: 0, examples: [] }, "decimal-comma": { count: 0, examples: [] } },
  ...{ "either-point": { count: 0, examples: [] }, "either-comma": { count: 0, examples: [] } },
  ...{ groupsWithComma: false, groupsWithPoint: false },
});

/** Judges one run of digits and marks. "12,5" → decimal-comma; "1.234" → either-point; "0.125" → decimal-point; "1,234.5" → decimal-point. */
export function markEvidence(digits: string): { shows: MarkEvidence; groups: "," | "." | null } {
  const points = digits.split(".").length - 1;
  const commas = digits.split(",").length - 1;
  if (points === 0 && commas === 0) return { shows: "none", groups: null };
  if (points > 0 && commas > 0) {
    const comma = digits.lastIndexOf(",") > digits.lastIndexOf(".");
    if ((comma ? commas : points) > 1) return { shows: "none", groups: null };
    return { shows: comma ? "decimal-comma" : "decimal-point", groups: comma ? "." : "," };
  }
  const mark = points > 0 ? "." : ",";
  if (points + commas > 1)
    return /^\d{1,3}(?:[.,]\d{3})+$/.test(digits)
      ? { shows: mark === "." ? "decimal-comma" : "decimal-point", groups: mark }
      : { shows: "none", groups: null };
  const [before, after] = digits.split(mark) as [string, string];
  const either = after.length === 3 && /^[1-9]\d{0,2}$/.test(before);
  if (mark === ".") return { shows: either ? "either-point" : "decimal-point", groups: null };
  return { shows: either ? "either-comma" : "decimal-comma", groups: null };
}

/** Most cells: one mark with other than three digits behind it. */
const plainDecimal = /^\d+([.,])(?:\d{1,2}|\d{4,12})$/;

export function noteNumber(evidence: DecimalEvidence, cell: string, row: number, column: string): void {
  const plain = plainDecimal.exec(cell);
  const seenOften = plain ? evidence[plain[1] === "." ? "decimal-point" : "decimal-comma"] : null;
  if (seenOften && seenOften.examples.length >= 3) {
    seenOften.count += 1;
    return;
  }
  for (const digits of cell.match(/[\d.,]*\d[.,]?/g) ?? []) {
    const { shows, groups } = markEvidence(digits);
    if (groups === ",") evidence.groupsWithComma = true;
    if (groups === ".") evidence.groupsWithPoint = true;
    if (shows === "none") continue;
    const seen = evidence[shows];
    seen.count += 1;
    if (seen.examples.length < 3) seen.examples.push({ row, column, text: cell.trim().slice(0, 40) });
  }
}

/** The decimal mark, where all that is beyond doubt agrees; null where nothing shows it, or the file contradicts itself. */
export function decidedMark(evidence: DecimalEvidence): "comma" | "point" | null {
  const comma = evidence["decimal-comma"].count > 0;
  const point = evidence["decimal-point"].count > 0;
  return comma === point ? null : comma ? "comma" : "point";
}
