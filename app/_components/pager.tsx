import styles from "./pager.module.css";

/** Onward through a long list. Cursor paging: only a way on and a way back to the start, no invented page numbers. */
export function Pager({
  label = "More of this list",
  first,
  next,
  nextText = "Next page",
  firstText = "Back to the first page",
}: {
  label?: string;
  first?: string | null;
  next?: string | null;
  nextText?: string;
  firstText?: string;
}) {
  if (!first && !next) return null;
  return (
    <nav aria-label={label} className={styles.pager}>
      {first ? <a href={first}>{firstText}</a> : null}
      {next ? (
        <a href={next} rel="next" className={styles.next}>
          {nextText}
        </a>
      ) : null}
    </nav>
  );
}
