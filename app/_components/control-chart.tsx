"use client";

import type { ReactNode } from "react";
import {
  ComposedChart,
  type DotItemDotProps,
  Line,
  ReferenceLine,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from "recharts";
import frame from "./chart-frame.module.css";
import { ChartFrame, ChartWords } from "./chart-frame.tsx";
import styles from "./control-chart.module.css";
import {
  type ControlChartInput,
  type ControlChartLayout,
  type ControlPoint,
  controlChartLayout,
  gutter,
} from "./control-chart-layout.ts";
import figure from "./figure.module.css";
import { percent } from "./percent.ts";

/**
 * Check readings one after the other, their centre and their limits. A point at which the chart speaks up is a ringed square, not
 * a colour. The title says what is to be seen; `table` is the same in figures; every point is told in words on pointing or
 * walking along with the arrow keys.
 */
export function ControlChart({
  input,
  title,
  note,
  table,
}: {
  input: ControlChartInput;
  title: ReactNode;
  note?: ReactNode;
  table?: ReactNode;
}) {
  const layout = controlChartLayout(input);
  return (
    <ChartFrame
      title={title}
      note={note}
      table={table}
      height={layout.height}
      still={<StillChart layout={layout} />}
      words={input.points.map((point) => point.words)}
      live={(at) => <LiveChart input={input} layout={layout} at={at} />}
    />
  );
}

/** px at the left of the answering chart for the numbers of its lines. */
const liveGutter = 64;

function StillChart({ layout }: { layout: ControlChartLayout }) {
  const { points, lines, labels, height, axisY } = layout;
  return (
    <svg
      className={`${styles.still} ${figure.words}`}
      width="100%"
      height={height}
      aria-hidden="true"
      focusable="false"
    >
      {lines.map((line) => (
        <g key={line.id} className={line.id === "center" ? styles.center : styles.limit}>
          <line x1={percent(gutter)} x2="100%" y1={line.y} y2={line.y} />
          <text x={percent(gutter)} dx={-8} y={line.y + 4} textAnchor="end">
            {line.text}
          </text>
        </g>
      ))}
      {points.slice(1).map((point, index) => {
        const before = points[index];
        return before ? (
          <line
            key={point.id}
            className={styles.path}
            x1={percent(before.at)}
            x2={percent(point.at)}
            y1={before.y}
            y2={point.y}
          />
        ) : null;
      })}
      {points.map((point) => (
        <svg
          key={point.id}
          x={percent(point.at)}
          y={point.y}
          overflow="visible"
          width="1"
          height="1"
          aria-hidden="true"
        >
          <PointMark signal={point.signal} />
        </svg>
      ))}
      <line className={styles.axis} x1="0" x2="100%" y1={axisY} y2={axisY} />
      {labels.map((label) => (
        <text key={label.id} className={styles.tick} x={percent(label.at)} y={axisY + 18} textAnchor={label.anchor}>
          {label.text}
        </text>
      ))}
    </svg>
  );
}

/** A dot; where the chart speaks up, a square with a ring around it. */
function PointMark({ signal }: { signal: boolean }) {
  return signal ? (
    <g>
      <circle r="9" className={frame.stroke} />
      <rect x="-4" y="-4" width="8" height="8" className={frame.dot} />
    </g>
  ) : (
    <circle r="4" className={frame.dot} />
  );
}

function LiveChart({ input, layout, at }: { input: ControlChartInput; layout: ControlChartLayout; at: number | null }) {
  const { lines, labels, domain, height, axisY } = layout;
  const shown = new Set(labels.map((label) => label.id));
  const anchors = new Map(labels.map((label) => [label.id, label.anchor]));
  const byId = new Map(input.points.map((point) => [point.id, point]));
  return (
    <ResponsiveContainer width="100%" height="100%" initialDimension={{ width: 320, height }}>
      <ComposedChart
        data={[...input.points]}
        margin={{ top: 14, right: 12, bottom: 0, left: liveGutter }}
        accessibilityLayer={false}
      >
        <XAxis
          dataKey="id"
          height={height - axisY}
          interval={0}
          stroke="var(--rule)"
          tickLine={false}
          tick={({ x, y, payload }: { x?: number | string; y?: number | string; payload?: { value?: unknown } }) => {
            const id = String(payload?.value);
            return shown.has(id) ? (
              <text x={Number(x)} y={Number(y)} dy="0.9em" textAnchor={anchors.get(id) ?? "middle"}>
                {byId.get(id)?.label}
              </text>
            ) : (
              <g />
            );
          }}
        />
        <YAxis hide domain={domain} type="number" allowDataOverflow />
        {lines.map((line) => (
          <ReferenceLine
            key={line.id}
            y={line.value}
            stroke={line.id === "center" ? "var(--ink)" : "var(--accent)"}
            strokeWidth={line.id === "center" ? 1 : 1.5}
            {...(line.id === "center" ? {} : { strokeDasharray: "5 3" })}
            label={<LineLabel text={line.text} />}
          />
        ))}
        {at === null ? null : <ReferenceLine x={input.points[at]?.id ?? ""} stroke="var(--accent)" strokeWidth={1} />}
        <Line
          dataKey="value"
          stroke="var(--ink)"
          strokeWidth={1.25}
          isAnimationActive={false}
          activeDot={false}
          dot={pointDot}
          type="linear"
        />
        <Tooltip
          isAnimationActive={false}
          cursor={{ stroke: "var(--accent)", strokeWidth: 1 }}
          content={({ active, label }) => (
            <ChartWords text={active ? (byId.get(String(label))?.words ?? null) : null} />
          )}
        />
      </ComposedChart>
    </ResponsiveContainer>
  );
}

function LineLabel({ text, viewBox }: { text: string; viewBox?: unknown }) {
  const { x = 0, y = 0 } = (viewBox ?? {}) as { x?: number; y?: number };
  return (
    <text x={x} y={y + 4} dx={-8} textAnchor="end">
      {text}
    </text>
  );
}

function pointDot({ key, cx, cy, payload }: DotItemDotProps) {
  return (
    <g key={key} transform={`translate(${cx ?? 0} ${cy ?? 0})`}>
      <PointMark signal={(payload as ControlPoint).signal} />
    </g>
  );
}
