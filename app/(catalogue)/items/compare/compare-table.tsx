import type { ReactNode } from "react";
import { VerdictMark } from "@/app/_components/verdict.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { comparePage } from "@/lib/wording/catalogue.ts";
import { plainDate, resultText } from "@/lib/wording/formats.ts";
import { ageGroupLabels, categoryLabels, labelOf, materialLabels } from "@/lib/wording/labels.ts";
import { partTitle } from "../../_item/part-title.ts";
import styles from "./compare-table.module.css";

const rows: { name: string; of: (snapshot: Snapshot) => ReactNode }[] = [
  { name: comparePage.rows.photo, of: Photo },
  { name: comparePage.rows.marks, of: ({ item }) => item.marks },
  { name: comparePage.rows.otherNames, of: ({ item }) => item.aliases.join("; ") },
  { name: comparePage.rows.code, of: ({ item }) => item.gtin },
  { name: comparePage.rows.kind, of: ({ item }) => labelOf(categoryLabels, item.category) },
  { name: comparePage.rows.age, of: ({ item }) => labelOf(ageGroupLabels, item.ageGroup) },
  { name: comparePage.rows.object, of: Objects },
  { name: comparePage.rows.answer, of: Answer },
  { name: comparePage.rows.results, of: Results },
  { name: comparePage.rows.tested, of: ({ testedOn }) => plainDate(testedOn) },
];

/** What sets the items apart comes first, then what was found. On a phone each item is read as a list of its own. */
export function CompareTable({ snapshots }: { snapshots: Snapshot[] }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways must be reachable by keyboard
    <section className={styles.frame} aria-label={comparePage.title} tabIndex={0}>
      <table className={styles.table}>
        <thead>
          <tr>
            <td />
            {snapshots.map((snapshot) => (
              <th key={snapshot.slug} scope="col">
                <a href={paths.item(snapshot.slug)}>{snapshot.item.name}</a>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, of }) => (
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

function Objects({ specimens }: Snapshot): ReactNode {
  return (
    <ul className={styles.plain}>
      {specimens.map((specimen) => (
        <li key={specimen.id}>
          {specimen.label}
          {specimen.dateCode ? `, ${specimen.dateCode}` : ""}
        </li>
      ))}
    </ul>
  );
}

function Answer(snapshot: Snapshot): ReactNode {
  const answer = itemAnswer(snapshot);
  return (
    <p className={styles.answer}>
      {answer.verdict ? <VerdictMark verdict={answer.verdict} /> : null}
      <span>{answer.headline}</span>
    </p>
  );
}

function Results(snapshot: Snapshot): ReactNode {
  if (snapshot.kind === "withdrawal") return null;
  return (
    <ul className={styles.plain}>
      {resultsByWeight(snapshot)
        .slice(0, 4)
        .map((placed) => (
          <li key={`${placed.part.id} ${placed.result.element}`}>
            {partTitle(placed, snapshot.specimens.length > 1)} ({labelOf(materialLabels, placed.part.material)}):{" "}
            {placed.result.element} {resultText(placed.result)}
          </li>
        ))}
    </ul>
  );
}
