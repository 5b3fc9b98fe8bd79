import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { PhotoRow } from "@/app/_components/photo-figure.tsx";
import { VerdictMark } from "@/app/_components/verdict.tsx";
import { Notice } from "@/app/_components/warning.tsx";
import { ItemPhoto, partNamesOf } from "@/app/_photos/item-photo.tsx";
import { itemJsonLd } from "@/lib/exports/json-ld.ts";
import { absoluteUrl } from "@/lib/exports/published-revision.ts";
import { paths as all } from "@/lib/platform/paths.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import type { FieldChange } from "@/lib/publication/revision-difference.ts";
import type { LogEntry, Snapshot } from "@/lib/publication/snapshot.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { catalogueIn, whatToDo } from "@/lib/wording/catalogue.ts";
import { cautionsFor } from "@/lib/wording/cautions.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import { labelOf, labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { otherTestsIn } from "@/lib/wording/other-tests.ts";
import { recomputeIn } from "@/lib/wording/recompute.ts";
import { figuresIn } from "@/lib/wording/result-figures.ts";
import { AmountPanel } from "./amount-panel.tsx";
import { ChangedLimits } from "./changed-limits.tsx";
import { DataLinks } from "./data-links.tsx";
import { Evidence } from "./evidence.tsx";
import { History } from "./history.tsx";
import { InstrumentFitness } from "./instrument-fitness.tsx";
import styles from "./item-view.module.css";
import { JsonLd } from "./json-ld.tsx";
import { LeadFlags } from "./lead-flags.tsx";
import { hasOtherTests, OtherTests } from "./other-tests.tsx";
import { Provenance, Tested } from "./provenance.tsx";
import { ResultBlock } from "./result-block.tsx";
import { ResultList } from "./result-list.tsx";
import { ShareLinks } from "./share-links.tsx";

/**
 * A published revision, whole: the answer, how sure, what to do, then the evidence, folded but complete. It shows the
 * snapshot and nothing else; `revisions` and `changes` come from the log and the revision before. A kept page is sent without
 * the framework's scripts (page-cache.mjs), so nothing in it may need them.
 */
