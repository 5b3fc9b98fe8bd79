import { type PlacedLabel, placeLabels } from "./label-rows.ts";
import { fitText, textWidth } from "./text-width.ts";

/** One number of a limit through time. Days are ISO dates; `from` is null where nobody knows when it began. */
export type TimelineStep = {
  id: string;
  /** The number as printed, "40 µg/ft²". */
  number: string;
  /** Its time in words, in full and in years only: "6 January 2020 to 12 January 2025", "2020 to 2025". */
  period: string;
  years: string;
  from: string | null;
  until: string | null;
  /** Replaced before its first day: a mark, never a bar. */
  never: boolean;
  /** In effect earlier, but asked of anyone only from this day. */
  complianceFrom: string | null;
};
export type TimelineInput = {
  steps: readonly TimelineStep[];
  /** Days drawn right through: today, the day of a test. */
  marks: readonly { id: string; day: string; text: string }[];
  today: string;
};

export type TimelineBar = { from: number; to: number; state: "past" | "now" | "coming" | "waiting" };
export type TimelineLayout = {
  width: number;
  height: number;
  fontSize: number;
  top: number;
  axisY: number;
  rows: {
    id: string;
    number: string;
    text: string;
    at: number;
    dx: number;
    textY: number;
    barY: number;
    bars: TimelineBar[];
    /** The place of a number that never took effect. */
    never: number | null;
    openLeft: boolean;
    openRight: boolean;
  }[];
  marks: (PlacedLabel & { y: number })[];
  ticks: { at: number; text: string; dx: number }[];
};

export const timelineSizes = {
  narrow: { width: 256, fontSize: 13, row: 44 },
  wide: { width: 560, fontSize: 14, row: 46 },
} as const;
export type TimelineSize = keyof typeof timelineSizes;

const dayMs = 86_400_000;
const yearMs = 365.25 * dayMs;
const ms = (day: string): number => Date.parse(`${day}T00:00:00Z`);
const edge = 0.03;

/** The time shown: every known day with room at both ends, four years at least. */
function timeDomain(input: TimelineInput): [number, number] {
  const days = [
    ms(input.today),
    ...input.marks.map((mark) => ms(mark.day)),
    ...input.steps.flatMap((step) =>
      [step.from, step.never ? null : step.until, step.complianceFrom].flatMap((day) =>
        day === null ? [] : [ms(day)],
      ),
    ),
  ];
  let [lo, hi] = [Math.min(...days), Math.max(...days)];
  if (input.steps.some((step) => step.from === null)) lo -= Math.max(5 * yearMs, (hi - lo) * 0.25);
  const short = 4 * yearMs - (hi - lo);
  if (short > 0) {
    lo -= short * 0.75;
    hi += short * 0.25;
  }
  return [lo, hi];
}

const yearSteps = [1, 2, 5, 10, 20, 50, 100];

/** First days of round years, as many as have room beside each other. */
function yearTicks([lo, hi]: readonly [number, number], at: (time: number) => number, width: number, fontSize: number) {
  const size = textWidth("2000", fontSize);
  const most = Math.max(2, Math.floor(width / (size + 16)));
  const [first, last] = [new Date(lo).getUTCFullYear() + 1, new Date(hi).getUTCFullYear()];
  const step = yearSteps.find((each) => (last - first) / each + 1 <= most) ?? 100;
  const ticks: TimelineLayout["ticks"] = [];
  for (let year = Math.ceil(first / step) * step; year <= last; year += step) {
    const x = at(Date.UTC(year, 0, 1));
    const dx = Math.min(Math.max(-size / 2, -x * width), width - size - x * width);
    ticks.push({ at: x, text: String(year), dx });
  }
  return ticks;
}

function barsOf(step: TimelineStep, today: number, at: (time: number) => number): TimelineBar[] {
  if (step.never) return [];
  const from = step.from === null ? 0 : at(ms(step.from));
  // The last day counts whole.
  const end = step.until === null ? null : ms(step.until) + dayMs;
  const to = end === null ? 1 : at(end);
  const begun = step.from === null || ms(step.from) <= today;
  if (!begun) return [{ from, to, state: "coming" }];
  if (end !== null && end <= today) return [{ from, to, state: "past" }];
  if (step.complianceFrom === null) return [{ from, to, state: "now" }];
  const asked = at(ms(step.complianceFrom));
  return [
    { from, to: asked, state: "waiting" },
    { from: asked, to, state: ms(step.complianceFrom) <= today ? "now" : "coming" },
  ];
}

/**
 * Where everything of a limit's timeline goes: a row to a number, oldest first, its words over its bar, years along the
 * foot. Places are fractions of the width and offsets px, so what is clear of each other at the narrowest width stays so.
 */
export function limitTimelineLayout(input: TimelineInput, size: TimelineSize): TimelineLayout {
  const { width, fontSize, row } = timelineSizes[size];
  const [lo, hi] = timeDomain(input);
  const at = (time: number): number => edge + (1 - 2 * edge) * Math.min(Math.max((time - lo) / (hi - lo), 0), 1);
  const today = ms(input.today);
  const marks = placeLabels(
    input.marks.map((mark) => ({ id: mark.id, at: at(ms(mark.day)), text: mark.text, put: "beside" as const })),
    width,
    fontSize,
  );
  const markRows = Math.max(-1, ...marks.map((mark) => mark.row)) + 1;
  const top = markRows * (fontSize + 6) + 4;
  const rows = input.steps.map((step, index) => {
    const y = top + index * row;
    const bars = barsOf(step, today, at);
    const never = step.never ? at(ms(step.from ?? input.today)) : null;
    const start = never ?? bars[0]?.from ?? 0;
    const words = size === "wide" ? step.period : step.years;
    const text = fitText(`${step.number}, ${words}`, fontSize, width);
    const room = textWidth(text, fontSize);
    return {
      id: step.id,
      number: text.startsWith(step.number) ? step.number : "",
      text,
      at: start,
      dx: Math.min(0, width - room - start * width),
      textY: y + fontSize + 3,
      barY: y + fontSize + 16,
      bars,
      never,
      openLeft: step.from === null && !step.never,
      openRight: step.until === null && !step.never,
    };
  });
  const axisY = top + rows.length * row + 4;
  return {
    width,
    height: axisY + fontSize + 12,
    fontSize,
    top,
    axisY,
    rows,
    marks: marks.map((mark) => ({ ...mark, y: (markRows - 1 - mark.row) * (fontSize + 6) + fontSize })),
    ticks: yearTicks([lo, hi], at, width, fontSize - 1),
  };
}
