"use client";

import type { ReactNode } from "react";
import {
  ComposedChart,
  type DotItemDotProps,
  ErrorBar,
  Line,
  ReferenceArea,
  ReferenceLine,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from "recharts";
import { pointSentence, spotSentence } from "@/lib/wording/result-figures.ts";
import styles from "./chart-frame.module.css";
import { ChartFrame, ChartWords } from "./chart-frame.tsx";
import { SpotDrawing } from "./spot-chart.tsx";
import { type SpotChartInput, type SpotChartLayout, type SpotPoint, spotChartLayout } from "./spot-chart-layout.ts";

/** A line of the drawing: the name of a spot, or one of its shots. */
type ChartRow = {
  id: string;
  spot: string | null;
  at: number | null;
  bar: [number, number] | null;
  mean: number | null;
  open: boolean;
  setAside: boolean;
  words: string;
};

const room = { right: 8, left: 0, axis: 24 };

/**
 * Readings by spot with their error bars and the interval of the result, for the bench: point at a shot, or walk along them with
 * the arrow keys, and it is told in words. The same drawing stands still on public pages (`SpotChart`).
 */
export function ReadingsChart({
  input,
  unit,
  interval,
  title,
  note,
  table,
}: {
  input: SpotChartInput;
  unit: string;
  /** The range that most likely holds the true amount, drawn as a band. */
  interval: readonly [number, number] | null;
  title: ReactNode;
  note?: ReactNode;
  table?: ReactNode;
}) {
  const layout = spotChartLayout(input);
  const rows = chartRows(input, unit);
  return (
    <ChartFrame
      title={title}
      note={note}
      table={table}
      height={layout.height}
      still={<SpotDrawing layout={layout} />}
      words={rows.map((row) => row.words)}
      live={(at) => <LiveChart rows={rows} layout={layout} interval={interval} at={at} />}
    />
  );
}

function LiveChart({
  rows,
  layout,
  interval,
  at,
}: {
  rows: ChartRow[];
  layout: SpotChartLayout;
  interval: readonly [number, number] | null;
  at: number | null;
}) {
  const { max, limits, ticks, height } = layout;
  return (
    <ResponsiveContainer width="100%" height="100%" initialDimension={{ width: 320, height }}>
      <ComposedChart
        layout="vertical"
        data={rows}
        margin={{ top: limits.length * 18 + 4, right: room.right, bottom: 0, left: room.left }}
        accessibilityLayer={false}
      >
        <XAxis
          type="number"
          domain={[0, max]}
          ticks={ticks.map((tick) => tick.value)}
          tickFormatter={(value: number) => ticks.find((tick) => tick.value === value)?.text ?? String(value)}
          interval="preserveStartEnd"
          height={room.axis}
          stroke="var(--rule)"
          tickLine={{ stroke: "var(--rule)" }}
          allowDataOverflow
        />
        <YAxis
          type="category"
          padding={{ top: 10, bottom: 12 }}
          dataKey="id"
          width={1}
          axisLine={false}
          tickLine={false}
          interval={0}
          tick={<SpotTick rows={rows} />}
        />
        {interval ? (
          <ReferenceArea
            x1={Math.max(0, interval[0])}
            x2={Math.min(max, interval[1])}
            fill="var(--ink)"
            fillOpacity={0.09}
          />
        ) : null}
        {limits.map((limit, index) => (
          <ReferenceLine
            key={limit.id}
            x={limit.at * max}
            stroke="var(--accent)"
            strokeWidth={1.5}
            strokeDasharray="5 3"
            label={<LimitLabel text={limit.text} dx={limit.dx} index={index} />}
          />
        ))}
        {at === null ? null : <ReferenceLine y={rows[at]?.id ?? ""} stroke="var(--accent)" strokeWidth={1} />}
        <Line dataKey="mean" stroke="none" dot={meanStroke} activeDot={false} isAnimationActive={false} />
        <Line dataKey="at" stroke="none" dot={shotDot} activeDot={false} isAnimationActive={false}>
          <ErrorBar dataKey="bar" width={0} stroke="var(--ink)" strokeWidth={1.75} isAnimationActive={false} />
        </Line>
        <Tooltip
          isAnimationActive={false}
          cursor={{ stroke: "var(--accent)", strokeWidth: 1 }}
          content={({ active, payload, label }) => (
            <ChartWords
              text={active ? ((payload?.[0]?.payload as ChartRow | undefined)?.words ?? wordsOf(rows, label)) : null}
            />
          )}
        />
      </ComposedChart>
    </ResponsiveContainer>
  );
}

const wordsOf = (rows: ChartRow[], id: unknown): string | null => rows.find((row) => row.id === id)?.words ?? null;

function chartRows({ rows }: SpotChartInput, unit: string): ChartRow[] {
  return rows.flatMap(({ spot, points, mean }): ChartRow[] => [
    {
      id: `spot ${spot}`,
      spot,
      at: null,
      bar: null,
      mean: null,
      open: false,
      setAside: false,
      words: spotSentence(spot, mean, points.length, unit),
    },
    ...points.map((point) => ({
      id: point.id,
      spot: null,
      at: point.value ?? point.below,
      bar: barOf(point),
      mean,
      open: point.value === null,
      setAside: point.setAside,
      words: pointSentence(spot, point, unit),
    })),
  ]);
}

/** How far the bar reaches to the left and to the right; one of what was not detected starts at zero. */
function barOf(point: SpotPoint): [number, number] | null {
  if (point.value === null) return point.below === null ? null : [point.below, 0];
  return point.half === null ? null : [Math.min(point.half, point.value), point.half];
}

/** The name of a spot stands inside the drawing, above its shots, as in the still one. */
function SpotTick({ rows, y, payload }: { rows: ChartRow[]; y?: number | string; payload?: { value?: unknown } }) {
  const spot = rows.find((row) => row.id === payload?.value)?.spot ?? null;
  if (spot === null) return <g />;
  return (
    <text x={2} y={Number(y)} dy="0.35em" textAnchor="start" className={styles.strong}>
      {spot}
    </text>
  );
}

function LimitLabel({ text, dx, index, viewBox }: { text: string; dx: number; index: number; viewBox?: unknown }) {
  const { x = 0 } = (viewBox ?? {}) as { x?: number };
  return (
    <text x={x + dx} y={index * 18 + 13} textAnchor="start">
      {text}
    </text>
  );
}

function meanStroke({ key, cx, cy, payload }: DotItemDotProps) {
  const { mean } = payload as ChartRow;
  if (mean === null || cx === undefined || cy === undefined) return <g key={key} />;
  return <line key={key} x1={cx} x2={cx} y1={cy - 8} y2={cy + 8} className={styles.thin} />;
}

function shotDot({ key, cx, cy, payload }: DotItemDotProps) {
  const row = payload as ChartRow;
  if (row.at === null || cx === undefined || cy === undefined) return <g key={key} />;
  if (row.open) return <line key={key} x1={cx} x2={cx} y1={cy - 5} y2={cy + 5} className={styles.stroke} />;
  return <circle key={key} cx={cx} cy={cy} r={4} className={row.setAside ? styles.hollow : styles.dot} />;
}
