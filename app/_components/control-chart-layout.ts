import { significant } from "@/lib/wording/formats.ts";
import { textWidth } from "./text-width.ts";

/** One point in time. `signal` where the chart speaks up at it; `words` say the point whole. */
export type ControlPoint = { id: string; label: string; value: number; signal: boolean; words: string };
/** Points in the order of time, the centre, and the limits that hold throughout. */
export type ControlChartInput = {
  points: readonly ControlPoint[];
  center: number;
  limits: readonly [number, number];
};

export type ControlChartLayout = {
  height: number;
  axisY: number;
  domain: [number, number];
  points: { id: string; at: number; y: number; signal: boolean }[];
  lines: { id: "upper" | "center" | "lower"; value: number; y: number; text: string }[];
  labels: { id: string; at: number; text: string; anchor: "start" | "middle" | "end" }[];
};

/** The share of the width kept at the left for the numbers of the three lines, so that no path runs through them. */
export const gutter = 0.16;
const height = 240;
const top = 14;
const axisY = 208;

/** Points from left to right at equal distances: a chart is read by order, not by the calendar. */
export function controlChartLayout({ points, center, limits }: ControlChartInput, width = 300): ControlChartLayout {
  const values = [...points.map((point) => point.value), center, ...limits];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const spare = (high - low || Math.abs(center) || 1) * 0.12;
  const domain: [number, number] = [low - spare, high + spare];
  const y = (value: number): number => axisY - ((value - domain[0]) / (domain[1] - domain[0])) * (axisY - top);
  // Room at both ends, so that no point sits on the frame.
  const at = (index: number): number =>
    points.length < 2 ? 0.56 : gutter + 0.03 + ((0.94 - gutter) * index) / (points.length - 1);
  return {
    height,
    axisY,
    domain,
    points: points.map((point, index) => ({ id: point.id, at: at(index), y: y(point.value), signal: point.signal })),
    lines: [
      { id: "upper", value: limits[1], y: y(limits[1]), text: significant(limits[1], 4) },
      { id: "center", value: center, y: y(center), text: significant(center, 4) },
      { id: "lower", value: limits[0], y: y(limits[0]), text: significant(limits[0], 4) },
    ],
    labels: endLabels(points, at, width),
  };
}

/** First and last always, the ones between only where they fit without touching. */
function endLabels(
  points: readonly ControlPoint[],
  at: (index: number) => number,
  width: number,
): ControlChartLayout["labels"] {
  const last = points.length - 1;
  const placed: (ControlChartLayout["labels"][number] & { from: number; to: number })[] = [];
  const order = [0, last, Math.round(last / 2), ...points.keys()];
  for (const index of order) {
    const point = points[index];
    if (!point || placed.some((label) => label.id === point.id)) continue;
    const size = textWidth(point.label, 12);
    const x = at(index) * width;
    const anchor = points.length < 2 ? "middle" : index === 0 ? "start" : index === last ? "end" : "middle";
    const from = anchor === "start" ? x : anchor === "end" ? x - size : x - size / 2;
    if (placed.some((label) => from < label.to + 8 && from + size > label.from - 8)) continue;
    placed.push({ id: point.id, at: at(index), text: point.label, anchor, from, to: from + size });
  }
  return placed.map(({ from: _, to: __, ...label }) => label);
}
