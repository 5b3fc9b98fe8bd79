import { numberText } from "@/lib/wording/formats.ts";
import type { Language } from "@/lib/wording/language.ts";
import { type LabelWish, type PlacedLabel, placeLabels } from "./label-rows.ts";
import { type LogAxis, logAxis, logDomain, logTicks, type Off } from "./log-axis.ts";
import { textWidth } from "./text-width.ts";

/** What a strip shows; every number in one unit. Null where the result has no such thing. */
export type StripInput = {
  unit: string;
  value: number | null;
  interval: readonly [number, number] | null;
  /** Nothing found, or too little to put a number on: the content is under this. */
  bound: number | null;
  /** Lowest and highest spot of an uneven part. */
  range: readonly [number, number] | null;
  worst: { value: number; label: string } | null;
  limits: readonly { id: string; value: number; label: string }[];
  /** The result as printed, "92.1 ± 7.5 mg/kg". */
  label: string;
  /** A common axis for several strips; chosen from the numbers where absent. */
  domain?: readonly [number, number] | undefined;
};

export type Mark = { at: number; off: Off };
export type StripLayout = {
  /** Narrowest width in px this layout holds for; it holds for every wider one. */
  width: number;
  height: number;
  fontSize: number;
  domain: readonly [number, number];
  bar: { from: number; to: number; open: boolean; offLeft: boolean; offRight: boolean } | null;
  value: Mark | null;
  range: { from: number; to: number } | null;
  worst: Mark | null;
  limits: (Mark & { id: string; top: number })[];
  ticks: { at: number; label: string | null }[];
  labels: (PlacedLabel & { kind: "limit" | "result" | "worst" | "tick"; y: number; value?: string })[];
  /** `words`: there are words between the bar and the axis, and a limit's line makes room for them. */
  y: { top: number; bar: number; under: number; axis: number; words: boolean };
};

export const stripSizes = {
  narrow: { width: 256, fontSize: 13, row: 19, bar: 26 },
  wide: { width: 560, fontSize: 14, row: 21, bar: 30 },
  widest: { width: 840, fontSize: 14, row: 21, bar: 30 },
  small: { width: 200, fontSize: 12, row: 16, bar: 22 },
} as const;
export type StripSize = keyof typeof stripSizes;

/** A limit's or tick's number, never a result's: `plainNumber(12500)` is "12 500" with a narrow space, `plainNumber(0.05)` "0.05". */
export const plainNumber = (value: number, language: Language = "en"): string => numberText(value, 6, language);

const sameNumber = (a: { value: number }, b: { value: number }): boolean =>
  plainNumber(a.value) === plainNumber(b.value);

const positive = (value: number | null | undefined): value is number =>
  value !== null && value !== undefined && Number.isFinite(value) && value > 0;

function domainOf(input: StripInput): readonly [number, number] {
  if (input.domain) return input.domain;
  const bound = positive(input.bound) ? [input.bound, input.bound / 3] : [];
  const values = [
    input.value,
    ...(input.interval ?? []),
    ...(input.range ?? []),
    input.worst?.value,
    ...bound,
    ...input.limits.map((limit) => limit.value),
  ].filter(positive);
  return logDomain(values, input.value ?? input.bound ?? input.worst?.value ?? null);
}

function barOf(input: StripInput, axis: LogAxis): StripLayout["bar"] {
  if (input.interval) {
    const [lo, hi] = input.interval;
    return {
      from: lo > 0 ? axis.at(lo) : 0,
      to: axis.at(hi),
      open: false,
      offLeft: lo <= 0 || axis.off(lo) === "left" || axis.off(hi) === "left",
      offRight: axis.off(hi) === "right" || axis.off(lo) === "right",
    };
  }
  if (positive(input.bound))
    return {
      from: 0,
      to: axis.at(input.bound),
      open: true,
      offLeft: true,
      offRight: axis.off(input.bound) === "right",
    };
  return null;
}

const markOf = (value: number | null | undefined, axis: LogAxis): Mark | null =>
  positive(value) ? { at: axis.at(value), off: axis.off(value) } : null;

