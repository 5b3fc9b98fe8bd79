import type { CSSProperties } from "react";
import styles from "./placeholder.module.css";

/**
 * Something is still coming: as many empty ruled lines as it will about take, so that nothing below moves. Nothing blinks. It goes
 * inside the `role="status"` of what is coming, which then reads the words out.
 */
export function Placeholder({ label, lines }: { label: string; lines: number }) {
  const size: CSSProperties = { blockSize: `${lines * 2}rem` };
  return (
    <div className={styles.placeholder} style={size}>
      <span>{label}</span>
    </div>
  );
}
