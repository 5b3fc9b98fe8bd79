import type { Question } from "../readings/open-questions.ts";

/** The words of the screen on which a tester says what a file's columns are. */
export const useLabels: Record<string, string> = {
  none: "not used",
  number: "number of the reading",
  date: "date",
  time: "time of day",
  dateTime: "date and time",
  zone: "time zone",
  seconds: "seconds counted",
  mode: "calibration mode",
  sample: "name of the sample",
  spot: "spot on the part",
  note: "note",
  serial: "serial number of the analyser",
  operator: "who took it",
  value: "an element’s value",
  error: "an element’s error",
  limit: "an element’s detection limit",
  flag: "“detected” or “below” mark",
  element: "name of the element",
  unit: "unit of the value",
};

export const questionWords: Record<Question["id"], { title: string; why: string }> = {
  decimal: {
    title: "Which mark stands before the decimals?",
    why: "The same digits are a thousand times more or less with the other mark.",
  },
  thousands: {
    title: "Does the other mark separate thousands?",
    why: "Some numbers hold both marks, or the one that does not stand before the decimals.",
  },
  k: {
    title: "What do the error figures cover?",
    why: "The analyser’s manual says. It is asked once and kept with the instrument.",
  },
  "time-zone": { title: "In which time zone was the clock set?", why: "The times in the file carry no zone." },
  unit: { title: "In which unit are these columns?", why: "Neither the header nor a units row says." },
  quantity: {
    title: "What do the figures stand for?",
    why: "A share of a solid part and a share of a coating are never mixed.",
  },
  "date-order": { title: "Which comes first in a date?", why: "Every date in the file could be read both ways." },
  zero: { title: "What does a bare 0 mean?", why: "Nothing is ever taken as “none” without being told." },
  dash: { title: "What does a dash mean?", why: "It can stand for “not measured” or for “not detected”." },
  "not-available": { title: "What does “n/a” mean?", why: "It can stand for “not measured” or for “not detected”." },
  "no-limit": {
    title: "Some non-detects state no limit. Keep them?",
    why: "Without a limit, “not detected” says little; such rows are set aside unless you keep them.",
  },
};

export const answerLabels: Record<string, string> = {
  comma: "a comma (12,5)",
  point: "a point (12.5)",
  yes: "yes",
  no: "no",
  "1": "one standard uncertainty (1σ, about 68 %)",
  "2": "two (2σ, about 95 %)",
  "3": "three (3σ)",
  "bulk-mass-fraction": "share of the mass of a solid part",
  "coating-mass-fraction": "share of the mass of a coating",
  "coating-areal": "mass on an area of coating",
  "day-first": "the day (31/12/2026)",
  "month-first": "the month (12/31/2026)",
  "not-detected": "not detected",
  "not-measured": "not measured",
  number: "the number zero, as measured",
  "set-aside": "no, set such rows aside",
  keep: "yes, keep them without a limit",
};

export const noticeWords: Record<string, (column: string) => string> = {
  "relative-error": (column) => `“${column}” holds relative errors; they are not used.`,
  "error-unit-differs": (column) => `“${column}” has another unit than its value; it is not used.`,
  "needs-company": (column) => `“${column}” could be an element or an ordinary word; it is not used unless you say so.`,
  "no-value-column": (column) => `“${column}” belongs to an element that has no value column; it is not used.`,
  "second-column-of-element": (column) => `“${column}” gives an element a second time; it is not used.`,
};
