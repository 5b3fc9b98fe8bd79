import { Entry, Ledger } from "@/app/_components/entry.tsx";
import type { MakerAnswerRecord } from "@/lib/store/reviews.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { makerAnswerWords } from "@/lib/wording/revisions.ts";
import styles from "./maker-answers.module.css";

/** What a maker answered: whole, dated, below the article of the measurement and no part of it. */
export function MakerAnswers({ answers }: { answers: MakerAnswerRecord[] }) {
  if (answers.length === 0) return null;
  return (
    <Ledger>
      <Entry title={makerAnswerWords.title} id="maker-answer">
        <p className="soft">{makerAnswerWords.lead}</p>
        {answers.map((answer) => (
          <figure key={answer.id} className={styles.answer}>
            <figcaption>
              {answer.fromWhom}, received on {plainDate(answer.receivedOn)}
            </figcaption>
            <blockquote className={styles.text}>{answer.text}</blockquote>
          </figure>
        ))}
      </Entry>
    </Ledger>
  );
}
