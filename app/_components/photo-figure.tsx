import type { ReactNode } from "react";
import type { PhotoMark } from "@/lib/publication/photo-marks.ts";
import styles from "./photo-figure.module.css";

/**
 * A photograph with its size told, so that nothing moves when it arrives, and a caption below. `sources` are the same picture at
 * other widths, of which the browser takes the one that fits; `marks` are drawn over it, and must be told in words in the caption.
 */
export function PhotoFigure({
  src,
  alt,
  width,
  height,
  sources = [],
  sizes = "(min-width: 30rem) 26rem, 92vw",
  marks = [],
  caption,
  first = false,
}: {
  src: string;
  alt: string;
  width: number;
  height: number;
  sources?: readonly { src: string; width: number }[];
  /** How wide it is shown, as the attribute of the same name says it. */
  sizes?: string;
  marks?: readonly PhotoMark[];
  caption?: ReactNode;
  /** The picture in the first screen: fetched at once, the others when they come near. */
  first?: boolean;
}) {
  return (
    <figure className={styles.figure}>
      <div className={styles.frame}>
        <PhotoImage
          src={src}
          alt={alt}
          width={width}
          height={height}
          sources={sources}
          sizes={sizes}
          loading={first ? "eager" : "lazy"}
        />
        {marks.length > 0 ? <PhotoMarks marks={marks} width={width} height={height} /> : null}
      </div>
      {caption ? <figcaption>{caption}</figcaption> : null}
    </figure>
  );
}

/** The picture alone. */
export function PhotoImage({
  sources,
  sizes,
  ...image
}: {
  src: string;
  alt: string;
  width: number;
  height: number;
  sources: readonly { src: string; width: number }[];
  sizes: string;
  loading: "eager" | "lazy";
}) {
  const several = sources.length > 1;
  return (
    // biome-ignore lint/performance/noImgElement: photos are made to size and stripped when they are stored
    <img
      {...image}
      alt={image.alt}
      decoding="async"
      srcSet={several ? sources.map(({ src, width }) => `${src} ${width}w`).join(", ") : undefined}
      sizes={several ? sizes : undefined}
    />
  );
}

/** Radius of a mark whose true size is not known, and height of its number, as shares of the photo's width. */
const plainRadius = 0.014;
const numberHeight = 0.042;

/**
 * Numbered circles over a photo, each at its spot, as wide as the window that shot there. Paper under ink, so that they stand out
 * on any picture.
 */
export function PhotoMarks({ marks, width, height }: { marks: readonly PhotoMark[]; width: number; height: number }) {
  return (
    <svg className={styles.marks} viewBox={`0 0 ${width} ${height}`} aria-hidden="true" focusable="false">
      {marks.map((mark) => {
        const [cx, cy] = [mark.x * width, mark.y * height];
        const r = (mark.share === null ? plainRadius : mark.share / 2) * width;
        // The number stands right of the circle, or left of it where the picture ends.
        const before = mark.x > 0.88;
        return (
          <g key={mark.number} className={mark.share === null ? styles.plain : undefined}>
            <circle className={styles.under} cx={cx} cy={cy} r={r} vectorEffect="non-scaling-stroke" />
            <circle className={styles.over} cx={cx} cy={cy} r={r} vectorEffect="non-scaling-stroke" />
            <text
              x={cx + (before ? -1 : 1) * (r + width * 0.008)}
              y={cy}
              dominantBaseline="central"
              textAnchor={before ? "end" : "start"}
              fontSize={width * numberHeight}
            >
              {mark.number}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

/** Photographs side by side, as pasted into the book. */
export function PhotoRow({ children }: { children: ReactNode }) {
  return <div className={styles.row}>{children}</div>;
}
