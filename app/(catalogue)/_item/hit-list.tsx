import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { IntervalStrip } from "@/app/_components/interval-strip.tsx";
import { VerdictMark } from "@/app/_components/verdict.tsx";
import { paths as files } from "@/lib/platform/paths.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import { plainDate, resultText } from "@/lib/wording/formats.ts";
import { labelOf, labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { stripFigure, stripSentence } from "@/lib/wording/result-figures.ts";
import styles from "./hit-list.module.css";

/**
 * Items in a ruled list: what it is, its marks, the verdict in words, the small strip. With `pick` each can be marked, for
 * a form around the list that sends which (as `item`).
 */
export function HitList({ snapshots, headingLevel = 2, pick = false, language }: Props) {
  return (
    <ol className={styles.list}>
      {snapshots.map((snapshot) => (
        <li key={snapshot.slug} className={styles.hit}>
          <Hit snapshot={snapshot} headingLevel={headingLevel} pick={pick} language={language} />
        </li>
      ))}
    </ol>
  );
}

type Props = { snapshots: Snapshot[]; headingLevel?: 2 | 3; pick?: boolean; language: Language };

function Hit({
  snapshot,
  headingLevel,
  pick,
  language,
}: {
  snapshot: Snapshot;
  headingLevel: 2 | 3;
  pick: boolean;
  language: Language;
}) {
  const { search, compare } = catalogueIn[language];
  const Heading = `h${headingLevel}` as const;
  const answer = itemAnswer(snapshot, language);
  const lead = snapshot.kind === "withdrawal" ? undefined : resultsByWeight(snapshot)[0];
  const photo = snapshot.photos[0];
  return (
    <>
      <div className={styles.words}>
        <Heading className={styles.name}>
          <a href={pathsIn[language].item(snapshot.slug)}>{asWritten(snapshot.item.name, language)}</a>
        </Heading>
        <p className="soft small">
          {labelOf(labelsIn[language].category, snapshot.item.category)} ·{" "}
          <span className="number">{search.tested(plainDate(snapshot.testedOn, language))}</span>
        </p>
        {snapshot.item.marks ? (
          <p className="small">
            {search.marks}: {asWritten(snapshot.item.marks, language)}
          </p>
        ) : null}
        <p className={styles.verdict}>
          {answer.verdict ? <VerdictMark verdict={answer.verdict} /> : null}
          <span>
            <Told text={answer.headline} own={lead ? [lead.part.name] : []} language={language} />
          </span>
        </p>
        {lead ? <p className={styles.figure}>{resultText(lead.result, language)}</p> : null}
      </div>
      <div className={styles.pictures}>
        {lead ? (
          <IntervalStrip
            input={stripFigure(lead.result, language)}
            sentence={stripSentence(lead.result, language)}
            size="small"
            language={language}
          />
        ) : null}
        {pick ? (
          <label className={`${styles.pick} no-print`}>
            <input type="checkbox" name="item" value={snapshot.slug} />
            <span>
              {compare.pick}
              <span className="visually-hidden">: {asWritten(snapshot.item.name, language)}</span>
            </span>
          </label>
        ) : null}
      </div>
      {photo ? (
        // biome-ignore lint/performance/noImgElement: photos are made to size and stripped when they are stored
        <img
          className={styles.photo}
          src={files.photo(photo.sizes?.[0]?.key ?? photo.key)}
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
