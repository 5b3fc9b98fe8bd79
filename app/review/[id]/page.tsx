import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { ButtonLink } from "@/app/_components/button.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { PhotoFigure, PhotoRow } from "@/app/_components/photo-figure.tsx";
import { ThumbBar } from "@/app/_components/thumb-bar.tsx";
import { VerdictMark } from "@/app/_components/verdict.tsx";
import { Notice } from "@/app/_components/warning.tsx";
import { ChangesTable } from "@/app/_draft/changes-table.tsx";
import { loadDraft } from "@/app/_draft/load-draft.ts";
import { PartResults } from "@/app/_draft/part-results.tsx";
import { PastReviews } from "@/app/_draft/past-reviews.tsx";
import { remarkPlaces } from "@/app/_draft/remark-places.ts";
import { Remarks } from "@/app/_draft/remarks.tsx";
import { ResultSummary } from "@/app/_draft/result-summary.tsx";
import { Rows } from "@/app/_draft/rows.tsx";
import itemStyles from "@/app/(catalogue)/_item/item-view.module.css";
import { LeadFlags } from "@/app/(catalogue)/_item/lead-flags.tsx";
import { hasOtherTests, OtherTests } from "@/app/(catalogue)/_item/other-tests.tsx";
import { Provenance, Tested } from "@/app/(catalogue)/_item/provenance.tsx";
import { may } from "@/lib/access/permissions.ts";
import { requirePerson } from "@/lib/access/require-person.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listPeople } from "@/lib/store/people.ts";
import { retestsOf } from "@/lib/store/retests.ts";
import { claimOf, commentsOf, makerAnswersOf } from "@/lib/store/reviews.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { itemStateWords } from "@/lib/wording/bench.ts";
import { counted, listed, plainDate } from "@/lib/wording/formats.ts";
import { categoryLabels, labelOf, revisionLabels } from "@/lib/wording/labels.ts";
import { otherTestWords } from "@/lib/wording/other-tests.ts";
import { problemSentence, problemSentences } from "@/lib/wording/problems.ts";
import { gateSentence, reviewDoneWords, whyNoDecision } from "@/lib/wording/review.ts";
import { Consistency } from "./consistency.tsx";
import { ClaimedByAnother, ClaimForm, Decision } from "./decision.tsx";
import { MakerAnswers } from "./maker-answers.tsx";
import { Retests } from "./retests.tsx";
import { SetAside } from "./set-aside.tsx";
import { settlingPlans } from "./settling-plans.ts";

export const metadata: Metadata = { title: "Item" };

type Props = { params: Promise<{ id: string }>; searchParams: Promise<{ done?: string; about?: string }> };

