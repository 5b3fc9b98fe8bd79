import { ActionForm } from "@/app/_components/action-form.tsx";
import { Actions, ButtonLink } from "@/app/_components/button.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { submitItem } from "@/app/_draft/actions.ts";
import { InterestsField } from "@/app/_draft/interests-field.tsx";
import type { Draft } from "@/app/_draft/load-draft.ts";
import { RevisionEntry } from "@/app/_draft/revision-entry.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { nextStepWords, publishPromise } from "@/lib/wording/bench.ts";
import { revisionLine } from "@/lib/wording/catalogue.ts";
import { changeSentence } from "@/lib/wording/changes.ts";
import { counted, plainDate } from "@/lib/wording/formats.ts";
import { problemSentences } from "@/lib/wording/problems.ts";
import { gateSentence, reviewDecisionWords } from "@/lib/wording/review.ts";
import { nextStep } from "../next-step.ts";
import { publishItem } from "./actions.ts";

/** The one next step in words, and the control that takes it. */
export function NextEntry({ draft }: { draft: Draft }) {
  const { record, snapshot, published, changes, problems, reviews, gate, started, submission } = draft;
  const { item } = record;
  if (draft.blind) return <BlindEntry />;
  const parts = snapshot.specimens.flatMap((s) => s.parts);
  const tested = new Set(snapshot.specimens.flatMap((s) => s.otherTests?.map((test) => test.part) ?? []));
  const waiting = parts.filter((p) => p.results.length === 0 && !tested.has(p.id)).length;
  const withdrawing = started?.kind === "withdrawal";
  const step = nextStep({
    state: item.state,
    objects: record.item.specimens.length,
    parts: record.item.specimens.flatMap((s) => s.components).length,
    partsWithoutResult: waiting,
    reviewed: snapshot.review.reviewed,
    published: published !== null,
    changed: changes.length > 0 || started !== null,
  });
  const { title, text } = nextStepWords[step](waiting);
  const [last] = reviews;
  const sentBack = item.state === "draft" && last && last.decision !== "approved" ? last : null;
  // The step above says it already, with the way out.
  const inTheWay = step === "assign-readings" ? problems.filter((p) => p.code !== "part-without-result") : problems;
  const ready = problems.length === 0 && step !== "nothing-new";
  const named = published === null || started !== null;
  const submittable =
    ready &&
    named &&
    item.state !== "submitted" &&
    gate.state !== "enough" &&
    step !== "add-object" &&
    step !== "add-part";
  return (
    <>
      <h3>{title}</h3>
      <p>{text}</p>
      {sentBack ? (
        <p>
          {sentBack.reviewerName} {reviewDecisionWords[sentBack.decision]} on{" "}
          {plainDate(sentBack.createdAt.toISOString())}: {sentBack.note}
        </p>
      ) : null}
      {published ? (
        <p>
          Public page: <a href={paths.item(published.slug)}>{paths.item(published.slug)}</a>. {revisionLine(published)}.
        </p>
      ) : null}
      {changes.length > 0 && !withdrawing ? (
        <Disclosure summary={`What the public page does not say yet: ${counted(changes.length, "change")}`}>
          <ul>
            {changes.map((change, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a fixed list
              <li key={index}>{changeSentence(change)}</li>
            ))}
          </ul>
        </Disclosure>
      ) : null}
      {step === "add-object" || step === "add-part" ? (
        <Actions>
          <ButtonLink kind="primary" href="#objects">
            {step === "add-object" ? "Add the object" : "Add a part"}
          </ButtonLink>
        </Actions>
      ) : null}
      {step === "assign-readings" ? (
        <Actions>
          <ButtonLink kind="primary" href={paths.benchReadings()}>
            Unassigned readings
          </ButtonLink>
        </Actions>
      ) : null}
      {inTheWay.length > 0 && step !== "add-object" && step !== "add-part" ? (
        <>
          <p>This stands in the way of publishing:</p>
          <ul>
            {problemSentences(inTheWay).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      ) : null}
      <RevisionEntry draft={draft} />
      {ready && named ? <p>{gateSentence(gate)}</p> : null}
      {submittable ? (
        <ActionForm action={submitItem.bind(null, item.id)} submit="Ask for a review">
          <InterestsField before={submission.interests} />
        </ActionForm>
      ) : null}
      {ready && named && (gate.state === "enough" || gate.state === "unreviewed") ? (
        <PublishForm draft={draft} />
      ) : null}
      <p className="small">
        <a href={paths.reviewItem(item.id)}>Remarks, reviews and re-tests</a> ·{" "}
        <a href={paths.itemHistory(item.id)}>Who did what</a>
      </p>
    </>
  );
}

/** For whoever measures it again without knowing the value: nothing here tells it, and what comes next is theirs to hand in. */
function BlindEntry() {
  return (
    <>
      <h3>You measure this one blind</h3>
      <p>
        You see your own readings and what they come to, and nothing of the first tester’s. Put yours on the part, then
        hand in under <a href={paths.retests()}>Re-tests</a>.
      </p>
    </>
  );
}

/** What publishing does cannot be undone: said each time. Without a review it is folded away. */
function PublishForm({ draft: { record, snapshot } }: { draft: Draft }) {
  const { reviewed } = snapshot.review;
  const verb = snapshot.kind === "withdrawal" ? "Withdraw" : "Publish";
  const submit = reviewed ? verb : `${verb} without a review`;
  const form = (
    <>
      <p className="soft">{publishPromise}</p>
      <ActionForm
        action={publishItem.bind(null, record.item.id)}
        submit={snapshot.revision > 1 ? `${submit} as revision ${snapshot.revision}` : submit}
        submitKind={reviewed ? "primary" : "secondary"}
      />
    </>
  );
  return reviewed ? form : <Disclosure summary={`${verb} without a review`}>{form}</Disclosure>;
}
