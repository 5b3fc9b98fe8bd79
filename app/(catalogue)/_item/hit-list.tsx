import { IntervalStrip } from "@/app/_components/interval-strip.tsx";
import { VerdictMark } from "@/app/_components/verdict.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { comparePage } from "@/lib/wording/catalogue.ts";
import { plainDate, resultText } from "@/lib/wording/formats.ts";
import { categoryLabels, labelOf } from "@/lib/wording/labels.ts";
import { stripFigure, stripSentence } from "@/lib/wording/result-figures.ts";
import styles from "./hit-list.module.css";

/**
 * Items in a ruled list: what it is, its marks, the verdict in words, the small strip. With `pick` each can be marked, for
 * a form around the list that sends which (as `item`).
 */
export function HitList({ snapshots, headingLevel = 2, pick = false }: Props) {
  return (
    <ol className={styles.list}>
      {snapshots.map((snapshot) => (
        <li key={snapshot.slug} className={styles.hit}>
          <Hit snapshot={snapshot} headingLevel={headingLevel} pick={pick} />
        </li>
      ))}
    </ol>
  );
}

type Props = { snapshots: Snapshot[]; headingLevel?: 2 | 3; pick?: boolean };

function Hit({ snapshot, headingLevel, pick }: { snapshot: Snapshot; headingLevel: 2 | 3; pick: boolean }) {
  const Heading = `h${headingLevel}` as const;
  const answer = itemAnswer(snapshot);
  const lead = snapshot.kind === "withdrawal" ? undefined : resultsByWeight(snapshot)[0];
  const photo = snapshot.photos[0];
  return (
    <>
      <div className={styles.words}>
        <Heading className={styles.name}>
          <a href={paths.item(snapshot.slug)}>{snapshot.item.name}</a>
        </Heading>
        <p className="soft small">
          {labelOf(categoryLabels, snapshot.item.category)} ·{" "}
          <span className="number">tested {plainDate(snapshot.testedOn)}</span>
        </p>
        {snapshot.item.marks ? <p className="small">Marks: {snapshot.item.marks}</p> : null}
        <p className={styles.verdict}>
          {answer.verdict ? <VerdictMark verdict={answer.verdict} /> : null}
          <span>{answer.headline}</span>
        </p>
        {lead ? <p className={styles.figure}>{resultText(lead.result)}</p> : null}
      </div>
      <div className={styles.pictures}>
        {lead ? (
          <IntervalStrip input={stripFigure(lead.result)} sentence={stripSentence(lead.result)} size="small" />
        ) : null}
        {pick ? (
          <label className={`${styles.pick} no-print`}>
            <input type="checkbox" name="item" value={snapshot.slug} />
            <span>
              {comparePage.pick}
              <span className="visually-hidden">: {snapshot.item.name}</span>
            </span>
          </label>
        ) : null}
      </div>
      {photo ? (
        // biome-ignore lint/performance/noImgElement: photos are made to size and stripped when they are stored
        <img
          className={styles.photo}
          src={paths.photo(photo.sizes?.[0]?.key ?? photo.key)}
          alt=""
          width={photo.width}
          height={photo.height}
          loading="lazy"
          decoding="async"
        />
      ) : null}
    </>
  );
}
