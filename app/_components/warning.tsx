import type { ReactNode } from "react";
import type { Language } from "@/lib/wording/language.ts";
import { siteWordsIn } from "@/lib/wording/site-words.ts";
import styles from "./notice.module.css";

/** Something to take care over. The exclamation mark is drawn; the word "Warning" is there for whoever cannot see it. */
export function Warning({ language = "en", children }: { language?: Language; children: ReactNode }) {
  return (
    <div className={styles.warning}>
      <span className={styles.sign} aria-hidden="true">
        !
      </span>
      <div className={styles.body}>
        <span className="visually-hidden">{siteWordsIn[language].warning}: </span>
        {children}
      </div>
    </div>
  );
}

/** A plain remark set off by rules: a newer revision, something saved. With `live` it is read out when it appears. */
export function Notice({ title, live = false, children }: { title?: ReactNode; live?: boolean; children: ReactNode }) {
  return (
    <div className={styles.notice} role={live ? "status" : undefined}>
      {title ? <p className={styles.title}>{title}</p> : null}
      {children}
    </div>
  );
}
