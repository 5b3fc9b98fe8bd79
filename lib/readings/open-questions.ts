import { decidedMark } from "./decimal-evidence.ts";
import { type Evidence, gatherEvidence, type Seen } from "./gather-evidence.ts";
import { type Figure, figuresOf, type Mapping } from "./mapping.ts";
import type { Table } from "./table.ts";
import { unitWordOf } from "./unit-words.ts";

/**
 * Something the file does not say. `options` are the answers that can be given, as in Answers (answer-questions.ts); [] means free
 * text. `examples` show where it matters. A question that is not blocking has a cautious answer already.
 */
export type Question = {
  id:
    | "decimal"
    | "thousands"
    | "k"
    | "time-zone"
    | "unit"
    | "quantity"
    | "date-order"
    | "zero"
    | "dash"
    | "not-available"
    | "no-limit";
  columns: string[];
  options: string[];
  examples: { row: number; column: string; text: string }[];
  count: number;
  blocking: boolean;
};

const question = (
  id: Question["id"],
  columns: readonly string[],
  options: string[],
  seen: Seen,
  blocking = true,
): Question => ({
  ...{ id, columns: [...new Set(columns)], options, examples: seen.examples, count: seen.count, blocking },
});
const columnsOf = (seen: Seen): string[] => seen.examples.map((example) => example.column);
const together = (...all: Seen[]): Seen => ({
  count: all.reduce((sum, seen) => sum + seen.count, 0),
  examples: all.flatMap((seen) => seen.examples.slice(0, 2)),
});

function decimalQuestions(evidence: Evidence, mapping: Mapping): Question[] {
  const marks = evidence.decimal;
  const all = together(marks["decimal-comma"], marks["decimal-point"], marks["either-comma"], marks["either-point"]);
  if (mapping.decimal === null) {
    return all.count === 0 ? [] : [question("decimal", columnsOf(all), ["comma", "point"], all)];
  }
  // A remembered or chosen mark that the file contradicts throughout is asked again.
  const decided = decidedMark(marks);
  if (decided !== null && decided !== mapping.decimal)
    return [question("decimal", columnsOf(all), ["comma", "point"], all)];
  const otherMark = marks[mapping.decimal === "comma" ? "either-point" : "either-comma"];
  return mapping.thousands === null && otherMark.count > 0
    ? [question("thousands", columnsOf(otherMark), ["yes", "no"], otherMark)]
    : [];
}

function figureQuestions(evidence: Evidence, mapping: Mapping): Question[] {
  const questions: Question[] = [];
  const figures = figuresOf(mapping);
  const seenIn = (columns: readonly string[]): Seen => ({ count: columns.length, examples: [] });
  const inline = new Set(columnsOf(evidence.inlineErrors));
  const unknownK = figures.filter((figure) => figure.k === null && (figure.error !== null || inline.has(figure.value)));
  const errors = unknownK.map((figure) => figure.error ?? figure.value);
  if (errors.length > 0) questions.push(question("k", errors, ["1", "2", "3"], seenIn(errors)));
  for (const [column, seen] of evidence.withoutUnit)
    questions.push(question("unit", [column], ["ppm", "mg/kg", "%", "µg/cm²", "mg/cm²"], seen));
  const kindsOf = (figure: Figure): number => {
    const units = figure.unit !== null ? [figure.unit] : [...evidence.units];
    return Math.max(
      0,
      ...units.map((unit) => (unit === "" ? 0 : (unitWordOf(unit)?.kinds.length ?? 0))),
      figure.unit === null && evidence.units.size === 0 ? 2 : 0,
    );
  };
  const modesCovered = evidence.modes.size > 0 && [...evidence.modes].every((mode) => mapping.quantityByMode[mode]);
  const unknownKind = figures
    .filter((figure) => figure.quantity === null && kindsOf(figure) > 1)
    .map((figure) => figure.value);
  if (unknownKind.length > 0 && !modesCovered)
    questions.push(
      question("quantity", unknownKind, ["bulk-mass-fraction", "coating-mass-fraction"], seenIn(unknownKind)),
    );
  return questions;
}

/** The order of day and month that some dates show and none contradicts. */
function oneOrder(evidence: Evidence): "day-first" | "month-first" | null {
  const [day, month] = [evidence.dayFirst.count > 0, evidence.monthFirst.count > 0];
  return day === month ? null : day ? "day-first" : "month-first";
}

function markQuestions(evidence: Evidence, mapping: Mapping): Question[] {
  const questions: Question[] = [];
  const ask = (id: Question["id"], seen: Seen, options: string[], blocking = true) => {
    if (seen.count > 0) questions.push(question(id, columnsOf(seen), options, seen, blocking));
  };
  if (mapping.zero === null) ask("zero", evidence.bareZeros, ["not-detected", "number", "not-measured"]);
  if (mapping.dash === null) ask("dash", evidence.dashes, ["not-measured", "not-detected"]);
  if (mapping.notAvailable === null) ask("not-available", evidence.notAvailable, ["not-measured", "not-detected"]);
  if (mapping.noLimit === "set-aside") ask("no-limit", evidence.nonDetectsWithoutLimit, ["set-aside", "keep"], false);
  if (mapping.timeZone === null) ask("time-zone", evidence.timesWithoutOffset, []);
  const dates = together(evidence.dayFirst, evidence.monthFirst, evidence.eitherOrder);
  const either = evidence.eitherOrder.count > 0 || (evidence.dayFirst.count > 0 && evidence.monthFirst.count > 0);
  const shown = oneOrder(evidence);
  const contradicted = mapping.dateOrder !== null && shown !== null && shown !== mapping.dateOrder;
  if ((mapping.dateOrder === null && either) || contradicted) ask("date-order", dates, ["day-first", "month-first"]);
  return questions;
}

/** Fills in what the whole file shows beyond doubt: the decimal mark, thousands separators, the order of day and month. */
export function settleFromEvidence(mapping: Mapping, evidence: Evidence): Mapping {
  const decimal = mapping.decimal ?? decidedMark(evidence.decimal);
  const shown =
    decimal === "comma" ? evidence.decimal.groupsWithPoint : decimal === "point" && evidence.decimal.groupsWithComma;
  return {
    ...{ ...mapping, decimal },
    thousands: mapping.thousands ?? (shown ? "yes" : null),
    dateOrder: mapping.dateOrder ?? oneOrder(evidence),
  };
}

export function questionsFrom(mapping: Mapping, evidence: Evidence): Question[] {
  return [
    ...decimalQuestions(evidence, mapping),
    ...figureQuestions(evidence, mapping),
    ...markQuestions(evidence, mapping),
  ];
}

/**
 * What the file settles by itself, and what must still be asked before its rows can be read. Call it again after each change of
 * columns or answers. `table` must hold every column that `mapping` names (column-index.ts: mappingFaults).
 *
 * Example: a file with "12,5" and ";" → mapping.decimal "comma", no question; a file whose only mark is "1,234" → question "decimal".
 */
export function settleAndAsk(table: Table, mapping: Mapping): { mapping: Mapping; questions: Question[] } {
  const evidence = gatherEvidence(table, mapping);
  const settled = settleFromEvidence(mapping, evidence);
  return { mapping: settled, questions: questionsFrom(settled, evidence) };
}
