import type { Metadata } from "next";
import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { qrPath } from "@/app/_share/qr-path.ts";
import { type ShareProps, shareRevision } from "@/app/_share/share-revision.ts";
import { alternates } from "@/app/_site/alternates.ts";
import { absoluteUrl } from "@/lib/exports/published-revision.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import type { LogEntry, Snapshot } from "@/lib/publication/snapshot.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { reviewText } from "@/lib/wording/catalogue.ts";
import { listed, plainDate, timeInZone } from "@/lib/wording/formats.ts";
import { labelOf, labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { methodName } from "@/lib/wording/models.ts";
import { reportRows, shareIn, shortCautions } from "@/lib/wording/share.ts";
import styles from "./report.module.css";

export async function generateMetadata(props: ShareProps): Promise<Metadata> {
  const { language = "en" } = props;
  const { snapshot } = (await shareRevision(props)).item;
  return {
    title: shareIn[language].reportTitle(snapshot.item.name),
    robots: { index: false },
    alternates: alternates(paths.report(snapshot.slug, snapshot.revision), language),
  };
}

/** One revision on one A4 page: the answer, the results, who and how, what it does not tell, and where the whole of it stands. */
export default async function ReportPage(props: ShareProps) {
  const { language = "en" } = props;
  const words = shareIn[language];
  const { item, newest } = await shareRevision(props);
  const { snapshot, entry } = item;
  const answer = itemAnswer(snapshot, language);
  const parts = snapshot.specimens.flatMap((specimen) => specimen.parts.map((part) => part.name));
  const told = (text: string) => <Told text={text} own={[...parts, snapshot.reason]} language={language} />;
  const { rows, more } = reportRows(resultsByWeight(snapshot), language);
  return (
    <article className={styles.sheet}>
      <header className={styles.head}>
        <p className="small">
          {asWritten(snapshot.registry.name, language)} · {labelOf(labelsIn[language].category, snapshot.item.category)}{" "}
          · {words.reportOf(snapshot.revision, timeInZone(snapshot.publishedAt, "UTC", language))}
        </p>
        <h1>{asWritten(snapshot.item.name, language)}</h1>
        {snapshot.revision < newest ? <p className={styles.stop}>{words.superseded(newest)}</p> : null}
        <p className={styles.headline}>{told(answer.headline)}</p>
        <p className={styles.answer}>{told(answer.sentences.join(" "))}</p>
      </header>
      <div className={styles.middle}>
        {rows.length > 0 ? (
          <table className={styles.results}>
            <thead>
              <tr>
                <th scope="col">{words.columns.what}</th>
                <th scope="col">{words.columns.result}</th>
                <th scope="col">{words.columns.verdict}</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ key, what, result, verdict }) => (
                <tr key={key}>
                  <th scope="row">{told(what)}</th>
                  <td>{result}</td>
                  <td>{verdict}</td>
                </tr>
              ))}
            </tbody>
          </table>
        ) : null}
        {more > 0 ? <p className="small">{words.more(more)}</p> : null}
        <Made snapshot={snapshot} language={language} />
      </div>
      <footer className={styles.foot}>
        <ul className={styles.cautions}>
          {shortCautions(snapshot, language).map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
        <Whereabouts snapshot={snapshot} entry={entry} language={language} />
      </footer>
    </article>
  );
}

function Made({ snapshot, language }: { snapshot: Snapshot; language: Language }) {
  const words = shareIn[language];
  const [lead] = resultsByWeight(snapshot);
  if (!lead) return null;
  const instruments = snapshot.instruments.map((instrument) => `${instrument.name} (${instrument.kind})`);
  return (
    <p className={styles.made}>
      <strong>{words.method}.</strong> {words.made(methodName(lead.result, language))}{" "}
      <Told
        text={words.by(
          plainDate(snapshot.testedOn, language),
          listed(
            snapshot.testers.map((tester) => tester.name),
            language,
          ),
          listed(instruments, language),
        )}
        own={instruments}
        language={language}
      />{" "}
      {words.review(reviewText(snapshot.review, language))}
    </p>
  );
}

/** The code and the address of this very revision, and what proves that nobody changed it. */
function Whereabouts({ snapshot, entry, language }: { snapshot: Snapshot; entry: LogEntry; language: Language }) {
  const words = shareIn[language];
  const page = pathsIn[language].revision(snapshot.slug, snapshot.revision);
  const address = absoluteUrl(environment().baseUrl, page);
  const { size, path } = qrPath(address);
  return (
    <div className={styles.where}>
      <svg viewBox={`0 0 ${size} ${size}`} className={styles.code} role="img" aria-label={words.codeOf(address)}>
        <rect width={size} height={size} fill="#ffffff" />
        <path d={path} fill="#000000" shapeRendering="crispEdges" />
      </svg>
      <div>
        <p>
          <a href={page} className={styles.address}>
            {address}
          </a>
        </p>
        <p>{words.sealed(entry.seq)}</p>
        <p>
          <code>{entry.snapshotSha256}</code>
        </p>
        <p>
          {words.terms(snapshot.registry.licence, snapshot.registry.contact)}{" "}
          {snapshot.registry.invented ? <strong>{words.invented}</strong> : null}
        </p>
      </div>
    </div>
  );
}
