import type { Verdict as VerdictCode } from "@/lib/limits/types.ts";
import styles from "./verdict.module.css";

/**
 * A verdict's words with a mark that is the interval strip in little: a bar beyond, short of, or across a line; an open
 * bar where nothing was found. The words always stand beside it; the mark alone says nothing to a screen reader.
 */
export function Verdict({ verdict, words }: { verdict: VerdictCode; words: string }) {
  return (
    <span className={styles.verdict}>
      <VerdictMark verdict={verdict} />
      <span>{words}</span>
    </span>
  );
}

const bars: Record<VerdictCode, { x: number; width: number; open: boolean } | null> = {
  above: { x: 17, width: 11, open: false },
  below: { x: 2, width: 11, open: false },
  "too-close": { x: 8, width: 14, open: false },
  "not-detected": { x: 2, width: 8, open: true },
  "cannot-say": null,
};

export function VerdictMark({ verdict }: { verdict: VerdictCode }) {
  const bar = bars[verdict];
  return (
    <svg className={styles.mark} width="30" height="16" viewBox="0 0 30 16" aria-hidden="true" focusable="false">
      <line x1="15" x2="15" y1="1" y2="15" className={styles.limit} />
      {bar === null ? null : (
        <rect
          x={bar.x}
          y={bar.open ? 5 : 4.5}
          width={bar.width}
          height={bar.open ? 6 : 7}
          className={bar.open ? styles.open : styles.bar}
        />
      )}
    </svg>
  );
}
