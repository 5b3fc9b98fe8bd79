import type { ReactNode } from "react";
import styles from "./photo-figure.module.css";

/** A photograph with its size told, so that nothing moves when it arrives, and a caption below. */
export function PhotoFigure({
  src,
  alt,
  width,
  height,
  caption,
  first = false,
}: {
  src: string;
  alt: string;
  width: number;
  height: number;
  caption?: ReactNode;
  /** The picture in the first screen: fetched at once, the others when they come near. */
  first?: boolean;
}) {
  return (
    <figure className={styles.figure}>
      {/* biome-ignore lint/performance/noImgElement: photos are made to size and stripped when they are stored */}
      <img src={src} alt={alt} width={width} height={height} loading={first ? "eager" : "lazy"} decoding="async" />
      {caption ? <figcaption>{caption}</figcaption> : null}
    </figure>
  );
}

/** Photographs side by side, as pasted into the book. */
export function PhotoRow({ children }: { children: ReactNode }) {
  return <div className={styles.row}>{children}</div>;
}
