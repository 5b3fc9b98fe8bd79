import type { ReactNode } from "react";
import type { Language } from "@/lib/wording/language.ts";
import figure from "./figure.module.css";
import { Figure } from "./figure.tsx";
import { percent } from "./percent.ts";
import styles from "./spot-chart.module.css";
import { type SpotChartInput, type SpotChartLayout, spotChartLayout } from "./spot-chart-layout.ts";

/**
 * Each shot at its spot with its error bar.
 */
export function SpotChart({
  input,
  title,
  note,
  table,
  language = "en",
}: {
  input: SpotChartInput;
  title: ReactNode;
  note?: ReactNode;
  table?: ReactNode;
  language?: Language;
}) {
  return (
    <Figure title={title} quiet note={note} table={table}>
      <SpotDrawing layout={spotChartLayout(input, language)} />
    </Figure>
  );
}

/** The drawing alone, at the width it is given. */
export function SpotDrawing({ layout }: { layout: SpotChartLayout }) {
  return (
    <div className={`${styles.drawing} ${figure.words}`}>
      <svg width="100%" height={layout.height} aria-hidden="true" focusable="false">
        {layout.limits.map((limit, index) => (
          <g key={limit.id} className={styles.limit}>
            <line x1={percent(limit.at)} x2={percent(limit.at)} y1={index * 18 + 3} y2={layout.axisY} />
            <text x={percent(limit.at)} dx={limit.dx} y={index * 18 + 13}>
              {limit.text}
            </text>
          </g>
        ))}
        {layout.rows.map((row) => (
          <g key={row.spot}>
            <line className={styles.rule} x1="0" x2="100%" y1={row.top} y2={row.top} />
            {row.mean === null ? null : (
              <line
                className={styles.mean}
                x1={percent(row.mean)}
                x2={percent(row.mean)}
                y1={row.top + 20}
                y2={row.bottom - 3}
              />
            )}
            {row.points.map((point) => (
              <g key={point.id} className={point.setAside ? styles.aside : styles.shot}>
                <line x1={percent(point.from)} x2={percent(point.to)} y1={point.y} y2={point.y} />
                {point.kind === "open" ? (
                  <line x1={percent(point.to)} x2={percent(point.to)} y1={point.y - 5} y2={point.y + 5} />
                ) : (
                  <circle cx={percent(point.at)} cy={point.y} r="4" />
                )}
              </g>
            ))}
            <text className={styles.spot} x="0" y={row.y}>
              {row.spot}
            </text>
          </g>
        ))}
        <line className={styles.axis} x1="0" x2="100%" y1={layout.axisY} y2={layout.axisY} />
        {layout.ticks.map((tick) => (
          <g key={tick.at}>
            <line
              className={styles.axis}
              x1={percent(tick.at)}
              x2={percent(tick.at)}
              y1={layout.axisY}
              y2={layout.axisY + 5}
            />
            <text className={styles.tick} x={percent(tick.at)} dx={tick.dx} y={layout.axisY + 18}>
              {tick.text}
            </text>
          </g>
        ))}
      </svg>
    </div>
  );
}
