import type { Language } from "@/lib/wording/language.ts";
import { siteWordsIn } from "@/lib/wording/site-words.ts";
import styles from "./pager.module.css";

/** Onward through a long list. Cursor paging: only a way on and a way back to the start, no invented page numbers. */
export function Pager({
  first,
  next,
  language = "en",
  label = siteWordsIn[language].more,
  nextText = siteWordsIn[language].next,
  firstText = siteWordsIn[language].first,
}: {
  first?: string | null;
  next?: string | null;
  language?: Language;
  label?: string;
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
