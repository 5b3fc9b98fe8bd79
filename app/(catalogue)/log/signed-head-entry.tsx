import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import type { LogHead } from "@/lib/publication/log-head.ts";
import type { Language } from "@/lib/wording/language.ts";
import { checkByHand, checkByProgram, headWordsIn } from "@/lib/wording/log-page.ts";
import styles from "./log.module.css";

/** The log's newest entry as signed, and how anyone checks it without us. */
export function SignedHeadEntry({
  head,
  newest,
  keyChanges,
  baseUrl,
  language,
}: {
  head: LogHead | null;
  /** Number of the log's newest entry. */
  newest: number;
  /** Entries that a new key signed first. */
  keyChanges: readonly number[];
  baseUrl: string;
  language: Language;
}) {
  const headWords = headWordsIn[language];
  return (
    <section aria-labelledby="head-title" className="flow" id="head">
      <h2 id="head-title">{headWords.title}</h2>
      <p>{headWords.lead}</p>
      {head === null ? (
        <p>{headWords.none}</p>
      ) : (
        <>
          {head.seq < newest ? <p>{headWords.behind(head.seq, newest)}</p> : null}
          <Facts
            facts={[
              { name: headWords.entry, value: head.seq },
              { name: headWords.hash, value: <code className={styles.long}>{head.hash}</code> },
              { name: headWords.signedAt, value: <time dateTime={head.signedAt}>{head.signedAt}</time> },
              { name: headWords.key, value: <code className={styles.long}>{head.publicKey}</code> },
              { name: headWords.signature, value: <code className={styles.long}>{head.signature}</code> },
            ]}
          />
          {keyChanges.length > 0 ? <p>{headWords.keyChanged(keyChanges)}</p> : null}
          <Disclosure summary={headWords.byHand}>
            <p>{headWords.byHandLead}</p>
            <pre className={styles.commands}>
              <code>{checkByHand(head)}</code>
            </pre>
            <p>{headWords.chain}</p>
            <p>{headWords.command}</p>
            <pre className={styles.commands}>
              <code>{checkByProgram(baseUrl, head)}</code>
            </pre>
          </Disclosure>
        </>
      )}
    </section>
  );
}
