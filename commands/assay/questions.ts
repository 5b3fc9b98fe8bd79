import type { Question } from "../../lib/readings/open-questions.ts";

const listed = (columns: readonly string[]): string => {
  const names = columns.slice(0, 4).map((column) => `"${column}"`);
  return `${names.join(", ")}${columns.length > 4 ? " and others" : ""}`;
};
const example = ({ examples }: Question): string => {
  const [first] = examples;
  return first === undefined ? "" : ` (line ${first.row}: "${first.text}")`;
};

/** What the file does not say, as one sentence that names the option to say it with. */
const sentences: Record<Question["id"], (question: Question) => string> = {
  decimal: (q) =>
    `The file does not show whether a comma or a point is the decimal mark${example(q)}; say it with --decimal comma or --decimal point.`,
  thousands: (q) =>
    `The file does not show whether the other mark groups thousands${example(q)}; say it with --thousands yes or --thousands no.`,
  k: (q) =>
    `The file does not say how many standard uncertainties the errors in ${listed(q.columns)} cover; say it with --k 1, --k 2 or --k 3.`,
  unit: (q) => `The file states no unit for ${listed(q.columns)}; say it with --unit, for example --unit ppm.`,
  quantity: (q) =>
    `The file does not say whether ${listed(q.columns)} is of a bulk part or of a coating; say it with --kind bulk or --kind coating.`,
  zero: (q) =>
    `A bare 0 stands in ${listed(q.columns)}${example(q)}; say what it means with --zero not-detected, --zero number or --zero not-measured.`,
  dash: (q) =>
    `A dash stands in ${listed(q.columns)}${example(q)}; say what it means with --dash not-detected or --dash not-measured.`,
  "not-available": (q) =>
    `"n/a" stands in ${listed(q.columns)}${example(q)}; say what it means with --not-available not-detected or --not-available not-measured.`,
  "no-limit": (q) =>
    `Non-detects in ${listed(q.columns)} state no limit; say what to do with --no-limit keep or --no-limit set-aside.`,
  "time-zone": (q) => `The times in ${listed(q.columns)} name no time zone.`,
  "date-order": (q) => `The file does not show whether the day or the month comes first in ${listed(q.columns)}.`,
};

export const questionSentence = (question: Question): string => sentences[question.id](question);
