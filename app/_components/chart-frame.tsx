"use client";

import { type KeyboardEvent, type ReactNode, useState } from "react";
import styles from "./chart-frame.module.css";
import figure from "./figure.module.css";
import { useScripted } from "./use-scripted.ts";

/**
 * A drawing that answers to the pointer and the keyboard, over one that stands still: the still one is sent by the server, is
 * what is printed, and is what whoever has no scripts sees. Both take the same room, so that nothing moves. The table
 * behind says the same in figures.
 */
export function ChartFrame({
  title,
  note,
  table,
  still,
  live,
  words,
  height,
}: {
  title: ReactNode;
  note?: ReactNode;
  table?: ReactNode;
  still: ReactNode;
  /** The answering drawing; `at` is the point that the arrow keys have come to. */
  live: (at: number | null) => ReactNode;
  /** Every point in words, in the order in which the arrow keys go through them. */
  words: readonly string[];
  /** In px, of both drawings. */
  height: number;
}) {
  const scripted = useScripted();
  const [at, setAt] = useState<number | null>(null);
  const onKeyDown = (event: KeyboardEvent) => {
    const to = walk(at, event.key, words.length);
    if (to === undefined) return;
    event.preventDefault();
    setAt(to);
  };
  return (
    <figure className={styles.frame}>
      <figcaption className={styles.title}>{title}</figcaption>
      <div className={scripted ? styles.onPaper : undefined}>{still}</div>
      {scripted ? (
        // biome-ignore lint/a11y/useSemanticElements: a drawing is no fieldset
        <div
          role="group"
          aria-label="Drawing: the arrow keys go from point to point"
          // biome-ignore lint/a11y/noNoninteractiveTabindex: it answers to the arrow keys
          tabIndex={0}
          className={`${styles.live} ${figure.words}`}
          style={{ blockSize: `${height}px` }}
          onKeyDown={onKeyDown}
          onBlur={() => setAt(null)}
        >
          {live(at)}
        </div>
      ) : null}
      <p role="status" className={styles.told}>
        {at === null ? "" : words[at]}
      </p>
      {note ? <p className={styles.note}>{note}</p> : null}
      {table}
    </figure>
  );
}

/** Where a key leads from a point: the next or the one before, the ends, away; undefined for any other key. */
function walk(at: number | null, key: string, count: number): number | null | undefined {
  if (count === 0) return undefined;
  switch (key) {
    case "ArrowRight":
    case "ArrowDown":
      return at === null ? 0 : Math.min(at + 1, count - 1);
    case "ArrowLeft":
    case "ArrowUp":
      return at === null ? count - 1 : Math.max(at - 1, 0);
    case "Home":
      return 0;
    case "End":
      return count - 1;
    case "Escape":
      return at === null ? undefined : null;
    default:
      return undefined;
  }
}

/** What is said about the point under the pointer; the words come ready. */
export function ChartWords({ text }: { text: string | null }) {
  return text === null ? null : <div className={styles.words}>{text}</div>;
}
