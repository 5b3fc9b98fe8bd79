import type { Metadata } from "next";
import { qrPath } from "@/app/_share/qr-path.ts";
import { type ShareProps, shareRevision } from "@/app/_share/share-revision.ts";
import { absoluteUrl } from "@/lib/exports/published-revision.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import type { LogEntry, Snapshot } from "@/lib/publication/snapshot.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { reviewText } from "@/lib/wording/catalogue.ts";
import { listed, plainDate, timeInZone } from "@/lib/wording/formats.ts";
import { categoryLabels, labelOf } from "@/lib/wording/labels.ts";
import { methodName } from "@/lib/wording/models.ts";
import { reportRows, shareWords, shortCautions } from "@/lib/wording/share.ts";
import styles from "./report.module.css";

export async function generateMetadata(props: ShareProps): Promise<Metadata> {
  const { item } = await shareRevision(props);
  return { title: shareWords.reportTitle(item.snapshot.item.name), robots: { index: false } };
}

/** One revision on one A4 page: the answer, the results, who and how, what it does not tell, and where the whole of it stands. */
export default async function ReportPage(props: ShareProps) {
  const { item, newest } = await shareRevision(props);
  const { snapshot, entry } = item;
  const answer = itemAnswer(snapshot);
  const { rows, more } = reportRows(resultsByWeight(snapshot));
  return (
    <article className={styles.sheet}>
      <header className={styles.head}>
        <p className="small">
          {snapshot.registry.name} · {labelOf(categoryLabels, snapshot.item.category)} ·{" "}
          {shareWords.reportOf(snapshot.revision, timeInZone(snapshot.publishedAt, "UTC"))}
        </p>
        <h1>{snapshot.item.name}</h1>
        {snapshot.revision < newest ? <p className={styles.stop}>{shareWords.superseded(newest)}</p> : null}
        <p className={styles.headline}>{answer.headline}</p>
        <p className={styles.answer}>{answer.sentences.join(" ")}</p>
      </header>
      <div className={styles.middle}>
        {rows.length > 0 ? (
          <table className={styles.results}>
            <thead>
              <tr>
                <th scope="col">{shareWords.columns.what}</th>
                <th scope="col">{shareWords.columns.result}</th>
                <th scope="col">{shareWords.columns.verdict}</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ key, what, result, verdict }) => (
                <tr key={key}>
                  <th scope="row">{what}</th>
                  <td>{result}</td>
                  <td>{verdict}</td>
                </tr>
              ))}
            </tbody>
          </table>
        ) : null}
        {more > 0 ? <p className="small">{shareWords.more(more)}</p> : null}
        <Made snapshot={snapshot} />
      </div>
      <footer className={styles.foot}>
        <ul className={styles.cautions}>
          {shortCautions(snapshot).map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
        <Whereabouts snapshot={snapshot} entry={entry} />
      </footer>
    </article>
  );
}

function Made({ snapshot }: { snapshot: Snapshot }) {
  const [lead] = resultsByWeight(snapshot);
  if (!lead) return null;
  return (
    <p className={styles.made}>
      <strong>{shareWords.method}.</strong> {shareWords.made(methodName(lead.result))}{" "}
      {shareWords.by(
        plainDate(snapshot.testedOn),
        listed(snapshot.testers.map((tester) => tester.name)),
        listed(snapshot.instruments.map((instrument) => `${instrument.name} (${instrument.kind})`)),
      )}{" "}
      {shareWords.review(reviewText(snapshot.review))}
    </p>
  );
}

/** The code and the address of this very revision, and what proves that nobody changed it. */
function Whereabouts({ snapshot, entry }: { snapshot: Snapshot; entry: LogEntry }) {
  const address = absoluteUrl(environment().baseUrl, paths.revision(snapshot.slug, snapshot.revision));
  const { size, path } = qrPath(address);
  return (
    <div className={styles.where}>
      <svg viewBox={`0 0 ${size} ${size}`} className={styles.code} role="img" aria-label={shareWords.codeOf(address)}>
        <rect width={size} height={size} fill="#ffffff" />
        <path d={path} fill="#000000" shapeRendering="crispEdges" />
      </svg>
      <div>
        <p>
          <a href={paths.revision(snapshot.slug, snapshot.revision)} className={styles.address}>
            {address}
          </a>
        </p>
        <p>{shareWords.sealed(entry.seq)}</p>
        <p>
          <code>{entry.snapshotSha256}</code>
        </p>
        <p>
          {shareWords.terms(snapshot.registry.licence, snapshot.registry.contact)}{" "}
          {snapshot.registry.invented ? <strong>{shareWords.invented}</strong> : null}
        </p>
      </div>
    </div>
  );
}