export function ItemView({
  snapshot,
  entry,
  baseUrl,
  revisions,
  changes,
  today,
  language = "en",
}: {
  snapshot: Snapshot;
  entry: LogEntry;
  baseUrl: string;
  revisions: LogEntry[];
  changes: FieldChange[] | null;
  /** The reader's day, for what changed since the test. */
  today: string;
  language?: Language;
}) {
  const { entries: titles, kicker, results } = itemPageIn[language];
  const [paths, recompute] = [pathsIn[language], recomputeIn[language]];
  const answer = itemAnswer(snapshot, language);
  const placed = resultsByWeight(snapshot);
  const [lead] = placed;
  const several = snapshot.specimens.length > 1;
  const photo = snapshot.photos[0];
  const parts = partNamesOf(snapshot.specimens);
  return (
    <article>
      <JsonLd data={itemJsonLd({ snapshot, entry }, baseUrl, language)} />
      <PageHead
        title={asWritten(snapshot.item.name, language)}
        kicker={kicker(
          labelOf(labelsIn[language].category, snapshot.item.category),
          plainDate(snapshot.testedOn, language),
          snapshot.revision,
        )}
      />
      <p className="print-only small">
        {absoluteUrl(baseUrl, all.revision(snapshot.slug, snapshot.revision))}, SHA-256{" "}
        <code>{entry.snapshotSha256}</code>
      </p>
      <Ledger>
        <Entry title={titles.answer} id="answer">
          <div className={photo ? styles.answer : undefined}>
            <div className="flow">
              <p className={`answer ${styles.headline}`}>
                {answer.verdict ? <VerdictMark verdict={answer.verdict} /> : null}
                <strong>
                  <Told text={answer.headline} own={lead ? [lead.part.name] : []} language={language} />
                </strong>
              </p>
              {answer.sentences.map((sentence, index) => (
                <p key={sentence} className={index === 0 ? "answer" : undefined}>
                  <Told text={sentence} own={[snapshot.reason]} language={language} />
                </p>
              ))}
            </div>
            {photo ? <ItemPhoto photo={photo} parts={parts} first language={language} /> : null}
          </div>
          {snapshot.registry.invented ? <p className="soft small">{catalogueIn[language].invented}</p> : null}
        </Entry>
        {lead ? (
          <Entry title={titles.howSure} id="how-sure">
            <ResultBlock placed={lead} language={language} />
            <p className="soft small">{figuresIn[language].key}</p>
            <LeadFlags placed={lead} snapshot={snapshot} language={language} />
          </Entry>
        ) : null}
        <Entry title={titles.toDo} id="what-to-do">
          <ul>
            {whatToDo(answer.verdict, snapshot.kind, language).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Entry>
        {placed.length > 1 ? (
          <Entry title={titles.everyResult} id="parts" aside={results(placed.length)}>
            <ResultList placed={placed} several={several} language={language} />
          </Entry>
        ) : null}
        {snapshot.kind === "withdrawal" ? null : (
          <>
            <AmountPanel placed={placed} several={several} language={language} />
            {placed.length > 0 ? (
              <ChangedLimits snapshot={snapshot} placed={placed} today={today} language={language} />
            ) : null}
          </>
        )}
        <Entry title={titles.cautions} id="cautions">
          <dl className={styles.cautions}>
            {cautionsFor(snapshot, language).map((caution) => (
              <div key={caution.code}>
                <dt>{caution.title}</dt>
                <dd>{caution.text}</dd>
              </div>
            ))}
          </dl>
        </Entry>
        <Entry title={titles.tested} id="tested">
          <Tested snapshot={snapshot} language={language} />
          {snapshot.photos.length > 1 ? (
            <PhotoRow>
              {snapshot.photos.slice(1).map((each) => (
                <ItemPhoto
                  key={each.key}
                  photo={each}
                  parts={parts}
                  sizes="(min-width: 30rem) 20rem, 92vw"
                  language={language}
                />
              ))}
            </PhotoRow>
          ) : null}
        </Entry>
        {hasOtherTests(snapshot.specimens) ? (
          <Entry title={otherTestsIn[language].words.title} id="other-tests">
            <OtherTests specimens={snapshot.specimens} language={language} />
          </Entry>
        ) : null}
        {placed.length > 0 ? (
          <Entry title={titles.evidence} id="evidence" aside={titles.evidenceAside}>
            <Evidence placed={placed} files={snapshot.files} several={several} language={language} />
          </Entry>
        ) : null}
        {snapshot.sessions && snapshot.sessions.length > 0 ? (
          <Entry title={titles.fitness} id="fitness" aside={titles.fitnessAside}>
            <InstrumentFitness sessions={snapshot.sessions} language={language} />
          </Entry>
        ) : null}
        <Entry title={titles.provenance} id="provenance">
          <Provenance snapshot={snapshot} language={language} />
        </Entry>
        <Entry title={titles.history} id="history">
          <History snapshot={snapshot} revisions={revisions} changes={changes} language={language} />
        </Entry>
        <Entry title={titles.data} id="data">
          <DataLinks snapshot={snapshot} entry={entry} baseUrl={baseUrl} language={language} />
          <ShareLinks snapshot={snapshot} baseUrl={baseUrl} language={language} />
          <div className="flow no-print">
            <h3>{recompute.title}</h3>
            <p>
              {recompute.lead} <a href={paths.recompute(snapshot.slug, snapshot.revision)}>{recompute.button}</a>
            </p>
          </div>
        </Entry>
      </Ledger>
    </article>
  );
}

/** The banner over a revision that is not the newest, or over a correction or withdrawal, with its reason. */
export function RevisionNotice({
  title,
  text,
  reason,
  link,
  language,
}: {
  title: string;
  text?: string;
  reason?: string | null;
  link?: { href: string; text: string };
  language: Language;
}) {
  return (
    <Notice title={title}>
      {text ? <p>{text}</p> : null}
      {reason ? (
        <p>
          <Told text={catalogueIn[language].banner.reason(reason)} own={[reason]} language={language} />
        </p>
      ) : null}
      {link ? (
        <p>
          <a href={link.href}>{link.text}</a>
        </p>
      ) : null}
    </Notice>
  );
}
