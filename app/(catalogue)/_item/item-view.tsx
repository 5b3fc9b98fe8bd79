import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { PhotoRow } from "@/app/_components/photo-figure.tsx";
import { VerdictMark } from "@/app/_components/verdict.tsx";
import { Notice } from "@/app/_components/warning.tsx";
import { ItemPhoto, partNamesOf } from "@/app/_photos/item-photo.tsx";
import { itemJsonLd } from "@/lib/exports/json-ld.ts";
import { absoluteUrl } from "@/lib/exports/published-revision.ts";
import { paths } from "@/lib/platform/paths.ts";
import { resultsByWeight } from "@/lib/publication/leading-decision.ts";
import type { FieldChange } from "@/lib/publication/revision-difference.ts";
import type { LogEntry, Snapshot } from "@/lib/publication/snapshot.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { inventedNotice, whatToDo } from "@/lib/wording/catalogue.ts";
import { cautionsFor } from "@/lib/wording/cautions.ts";
import { counted, plainDate } from "@/lib/wording/formats.ts";
import { categoryLabels, labelOf } from "@/lib/wording/labels.ts";
import { otherTestWords } from "@/lib/wording/other-tests.ts";
import { recomputeWords } from "@/lib/wording/recompute.ts";
import { stripKey } from "@/lib/wording/result-figures.ts";
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
}: {
  snapshot: Snapshot;
  entry: LogEntry;
  baseUrl: string;
  revisions: LogEntry[];
  changes: FieldChange[] | null;
  /** The reader's day, for what changed since the test. */
  today: string;
}) {
  const answer = itemAnswer(snapshot);
  const placed = resultsByWeight(snapshot);
  const [lead] = placed;
  const several = snapshot.specimens.length > 1;
  const photo = snapshot.photos[0];
  const parts = partNamesOf(snapshot.specimens);
  return (
    <article data-only-read>
      <JsonLd data={itemJsonLd({ snapshot, entry }, baseUrl)} />
      <PageHead
        title={snapshot.item.name}
        kicker={
          <>
            {labelOf(categoryLabels, snapshot.item.category)} · tested {plainDate(snapshot.testedOn)} · revision{" "}
            {snapshot.revision}
          </>
        }
      />
      <p className="print-only small">
        {absoluteUrl(baseUrl, paths.revision(snapshot.slug, snapshot.revision))}, SHA-256{" "}
        <code>{entry.snapshotSha256}</code>
      </p>
      <Ledger>
        <Entry title="The answer" id="answer">
          <div className={photo ? styles.answer : undefined}>
            <div className="flow">
              <p className={`answer ${styles.headline}`}>
                {answer.verdict ? <VerdictMark verdict={answer.verdict} /> : null}
                <strong>{answer.headline}</strong>
              </p>
              {answer.sentences.map((sentence, index) => (
                <p key={sentence} className={index === 0 ? "answer" : undefined}>
                  {sentence}
                </p>
              ))}
            </div>
            {photo ? <ItemPhoto photo={photo} parts={parts} first /> : null}
          </div>
          {snapshot.registry.invented ? <p className="soft small">{inventedNotice}</p> : null}
        </Entry>
        {lead ? (
          <Entry title="How sure" id="how-sure">
            <ResultBlock placed={lead} />
            <p className="soft small">{stripKey}</p>
            <LeadFlags placed={lead} snapshot={snapshot} />
          </Entry>
        ) : null}
        <Entry title="What to do" id="what-to-do">
          <ul>
            {whatToDo(answer.verdict, snapshot.kind).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Entry>
        {placed.length > 1 ? (
          <Entry title="Every result" id="parts" aside={counted(placed.length, "result")}>
            <ResultList placed={placed} several={several} />
          </Entry>
        ) : null}
        {snapshot.kind === "withdrawal" ? null : (
          <>
            <AmountPanel placed={placed} several={several} />
            {placed.length > 0 ? <ChangedLimits snapshot={snapshot} placed={placed} today={today} /> : null}
          </>
        )}
        <Entry title="What it does not tell" id="cautions">
          <dl className={styles.cautions}>
            {cautionsFor(snapshot).map((caution) => (
              <div key={caution.code}>
                <dt>{caution.title}</dt>
                <dd>{caution.text}</dd>
              </div>
            ))}
          </dl>
        </Entry>
        <Entry title="What was tested" id="tested">
          <Tested snapshot={snapshot} />
          {snapshot.photos.length > 1 ? (
            <PhotoRow>
              {snapshot.photos.slice(1).map((each) => (
                <ItemPhoto key={each.key} photo={each} parts={parts} sizes="(min-width: 30rem) 20rem, 92vw" />
              ))}
            </PhotoRow>
          ) : null}
        </Entry>
        {hasOtherTests(snapshot.specimens) ? (
          <Entry title={otherTestWords.title} id="other-tests">
            <OtherTests specimens={snapshot.specimens} />
          </Entry>
        ) : null}
        {placed.length > 0 ? (
          <Entry title="The evidence" id="evidence" aside="Open what you want to see">
            <Evidence placed={placed} files={snapshot.files} several={several} />
          </Entry>
        ) : null}
        {snapshot.sessions && snapshot.sessions.length > 0 ? (
          <Entry title="Was the analyser fit?" id="fitness" aside="What the check standards showed">
            <InstrumentFitness sessions={snapshot.sessions} />
          </Entry>
        ) : null}
        <Entry title="Who, when and with what" id="provenance">
          <Provenance snapshot={snapshot} />
        </Entry>
        <Entry title="History" id="history">
          <History snapshot={snapshot} revisions={revisions} changes={changes} />
        </Entry>
        <Entry title="The data" id="data">
          <DataLinks snapshot={snapshot} entry={entry} baseUrl={baseUrl} />
          <ShareLinks snapshot={snapshot} baseUrl={baseUrl} />
          <div className="flow no-print">
            <h3>{recomputeWords.title}</h3>
            <p>
              {recomputeWords.lead}{" "}
              <a href={paths.recompute(snapshot.slug, snapshot.revision)}>{recomputeWords.button}</a>
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
}: {
  title: string;
  text?: string;
  reason?: string | null;
  link?: { href: string; text: string };
}) {
  return (
    <Notice title={title}>
      {text ? <p>{text}</p> : null}
      {reason ? <p>Reason: {reason}</p> : null}
      {link ? (
        <p>
          <a href={link.href}>{link.text}</a>
        </p>
      ) : null}
    </Notice>
  );
}
