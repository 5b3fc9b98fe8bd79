import { ActionForm } from "@/app/_components/action-form.tsx";
import { Actions, ButtonLink } from "@/app/_components/button.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { SelectField, TextAreaField } from "@/app/_components/field.tsx";
import type { Draft } from "@/app/_draft/load-draft.ts";
import { paths } from "@/lib/platform/paths.ts";
import { nextStepWords, publishPromise } from "@/lib/wording/bench.ts";
import { revisionLine } from "@/lib/wording/catalogue.ts";
import { changeSentence } from "@/lib/wording/changes.ts";
import { counted, plainDate } from "@/lib/wording/formats.ts";
import { revisionLabels } from "@/lib/wording/labels.ts";
import { problemSentences } from "@/lib/wording/problems.ts";
import { nextStep } from "../next-step.ts";
import { publishItem, submitItem } from "./actions.ts";

/** The one next step in words, and the control that takes it. */
export function NextEntry({ draft }: { draft: Draft }) {
  const { record, snapshot, published, changes, problems, reviews } = draft;
  const parts = snapshot.specimens.flatMap((s) => s.parts);
  const waiting = parts.filter((p) => p.results.length === 0).length;
  const step = nextStep({
    state: record.item.state,
    objects: snapshot.specimens.length,
    parts: parts.length,
    partsWithoutResult: waiting,
    reviewed: snapshot.review.reviewed,
    published: published !== null,
    changed: changes.length > 0,
  });
  const { title, text } = nextStepWords[step](waiting);
  const sentBack = record.item.state === "draft" && reviews[0]?.decision === "sent-back" ? reviews[0] : null;
  // The step above says it already, with the way out.
  const inTheWay = step === "assign-readings" ? problems.filter((p) => p.code !== "part-without-result") : problems;
  const ready = problems.length === 0 && step !== "nothing-new";
  const submittable = ready && ["submit-or-publish", "review-again", "publish-again", "withdrawn"].includes(step);
  return (
    <>
      <h3>{title}</h3>
      <p>{text}</p>
      {sentBack ? (
        <p>
          {sentBack.reviewerName} sent it back on {plainDate(sentBack.createdAt.toISOString())}: {sentBack.note}
        </p>
      ) : null}
      {published ? (
        <p>
          Public page: <a href={paths.item(published.slug)}>{paths.item(published.slug)}</a>. {revisionLine(published)}.
        </p>
      ) : null}
      {changes.length > 0 ? (
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
      {submittable ? <ActionForm action={submitItem.bind(null, record.item.id)} submit="Ask for a review" /> : null}
      {ready ? <PublishForm draft={draft} primary={!submittable} /> : null}
    </>
  );
}

/** Revision 1 asks nothing; later ones ask what kind of change it is, and why. */
function PublishForm({ draft: { record, snapshot, published }, primary }: { draft: Draft; primary: boolean }) {
  const submit = snapshot.review.reviewed ? "Publish" : "Publish without a review";
  const again = published !== null;
  const form = (
    <ActionForm
      action={publishItem.bind(null, record.item.id)}
      submit={again ? `${submit} as revision ${snapshot.revision}` : submit}
      submitKind={primary && snapshot.review.reviewed ? "primary" : "secondary"}
    >
      {again ? (
        <>
          <SelectField
            id="publish-kind"
            name="kind"
            label="What kind of change is it?"
            choices={[
              { value: "update", label: revisionLabels.update },
              { value: "correction", label: revisionLabels.correction },
            ]}
            defaultValue="update"
          />
          <TextAreaField
            id="publish-reason"
            name="reason"
            label="Why"
            hint="Stands on the page, in the log and among the corrections"
            rows={3}
            maxLength={600}
            required
          />
        </>
      ) : null}
    </ActionForm>
  );
  const promise = <p className="soft">{publishPromise}</p>;
  if (snapshot.review.reviewed)
    return (
      <>
        {promise}
        {form}
      </>
    );
  return (
    <Disclosure summary="Publish without a review">
      {promise}
      {form}
    </Disclosure>
  );
}
