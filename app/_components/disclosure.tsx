import type { ReactNode } from "react";
import styles from "./disclosure.module.css";

/** A part folded until asked for. Native `details`: opens without scripts, is found by the browser's search, prints open. */
export function Disclosure({
  summary,
  open = false,
  id,
  children,
}: {
  summary: ReactNode;
  open?: boolean;
  id?: string;
  children: ReactNode;
}) {
  return (
    <details className={styles.disclosure} open={open} id={id}>
      <summary>{summary}</summary>
      <div className={`${styles.body} flow`}>{children}</div>
    </details>
  );
}