/** An item as it would be published, with what a reviewer has to look at: do repeats agree, what was set aside, who is tied to whom. */
export default async function ReviewItemPage({ params, searchParams }: Props) {
  const { id } = await params;
  const { done, about } = await searchParams;
  const db = database();
  const person = await requirePerson("see-review", paths.reviewItem(id));
  const draft = await loadDraft(id, systemClock(), person.id);
  if (!draft) notFound();
  const { item } = draft.record;
  if (draft.blind)
    return (
      <>
        <PageHead title={item.name} kicker={<a href={paths.review()}>Review</a>} />
        <Notice title="You measure this one blind">
          <p>{problemSentence({ code: "blind-retest" })}</p>
          <p>
            <a href={paths.retests()}>What is asked of you</a>
          </p>
        </Notice>
      </>
    );
  const [claim, comments, retests, people, answers] = await Promise.all([
    claimOf(db, id),
    commentsOf(db, id),
    retestsOf(db, { itemId: id }),
    listPeople(db),
    makerAnswersOf(db, item.slug),
  ]);
  const { record, snapshot, placed, inputsDigest, submission, published, changes } = draft;
  const answer = itemAnswer(snapshot);
  const parts = snapshot.specimens.flatMap((s) => s.parts);
  const permitted = may(person, "review-item", { authors: draft.concerned, state: item.state });
  const refusal = whyNoDecision(permitted);
  const said = reviewDoneWords(done);
  const openRemarks = comments.filter((c) => c.replyToId === null && c.settledAt === null).length;
  const mine = claim?.reviewerId === person.id;
  return (
    <>
      <PageHead
        title={item.name}
        kicker={
          <>
            <a href={paths.review()}>Review</a> · {labelOf(categoryLabels, item.category)} ·{" "}
            {itemStateWords[item.state]}
          </>
        }
      >
        <p className="small">
          {placed.length > 0 ? (
            <>
              <a href={paths.partConsistency(id)}>Consistency in full</a> ·{" "}
            </>
          ) : null}
          <a href={paths.itemHistory(id)}>Who did what</a>
          {may(person, "see-bench").yes ? (
            <>
              {" "}
              · <a href={paths.benchItem(id)}>At the bench</a>
            </>
          ) : null}
        </p>
      </PageHead>
      {said ? (
        <Notice live>
          <p>{said}</p>
        </Notice>
      ) : null}
      <Ledger>
        <Entry title="The page would say" id="answer" aside={revisionLabels[snapshot.kind]}>
          <p className={`answer ${itemStyles.headline}`}>
            {answer.verdict ? <VerdictMark verdict={answer.verdict} /> : null}
            <strong>{answer.headline}</strong>
          </p>
          {answer.sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          {snapshot.reason ? <p>Reason given for this revision: {snapshot.reason}</p> : null}
          {draft.problems.length > 0 ? (
            <>
              <p>It cannot be published yet:</p>
              <ul>
                {problemSentences(draft.problems).map((sentence) => (
                  <li key={sentence}>{sentence}</li>
                ))}
              </ul>
            </>
          ) : null}
        </Entry>
        {published && changes.length > 0 ? (
          <Entry title="What it changes" id="changes" aside={`against revision ${published.revision}`}>
            <ChangesTable changes={changes} caption={counted(changes.length, "field")} />
          </Entry>
        ) : null}
        {hasOtherTests(snapshot.specimens) ? (
          <Entry title={otherTestWords.title} id="other-tests">
            <OtherTests language="en" specimens={snapshot.specimens} />
          </Entry>
        ) : null}
        <Entry title="Who, and who paid" id="loaded">
          <Facts
            facts={[
              { name: "Loaded by", value: listed(draft.loadedBy.map((p) => p.name)) || "nobody yet" },
              ...record.item.specimens.map((specimen) => ({
                name: `${specimen.label}: how it was got`,
                value: `${specimen.howGot}; who paid: ${specimen.whoPaid}`,
              })),
              {
                name: "Ties the tester states",
                value: submission.interests || "not asked when it was handed in",
              },
              {
                name: "Handed in",
                value: submission.submittedAt ? plainDate(submission.submittedAt.toISOString()) : null,
              },
              {
                name: "Instrument",
                value: listed(record.instruments.map((i) => `${i.name} (${i.serial})`)) || "not said",
              },
              { name: "Readings", value: counted(record.readings.length, "reading") },
            ]}
          />
        </Entry>
        <Entry title="Do repeats agree?" id="consistency" aside={counted(placed.length, "result")}>
          <Consistency placed={placed} />
        </Entry>
        <Entry title="Set aside" id="set-aside">
          <SetAside readings={record.readings} partNames={new Map(parts.map((p) => [p.id, p.name]))} />
        </Entry>
        {placed.length > 0 ? (
          <Entry title="Results" id="results" aside={counted(placed.length, "result")}>
            <ResultSummary placed={placed} />
          </Entry>
        ) : null}
        {parts.map((part) => (
          <Entry key={part.id} id={`part-${part.id}`} title={part.name}>
            <PartResults placed={placed.filter((p) => p.part.id === part.id)} files={snapshot.files} />
          </Entry>
        ))}
        <Entry title="Every row" id="rows" aside={counted(record.readings.length, "row")}>
          <Rows draft={draft} />
        </Entry>
        {placed[0] ? (
          <Entry title="How sure" id="how-sure">
            <LeadFlags language="en" placed={placed[0]} snapshot={snapshot} />
          </Entry>
        ) : null}
        <Entry title="What was tested" id="tested">
          <Tested language="en" snapshot={snapshot} />
          <PhotoRow>
            {snapshot.photos.map((photo) => (
              <PhotoFigure
                key={photo.key}
                src={paths.photo(photo.key)}
                alt={photo.alt}
                width={photo.width}
                height={photo.height}
                caption={photo.alt}
              />
            ))}
          </PhotoRow>
        </Entry>
        <Entry title="With what" id="provenance">
          <Provenance language="en" snapshot={snapshot} />
        </Entry>
        <Entry title="Blind re-tests" id="retests">
          <Retests draft={draft} retests={retests} people={people} person={person} />
        </Entry>
        <Entry title="Remarks" id="remarks" aside={openRemarks > 0 ? `${openRemarks} open` : undefined}>
          <Remarks itemId={id} comments={comments} places={remarkPlaces(draft)} about={about} person={person} />
        </Entry>
        {draft.reviews.length > 0 ? (
          <Entry title="Reviews so far" id="reviews">
            <PastReviews reviews={draft.reviews} inputsDigest={inputsDigest} />
          </Entry>
        ) : null}
        {published ? (
          <Entry title="The maker’s answer" id="maker">
            <MakerAnswers itemId={id} answers={answers} mayAdd={may(person, "add-maker-answer").yes} />
          </Entry>
        ) : null}
        <Entry title="Your decision" id="decide">
          <p>{gateSentence(draft.gate)}</p>
          {refusal !== null ? (
            <p>{refusal}</p>
          ) : claim === null ? (
            <ClaimForm itemId={id} />
          ) : mine ? (
            <Decision itemId={id} shownDigest={inputsDigest} plans={settlingPlans(draft)} openRemarks={openRemarks} />
          ) : (
            <ClaimedByAnother itemId={id} claim={claim} mayRelease={person.role === "owner"} />
          )}
        </Entry>
      </Ledger>
      {refusal === null ? (
        <ThumbBar>
          <ButtonLink kind="primary" href="#decide">
            To your decision
          </ButtonLink>
        </ThumbBar>
      ) : null}
    </>
  );
}
