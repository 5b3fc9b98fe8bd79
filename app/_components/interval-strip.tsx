import type { Language } from "@/lib/wording/language.ts";
import figure from "./figure.module.css";
import styles from "./interval-strip.module.css";
import { type Mark, type StripInput, type StripLayout, type StripSize, stripLayout } from "./interval-strip-layout.ts";
import { percent } from "./percent.ts";

/**
 * A result beside its limits on a log axis. Drawn on the server as SVG whose places are per cent and whose signs and
 * letters keep their size, so it is as readable at 280 px as at 1,200. `sentence` says the same to a screen reader.
 * Ink alone tells everything: a filled bar is an interval, an open one reaches up to a bound, a lozenge is the worst spot.
 */
export function IntervalStrip({
  input,
  sentence,
  size = "full",
  axisNote,
  language = "en",
}: {
  input: StripInput;
  sentence: string;
  size?: "full" | "small";
  axisNote?: string;
  language?: Language;
}) {
  const sizes: StripSize[] = size === "small" ? ["small"] : ["narrow", "wide", "widest"];
  return (
    <figure className={`${styles.strip} ${size === "small" ? styles.isSmall : ""}`}>
      {sizes.map((each) => (
        <Drawing key={each} layout={stripLayout(input, each, language)} size={each} />
      ))}
      {axisNote && size === "full" ? (
        <p className={styles.note} aria-hidden="true">
          {axisNote}
        </p>
      ) : null}
      <figcaption className="visually-hidden">{sentence}</figcaption>
    </figure>
  );
}

const share = { start: 0, middle: 0.5, end: 1 } as const;

function Drawing({ layout, size }: { layout: StripLayout; size: StripSize }) {
  const { y } = layout;
  return (
    <svg
      className={`${size === "small" ? "" : styles[size]} ${figure.words}`}
      width="100%"
      height={layout.height}
      aria-hidden="true"
      focusable="false"
    >
      <Axis layout={layout} />
      {layout.limits.map((limit) => (
        <g key={limit.id} className={styles.limit}>
          <line x1={percent(limit.at)} x2={percent(limit.at)} y1={limit.top} y2={y.words ? y.bar + 14 : y.axis} />
          {y.words ? <line x1={percent(limit.at)} x2={percent(limit.at)} y1={y.axis - 7} y2={y.axis} /> : null}
          <Beyond mark={limit} y={y.axis - 7} />
        </g>
      ))}
      <Range layout={layout} />
      <Bar layout={layout} />
      {layout.value ? (
        <g className={styles.value}>
          <line x1={percent(layout.value.at)} x2={percent(layout.value.at)} y1={y.bar - 11} y2={y.bar + 11} />
          <Beyond mark={layout.value} y={y.bar} />
        </g>
      ) : null}
      <Worst layout={layout} />
      {layout.labels.map((label) => (
        <text
          key={`${label.kind}-${label.id}`}
          className={styles[`${label.kind}Text`]}
          x={percent(label.at)}
          dx={Number((label.dx + label.width * share[label.anchor]).toFixed(1))}
          textAnchor={label.anchor}
          y={label.y}
          fontSize={label.kind === "tick" ? layout.fontSize - 1 : layout.fontSize}
        >
          {label.value === undefined ? (
            label.text
          ) : (
            <>
              <tspan className={styles.strong}>{label.value}</tspan>
              {label.text.slice(label.value.length)}
            </>
          )}
        </text>
      ))}
    </svg>
  );
}

function Axis({ layout }: { layout: StripLayout }) {
  return (
    <g className={styles.axis}>
      <line x1="0" x2="100%" y1={layout.y.axis} y2={layout.y.axis} />
      {layout.ticks.map((tick) => (
        <line
          key={tick.at}
          x1={percent(tick.at)}
          x2={percent(tick.at)}
          y1={layout.y.axis}
          y2={layout.y.axis + (tick.label === null ? 3 : 6)}
        />
      ))}
    </g>
  );
}

/** Lowest to highest spot: a thin line with feet, behind the bar. */
function Range({ layout }: { layout: StripLayout }) {
  const { range, y } = layout;
  if (range === null) return null;
  return (
    <g className={styles.range}>
      <line x1={percent(range.from)} x2={percent(range.to)} y1={y.bar} y2={y.bar} />
      <line x1={percent(range.from)} x2={percent(range.from)} y1={y.bar - 5} y2={y.bar + 5} />
      <line x1={percent(range.to)} x2={percent(range.to)} y1={y.bar - 5} y2={y.bar + 5} />
    </g>
  );
}

function Bar({ layout }: { layout: StripLayout }) {
  const { bar, y } = layout;
  if (bar === null) return null;
  const half = 5.5;
  if (bar.open)
    return (
      <g className={styles.open}>
        <line x1={percent(bar.from)} x2={percent(bar.to)} y1={y.bar - half} y2={y.bar - half} />
        <line x1={percent(bar.from)} x2={percent(bar.to)} y1={y.bar + half} y2={y.bar + half} />
        <line className={styles.end} x1={percent(bar.to)} x2={percent(bar.to)} y1={y.bar - 9} y2={y.bar + 9} />
      </g>
    );
  return (
    <g className={styles.bar}>
      <rect
        x={percent(bar.from)}
        width={percent(Math.max(bar.to - bar.from, 0.004))}
        y={y.bar - half}
        height={half * 2}
      />
      {bar.offLeft ? <Beyond mark={{ at: bar.from, off: "left" }} y={y.bar} /> : null}
      {bar.offRight ? <Beyond mark={{ at: bar.to, off: "right" }} y={y.bar} /> : null}
    </g>
  );
}

function Worst({ layout }: { layout: StripLayout }) {
  const { worst, value } = layout;
  if (worst === null) return null;
  // Both beyond the same end: one arrow is enough, the words say the rest.
  if (worst.off !== null) return worst.off === value?.off ? null : <Beyond mark={worst} y={layout.y.bar} />;
  return (
    <svg
      className={styles.worst}
      x={percent(worst.at)}
      y={layout.y.bar}
      overflow="visible"
      width="1"
      height="1"
      aria-hidden="true"
    >
      <path d="M0 -7 L6 0 L0 7 L-6 0 Z" />
    </svg>
  );
}

/** An arrowhead at the edge: the thing lies further that way. */
function Beyond({ mark, y }: { mark: Mark; y: number }) {
  if (mark.off === null) return null;
  return (
    <svg
      className={styles.beyond}
      x={percent(mark.at)}
      y={y}
      overflow="visible"
      width="1"
      height="1"
      aria-hidden="true"
    >
      <path d={mark.off === "left" ? "M-1 -6 L-6 0 L-1 6 Z" : "M1 -6 L6 0 L1 6 Z"} />
    </svg>
  );
}
