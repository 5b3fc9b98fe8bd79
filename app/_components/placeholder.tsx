import type { CSSProperties } from "react";
import styles from "./placeholder.module.css";

/**
 * Something is still coming: empty ruled lines of the height it will have, so that nothing below moves. `height` in px where
 * it is known, else as many `lines`. Nothing blinks; the words are for everyone.
 */
export function Placeholder({
  label = "Loading …",
  lines = 3,
  height,
}: {
  label?: string;
  lines?: number;
  height?: number;
}) {
  const size: CSSProperties = { blockSize: height === undefined ? `${lines * 2}rem` : `${height}px` };
  return (
    <div className={styles.placeholder} style={size} role="status">
      <span>{label}</span>
    </div>
  );
}
