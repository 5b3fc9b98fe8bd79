import type { ReactNode } from "react";
import figure from "./figure.module.css";
import { Figure } from "./figure.tsx";
import styles from "./limit-timeline.module.css";
import {
  limitTimelineLayout,
  type TimelineBar,
  type TimelineInput,
  type TimelineLayout,
  type TimelineSize,
} from "./limit-timeline-layout.ts";
import { percent } from "./percent.ts";

const sizes: TimelineSize[] = ["narrow", "wide"];
const share = { start: 0, middle: 0.5, end: 1 } as const;

/**
 * A limit through time: a row to each number, its bar from its first day to its last.
 */
export function LimitTimeline({
  input,
  title,
  note,
  table,
}: {
  input: TimelineInput;
  title: ReactNode;
  note?: ReactNode;
  table?: ReactNode;
}) {
  return (
    <Figure title={title} note={note} table={table}>
      {sizes.map((size) => (
        <Drawing key={size} layout={limitTimelineLayout(input, size)} size={size} />
      ))}
    </Figure>
  );
}

function Drawing({ layout, size }: { layout: TimelineLayout; size: TimelineSize }) {
  return (
    <svg
      className={`${styles.drawing} ${figure.words} ${figure[size]}`}
      width="100%"
      height={layout.height}
      aria-hidden="true"
      focusable="false"
    >
      {layout.marks.map((mark) => (
        <line
          key={mark.id}
          className={styles.mark}
          x1={percent(mark.at)}
          x2={percent(mark.at)}
          y1={mark.y - layout.fontSize + 3}
          y2={layout.axisY}
        />
      ))}
      {layout.rows.map((row) => (
        <g key={row.id}>
          {row.bars.map((bar) => (
            <Bar key={bar.from} bar={bar} y={row.barY} open={{ left: row.openLeft, right: row.openRight }} />
          ))}
          {row.never === null ? null : (
            <svg x={percent(row.never)} y={row.barY} width="1" height="1" overflow="visible" aria-hidden="true">
              <path className={styles.cross} d="M-5 -5 L5 5 M-5 5 L5 -5" />
            </svg>
          )}
          <text x={percent(row.at)} dx={Number(row.dx.toFixed(1))} y={row.textY} fontSize={layout.fontSize}>
            <tspan className={styles.strong}>{row.number}</tspan>
            {row.text.slice(row.number.length)}
          </text>
        </g>
      ))}
      {layout.marks.map((mark) => (
        <text
          key={mark.id}
          className={styles.markText}
          x={percent(mark.at)}
          dx={Number((mark.dx + mark.width * share[mark.anchor]).toFixed(1))}
          textAnchor={mark.anchor}
          y={mark.y}
          fontSize={layout.fontSize}
        >
          {mark.text}
        </text>
      ))}
      <line className={styles.axis} x1="0" x2="100%" y1={layout.axisY} y2={layout.axisY} />
      {layout.ticks.map((tick) => (
        <g key={tick.text}>
          <line
            className={styles.axis}
            x1={percent(tick.at)}
            x2={percent(tick.at)}
            y1={layout.axisY}
            y2={layout.axisY + 5}
          />
          <text
            className={styles.soft}
            x={percent(tick.at)}
            dx={Number(tick.dx.toFixed(1))}
            y={layout.axisY + layout.fontSize + 5}
            fontSize={layout.fontSize - 1}
          >
            {tick.text}
          </text>
        </g>
      ))}
    </svg>
  );
}

const half = 5;

/** A bar; an end that is not known or not yet come is left open. */
function Bar({ bar, y, open }: { bar: TimelineBar; y: number; open: { left: boolean; right: boolean } }) {
  const [x1, x2] = [percent(bar.from), percent(bar.to)];
  const openLeft = open.left && bar.from === 0;
  const openRight = open.right && bar.to === 1;
  return (
    <g className={styles[bar.state]}>
      <rect x={x1} width={percent(Math.max(bar.to - bar.from, 0.004))} y={y - half} height={half * 2} />
      <line x1={x1} x2={x2} y1={y - half} y2={y - half} />
      <line x1={x1} x2={x2} y1={y + half} y2={y + half} />
      {openLeft ? null : <line x1={x1} x2={x1} y1={y - half} y2={y + half} />}
      {openRight ? null : <line x1={x2} x2={x2} y1={y - half} y2={y + half} />}
    </g>
  );
}
