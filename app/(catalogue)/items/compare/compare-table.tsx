import type { ReactNode } from "react";
import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { VerdictMark } from "@/app/_components/verdict.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import { plainDate, resultText } from "@/lib/wording/formats.ts";
import { labelOf, labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { partTitle } from "../../_item/part-title.ts";
import styles from "./compare-table.module.css";

type Row = { name: string; of: (snapshot: Snapshot) => ReactNode };

function rowsIn(language: Language): Row[] {
  const { rows } = catalogueIn[language].compare;
  const labels = labelsIn[language];
  const written = (text: string | null) => asWritten(text, language);
  return [
    { name: rows.photo, of: Photo },
    { name: rows.marks, of: ({ item }) => written(item.marks) },
    { name: rows.otherNames, of: ({ item }) => written(item.aliases.join("; ")) },
    { name: rows.code, of: ({ item }) => item.gtin },
    { name: rows.kind, of: ({ item }) => labelOf(labels.category, item.category) },
    { name: rows.age, of: ({ item }) => labelOf(labels.ageGroup, item.ageGroup) },
    { name: rows.object, of: (snapshot) => <Objects snapshot={snapshot} language={language} /> },
    { name: rows.answer, of: (snapshot) => <Answer snapshot={snapshot} language={language} /> },
    {
      name: rows.results,
      of: (snapshot) => (snapshot.kind === "withdrawal" ? null : <Results snapshot={snapshot} language={language} />),
    },
    { name: rows.tested, of: ({ testedOn }) => plainDate(testedOn, language) },
  ];
}

type Given = { snapshot: Snapshot; language: Language };

/** What sets the items apart comes first, then what was found. On a phone each item is read as a list of its own. */
export function CompareTable({ snapshots, language }: { snapshots: Snapshot[]; language: Language }) {
  const comparePage = catalogueIn[language].compare;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reachable by keyboard
    <section className={styles.frame} aria-label={comparePage.title} tabIndex={0}>
      <table className={styles.table}>
        <thead>
          <tr>
            <td />
            {snapshots.map((snapshot) => (
              <th key={snapshot.slug} scope="col">
                <a href={pathsIn[language].item(snapshot.slug)}>{asWritten(snapshot.item.name, language)}</a>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rowsIn(language).map(({ name, of }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {snapshots.map((snapshot) => (
                <td key={snapshot.slug}>{of(snapshot) || <span className="soft">{comparePage.notStated}</span>}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Photo({ photos: [photo] }: Snapshot): ReactNode {
  if (!photo) return null;
  return (
    // biome-ignore lint/performance/noImgElement: photos are made to size and stripped when they are stored
    <img
      className={styles.photo}
      src={paths.photo(photo.key)}
      alt={photo.alt}
      width={photo.width}
      height={photo.height}
      loading="lazy"
      decoding="async"
    />
  );
}

function Objects({ snapshot: { specimens }, language }: Given) {
  return (
    <ul className={styles.plain}>
      {specimens.map((specimen) => (
        <li key={specimen.id}>
          {asWritten(`${specimen.label}${specimen.dateCode ? `, ${specimen.dateCode}` : ""}`, language)}
        </li>
      ))}
    </ul>
  );
}

function Answer({ snapshot, language }: Given) {
  const answer = itemAnswer(snapshot, language);
  const parts = resultsByWeight(snapshot).map(({ part }) => part.name);
  return (
    <p className={styles.answer}>
      {answer.verdict ? <VerdictMark verdict={answer.verdict} /> : null}
      <span>
        <Told text={answer.headline} own={parts} language={language} />
      </span>
    </p>
  );
}

function Results({ snapshot, language }: Given) {
  return (
    <ul className={styles.plain}>
      {resultsByWeight(snapshot)
        .slice(0, 4)
        .map((placed) => (
          <li key={`${placed.part.id} ${placed.result.element}`}>
            {asWritten(partTitle(placed, snapshot.specimens.length > 1), language)} (
            {labelOf(labelsIn[language].material, placed.part.material)}): {placed.result.element}{" "}
            {resultText(placed.result, language)}
          </li>
        ))}
    </ul>
  );
}
