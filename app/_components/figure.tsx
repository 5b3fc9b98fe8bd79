import type { ReactNode } from "react";
import styles from "./figure.module.css";

/**
 * The frame of a drawing that stands still: the title says what the picture shows, `table` is the same in figures, so the drawing
 * itself is hidden from screen readers. `quiet`: a title no louder than the words about it, for one figure of several.
 */
export function Figure({
  title,
  quiet = false,
  note,
  table,
  children,
}: {
  title: ReactNode;
  quiet?: boolean;
  note?: ReactNode;
  table?: ReactNode;
  children: ReactNode;
}) {
  return (
    <figure className={styles.figure}>
      <figcaption className={quiet ? `${styles.title} ${styles.quiet}` : styles.title}>{title}</figcaption>
      {children}
      {note ? <p className={styles.note}>{note}</p> : null}
      {table}
    </figure>
  );
}
