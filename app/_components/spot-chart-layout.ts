import type { Language } from "@/lib/wording/language.ts";
import { plainNumber } from "./interval-strip-layout.ts";
import { fitText, textWidth } from "./text-width.ts";

/** A shot, in the result's unit. `half` is half the length of its error bar. */
export type SpotPoint = {
  id: string;
  value: number | null;
  half: number | null;
  below: number | null;
  setAside: boolean;
};
export type SpotRow = { spot: string; points: readonly SpotPoint[]; mean: number | null };
export type SpotChartInput = {
  rows: readonly SpotRow[];
  limits: readonly { id: string; value: number; label: string }[];
};

export type SpotChartLayout = {
  width: number;
  height: number;
  axisY: number;
  rows: {
    spot: string;
    y: number;
    top: number;
    bottom: number;
    mean: number | null;
    points: {
      id: string;
      y: number;
      kind: "value" | "open";
      at: number;
      from: number;
      to: number;
      setAside: boolean;
    }[];
  }[];
  limits: { id: string; at: number; text: string; dx: number }[];
  ticks: { at: number; value: number; text: string; dx: number }[];
  /** The right end of the axis; the left is zero. */
  max: number;
};

const shotHeight = 15;
const labelHeight = 20;
const font = 13;

/** A linear scale from zero with round steps: `roundSteps(437)` is [0, 100, 200, 300, 400]. */
export function roundSteps(max: number): number[] {
  if (!(max > 0)) return [0, 1];
  const power = 10 ** Math.floor(Math.log10(max));
  const step = [0.2, 0.5, 1, 2].map((factor) => factor * power).find((each) => max / each <= 5) ?? 2 * power;
  return Array.from({ length: Math.floor(max / step) + 1 }, (_, index) => index * step);
}

/** Spots one under the other, each shot on a line of its own, on one linear axis from zero. */
export function spotChartLayout(input: SpotChartInput, language: Language = "en", width = 256): SpotChartLayout {
  const reach = input.rows.flatMap((row) =>
    row.points.flatMap((point) => [(point.value ?? 0) + (point.half ?? 0), point.below ?? 0]),
  );
  const dataMax = Math.max(0, ...reach);
  // A limit far beyond the readings would flatten them all; it is named in the table instead.
  const shown = input.limits.filter((limit) => limit.value <= dataMax * 2.5);
  const max = Math.max(dataMax, ...shown.map((limit) => limit.value)) * 1.06 || 1;
  const at = (value: number): number => Math.min(Math.max(value / max, 0), 1);

  const limitRows = shown.toSorted((a, b) => a.value - b.value);
  let y = limitRows.length * 18 + 4;
  const rows = input.rows.map((row) => {
    const top = y;
    const points = row.points.map((point, index) => ({
      id: point.id,
      y: top + labelHeight + index * shotHeight + shotHeight / 2,
      kind: point.value === null ? ("open" as const) : ("value" as const),
      at: at(point.value ?? point.below ?? 0),
      from: point.value === null ? 0 : at(point.value - (point.half ?? 0)),
      to: at(point.value === null ? (point.below ?? 0) : point.value + (point.half ?? 0)),
      setAside: point.setAside,
    }));
    y = top + labelHeight + row.points.length * shotHeight + 5;
    return { spot: row.spot, y: top + 15, top, bottom: y, mean: row.mean === null ? null : at(row.mean), points };
  });

  return {
    width,
    height: y + 24,
    axisY: y,
    rows,
    limits: limitRows.map((limit) => {
      const text = fitText(`${plainNumber(limit.value, language)} ${limit.label}`, font, width);
      const size = textWidth(text, font);
      const x = at(limit.value) * width;
      const dx = x + 4 + size <= width ? 4 : x - size - 4 >= 0 ? -size - 4 : width - size - x;
      return { id: limit.id, at: at(limit.value), text, dx };
    }),
    ticks: roundSteps(max).map((value) => {
      const text = plainNumber(value, language);
      const size = textWidth(text, font - 1);
      const x = at(value) * width;
      return { at: at(value), value, text, dx: Math.min(Math.max(-size / 2, -x), width - size - x) };
    }),
    max,
  };
}
