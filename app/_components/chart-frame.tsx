"use client";

import type { ReactNode } from "react";
import styles from "./chart-frame.module.css";
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
  height,
}: {
  title: ReactNode;
  note?: ReactNode;
  table?: ReactNode;
  still: ReactNode;
  live: () => ReactNode;
  /** In px, of both drawings. */
  height: number;
}) {
  const scripted = useScripted();
  return (
    <figure className={styles.frame}>
      <figcaption className={styles.title}>{title}</figcaption>
      <div className={scripted ? styles.onPaper : undefined}>{still}</div>
      {scripted ? (
        <div className={styles.live} style={{ blockSize: `${height}px` }}>
          {live()}
        </div>
      ) : null}
      {note ? <p className={styles.note}>{note}</p> : null}
      {table}
    </figure>
  );
}

/** What is said about the point in view; the words come ready. */
export function ChartWords({ text }: { text: string | null }) {
  return text === null ? null : <div className={styles.words}>{text}</div>;
}
