import { asWritten } from "@/app/_components/as-written.tsx";
import { Entry, Ledger } from "@/app/_components/entry.tsx";
import type { MakerAnswerRecord } from "@/lib/store/reviews.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import type { Language } from "@/lib/wording/language.ts";
import { revisionsIn } from "@/lib/wording/revisions.ts";
import styles from "./maker-answers.module.css";

/** What a maker answered: whole, dated, below the article of the measurement and no part of it. */
export function MakerAnswers({ answers, language }: { answers: MakerAnswerRecord[]; language: Language }) {
  const words = revisionsIn[language].maker;
  if (answers.length === 0) return null;
  return (
    <Ledger>
      <Entry title={words.title} id="maker-answer">
        <p className="soft">{words.lead}</p>
        {answers.map((answer) => (
          <figure key={answer.id} className={styles.answer}>
            <figcaption>{words.receivedOn(answer.fromWhom, plainDate(answer.receivedOn, language))}</figcaption>
            <blockquote className={styles.text}>{asWritten(answer.text, language)}</blockquote>
          </figure>
        ))}
      </Entry>
    </Ledger>
  );
}
