import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { ButtonLink } from "@/app/_components/button.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { PhotoFigure, PhotoRow } from "@/app/_components/photo-figure.tsx";
import { ThumbBar } from "@/app/_components/thumb-bar.tsx";
import { VerdictMark } from "@/app/_components/verdict.tsx";
import { Notice } from "@/app/_components/warning.tsx";
import { loadDraft } from "@/app/_draft/load-draft.ts";
import { PartResults } from "@/app/_draft/part-results.tsx";
import { PastReviews } from "@/app/_draft/past-reviews.tsx";
import { ResultSummary } from "@/app/_draft/result-summary.tsx";
import itemStyles from "@/app/(catalogue)/_item/item-view.module.css";
import { LeadFlags } from "@/app/(catalogue)/_item/lead-flags.tsx";
import { Provenance, Tested } from "@/app/(catalogue)/_item/provenance.tsx";
import { currentPerson } from "@/lib/access/current-person.ts";
import { may } from "@/lib/access/permissions.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { paths } from "@/lib/platform/paths.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { itemStateWords } from "@/lib/wording/bench.ts";
import { counted, listed } from "@/lib/wording/formats.ts";
import { categoryLabels, labelOf } from "@/lib/wording/labels.ts";
import { problemSentences } from "@/lib/wording/problems.ts";
import { reviewDoneWords, whyNoDecision } from "@/lib/wording/review.ts";
import { Consistency } from "./consistency.tsx";
import { Decision } from "./decision.tsx";
import { SetAside } from "./set-aside.tsx";

export const metadata: Metadata = { title: "Item" };

type Props = { params: Promise<{ id: string }>; searchParams: Promise<{ done?: string }> };

/** An item as it would be published, with what a reviewer has to look at: do repeats agree, and what was set aside. */
export default async function ReviewItemPage({ params, searchParams }: Props) {
  const { id } = await params;
  const { done } = await searchParams;
  const [draft, person] = await Promise.all([loadDraft(id, systemClock()), currentPerson()]);
  if (!draft) notFound();
  const { record, snapshot, placed, inputsDigest } = draft;
  const { item } = record;
  const answer = itemAnswer(snapshot);
  const parts = snapshot.specimens.flatMap((s) => s.parts);
  const refusal = whyNoDecision(may(person, "review-item", { authors: record.authors }), item.state === "submitted");
  const said = reviewDoneWords(done);
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
      />
      {said ? (
        <Notice live>
          <p>{said}</p>
        </Notice>
      ) : null}
      <Ledger>
        <Entry title="The page would say" id="answer">
          <p className={`answer ${itemStyles.headline}`}>
            {answer.verdict ? <VerdictMark verdict={answer.verdict} /> : null}
            <strong>{answer.headline}</strong>
          </p>
          {answer.sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
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
        <Entry title="Who loaded the readings" id="loaded">
          <Facts
            facts={[
              { name: "Loaded by", value: listed(draft.loadedBy.map((p) => p.name)) || "nobody yet" },
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
        {placed[0] ? (
          <Entry title="How sure" id="how-sure">
            <LeadFlags placed={placed[0]} snapshot={snapshot} />
          </Entry>
        ) : null}
        <Entry title="What was tested" id="tested">
          <Tested snapshot={snapshot} />
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
          <Provenance snapshot={snapshot} />
        </Entry>
        {draft.reviews.length > 0 ? (
          <Entry title="Reviews so far" id="reviews">
            <PastReviews reviews={draft.reviews} inputsDigest={inputsDigest} />
          </Entry>
        ) : null}
        <Entry title="Your decision" id="decide">
          {refusal === null ? <Decision itemId={item.id} shownDigest={inputsDigest} /> : <p>{refusal}</p>}
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
