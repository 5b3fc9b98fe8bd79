import type { ReactNode } from "react";
import figure from "./figure.module.css";
import { Figure } from "./figure.tsx";
import styles from "./scale-drawing.module.css";
import type { Drawing, DrawingMark, DrawingSize } from "./scale-drawing-layout.ts";

const tidy = (value: number): number => Number(value.toFixed(2));

/**
 * A drawing to scale, for a narrow and a wide page. Its px are CSS px: what is drawn life size comes out life size on paper.
 */
export function ScaleDrawing({
  drawings,
  title,
  note,
  table,
}: {
  drawings: Record<DrawingSize, Drawing>;
  title: ReactNode;
  note?: ReactNode;
  table?: ReactNode;
}) {
  return (
    <Figure title={title} note={note} table={table}>
      <Sheet drawing={drawings.narrow} className={figure.narrow} />
      <Sheet drawing={drawings.wide} className={figure.wide} />
    </Figure>
  );
}

function Sheet({ drawing, className }: { drawing: Drawing; className: string | undefined }) {
  return (
    <svg
      className={`${styles.sheet} ${figure.words} ${className}`}
      width={drawing.width}
      height={tidy(drawing.height)}
      viewBox={`0 0 ${drawing.width} ${tidy(drawing.height)}`}
      aria-hidden="true"
      focusable="false"
    >
      {drawing.marks.map((mark, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a fixed list
        <Shape key={index} mark={mark} />
      ))}
    </svg>
  );
}

function Shape({ mark }: { mark: DrawingMark }) {
  switch (mark.kind) {
    case "line":
      return (
        <line
          className={styles[mark.ink]}
          x1={tidy(mark.x1)}
          y1={tidy(mark.y1)}
          x2={tidy(mark.x2)}
          y2={tidy(mark.y2)}
        />
      );
    case "rect":
      return (
        <rect
          className={styles[mark.ink]}
          x={tidy(mark.x)}
          y={tidy(mark.y)}
          width={tidy(mark.width)}
          height={tidy(mark.height)}
        />
      );
    case "circle":
      return <circle className={styles[mark.ink]} cx={tidy(mark.cx)} cy={tidy(mark.cy)} r={tidy(mark.r)} />;
    case "text":
      return (
        <text
          className={mark.strong ? styles.strong : undefined}
          x={tidy(mark.x)}
          y={tidy(mark.y)}
          fontSize={mark.size}
          textAnchor={mark.anchor}
        >
          {mark.text}
        </text>
      );
  }
}