/** Tick labels that fit beside each other, decades first. */
function tickLabels(ticks: { value: number; at: number }[], width: number, fontSize: number, language: Language) {
  const taken: { left: number; right: number }[] = [];
  return ticks.map(({ value, at }) => {
    const text = plainNumber(value, language);
    const size = textWidth(text, fontSize);
    const left = at * width - size / 2;
    const free = taken.every((box) => left > box.right + 10 || left + size < box.left - 10);
    const inside = left >= 0 && left + size <= width;
    if (!free || !inside) return { value, at, text: null, size };
    taken.push({ left, right: left + size });
    return { value, at, text, size };
  });
}

/**
 * Where everything of a strip goes, as fractions of the width with px offsets. Pure: the drawing adds nothing to it.
 * From top to bottom: the limits' names in rows, the bar, the result's and the worst spot's words, the axis.
 */
export function stripLayout(input: StripInput, size: StripSize, language: Language = "en"): StripLayout {
  const { width, fontSize, row, bar: barHeight } = stripSizes[size];
  const small = size === "small";
  const axis = logAxis(domainOf(input));
  const bar = barOf(input, axis);
  const value = markOf(input.value, axis);
  const worst = markOf(input.worst?.value, axis);
  const known = input.limits.filter((limit) => positive(limit.value));
  // Where only numbers are written, one number is written once.
  const limits = small ? known.filter((limit, at) => known.findIndex((one) => sameNumber(one, limit)) === at) : known;

  const above = placeLabels(
    limits.map((limit): LabelWish => {
      const number = plainNumber(limit.value, language);
      const text = small ? number : `${number} ${limit.label}`;
      return { id: limit.id, at: axis.at(limit.value), text, put: small ? "centred" : "beside" };
    }),
    width,
    fontSize,
  );
  const rowsAbove = Math.max(-1, ...above.map((label) => label.row)) + 1;

  const underWishes: LabelWish[] = [];
  const middle = value?.at ?? (bar ? bar.to : null);
  if (!small && middle !== null) underWishes.push({ id: "result", at: middle, text: input.label, put: "centred" });
  if (!small && worst && input.worst)
    underWishes.push({ id: "worst", at: worst.at, text: input.worst.label, put: "centred" });
  const under = placeLabels(underWishes, width, fontSize, "given");
  const rowsUnder = Math.max(-1, ...under.map((label) => label.row)) + 1;

  const y = { top: rowsAbove * row, bar: 0, under: 0, axis: 0, words: rowsUnder > 0 };
  y.bar = y.top + barHeight / 2 + 2;
  y.under = y.top + barHeight + 4;
  y.axis = y.under + rowsUnder * row + (rowsUnder ? 5 : 0);
  const rawTicks = logTicks(axis.domain).map((tick) => ({ ...tick, at: axis.at(tick.value) }));
  const ticks = tickLabels(rawTicks, width, fontSize - 1, language);
  const numberOf = new Map(limits.map((limit) => [limit.id, plainNumber(limit.value, language)]));

  return {
    width,
    height: y.axis + 6 + row,
    fontSize,
    domain: axis.domain,
    bar,
    value,
    range: input.range ? { from: axis.at(input.range[0]), to: axis.at(input.range[1]) } : null,
    worst,
    limits: above.map((label) => {
      const limit = limits.find((each) => each.id === label.id);
      return {
        id: label.id,
        at: label.at,
        off: limit ? axis.off(limit.value) : null,
        top: (rowsAbove - 1 - label.row) * row + (label.anchor === "middle" ? row - 2 : 3),
      };
    }),
    ticks: ticks.map((tick) => ({ at: tick.at, label: tick.text })),
    labels: [
      ...above.map((label) => {
        const number = numberOf.get(label.id);
        return {
          ...label,
          kind: "limit" as const,
          y: (rowsAbove - 1 - label.row) * row + row - 6,
          ...(number && label.text.startsWith(number) ? { value: number } : {}),
        };
      }),
      ...under.map((label) => ({
        ...label,
        kind: label.id === "result" ? ("result" as const) : ("worst" as const),
        y: y.under + label.row * row + row - 5,
      })),
      ...ticks
        .filter((tick) => tick.text !== null)
        .map((tick) => ({
          id: `tick-${tick.value}`,
          at: tick.at,
          text: tick.text ?? "",
          dx: -tick.size / 2,
          width: tick.size,
          row: 0,
          anchor: "middle" as const,
          kind: "tick" as const,
          y: y.axis + 6 + row - 5,
        })),
    ],
    y,
  };
}
