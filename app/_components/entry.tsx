import type { ReactNode } from "react";
import styles from "./entry.module.css";

/** A page of the book: entries one under the other, their headings in the margin, a double rule down the side. */
export function Ledger({ children }: { children: ReactNode }) {
  return (
    <div className={styles.ledger} data-ledger>
      {children}
    </div>
  );
}

/** One entry: the heading hangs in the margin on a wide screen and stands above the text on a narrow one. */
export function Entry({
  title,
  id,
  aside,
  headingLevel = 2,
  screenOnly = false,
  children,
}: {
  title: ReactNode;
  id?: string;
  /** A line under the heading: a date, a count. */
  aside?: ReactNode;
  headingLevel?: 2 | 3;
  /** Of no use on paper. */
  screenOnly?: boolean;
  children: ReactNode;
}) {
  const Heading = `h${headingLevel}` as const;
  return (
    <section
      className={screenOnly ? `${styles.entry} no-print` : styles.entry}
      aria-labelledby={id ? `${id}-title` : undefined}
      id={id}
    >
      <div className={styles.margin}>
        <Heading className={styles.title} id={id ? `${id}-title` : undefined}>
          {title}
        </Heading>
        {aside ? <p className={styles.aside}>{aside}</p> : null}
      </div>
      <div className={`${styles.body} flow`}>{children}</div>
    </section>
  );
}

/** The head of a page: what it is, and one sentence on it. `kicker` is the small line above the title. */
export function PageHead({ title, kicker, children }: { title: ReactNode; kicker?: ReactNode; children?: ReactNode }) {
  return (
    <header className={styles.head}>
      {kicker ? <p className={styles.kicker}>{kicker}</p> : null}
      <h1>{title}</h1>
      {children}
    </header>
  );
}
