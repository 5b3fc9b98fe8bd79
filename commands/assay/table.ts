import { elementName } from "../../lib/wording/elements.ts";
import type { Answer, ResultRow } from "./answer.ts";

/** The answer as lines for a terminal: the books first, then one line for each sample and element. */
export function printedTable(answer: Answer): string {
  const { rows, method } = answer;
  const books = `Rows: ${rows.total} in the file = ${rows.accepted} accepted + ${rows.setAside} set aside + ${rows.blank} blank + ${rows.header} header`;
  const heading = ["sample", "element", "value", "95 % interval", "unit", "spots", "model", "flags"];
  const body = answer.results.map((row) => [
    // A file's own text never steers the terminal.
    row.sample?.replace(/[\p{Cc}\p{Cf}\u2028\u2029]+/gu, " ") ?? "(whole file)",
    elementName(row.element),
    valueText(row),
    row.stated.interval ? `${row.stated.interval[0]} to ${row.stated.interval[1]}` : "–",
    row.unit,
    `${row.detected} of ${row.spots}`,
    row.model,
    row.flags.join(", ") || "–",
  ]);
  const widths = heading.map((title, column) =>
    Math.max(title.length, ...body.map((cells) => (cells[column] ?? "").length)),
  );
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join("  ")
      .trimEnd();
  return [
    books,
    `Method: ${method.name}, version ${method.version}`,
    ...answer.notes,
    "",
    line(heading),
    line(widths.map((width) => "─".repeat(width))),
    ...body.map(line),
    ...(answer.problems.length === 0
      ? []
      : ["", "Set aside:", ...answer.problems.map((problem) => `  ${problem.sentence}`)]),
    "",
  ].join("\n");
}

function valueText(row: ResultRow): string {
  if (row.verdict === "not detected") return row.stated.below === null ? "not detected" : `< ${row.stated.below}`;
  if (row.value === null) return row.verdict;
  return row.stated.U === null
    ? row.stated.value
    : `${row.stated.value} ± ${row.stated.U} (k ${(row.k ?? 0).toFixed(2)})`;
}
