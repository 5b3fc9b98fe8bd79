import { ActionForm } from "@/app/_components/action-form.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { SelectField, TextAreaField } from "@/app/_components/field.tsx";
import type { Person } from "@/lib/access/permissions.ts";
import type { CommentRecord } from "@/lib/store/reviews.ts";
import { counted, plainDate } from "@/lib/wording/formats.ts";
import { aboutGone } from "@/lib/wording/review.ts";
import { commentItem, settleComment } from "./actions.ts";
import styles from "./remarks.module.css";

/** Remarks on figures and rows, each with its answers; the open ones first, the settled folded. */
export function Remarks({
  itemId,
  comments,
  places,
  about,
  person,
}: {
  itemId: string;
  comments: CommentRecord[];
  places: ReadonlyMap<string, string>;
  /** What the next remark is about, chosen beforehand by a link beside a figure or row. */
  about: string | undefined;
  person: Person;
}) {
  const remarks = comments.filter((comment) => comment.replyToId === null);
  const settled = remarks.filter((remark) => remark.settledAt !== null);
  const thread = (remark: CommentRecord) => (
    <Thread
      key={remark.id}
      remark={remark}
      answers={comments.filter((comment) => comment.replyToId === remark.id)}
      place={places.get(remark.about) ?? aboutGone}
      person={person}
    />
  );
  // Rows are many: only the one that was pointed at is in the list.
  const choices = [...places].filter(([value]) => !value.startsWith("reading:") || value === about);
  return (
    <>
      {remarks.length === 0 ? <p>No remark has been made yet.</p> : null}
      {remarks.filter((remark) => remark.settledAt === null).map(thread)}
      {settled.length > 0 ? (
        <Disclosure summary={`Settled: ${counted(settled.length, "remark")}`}>{settled.map(thread)}</Disclosure>
      ) : null}
      <div id="remark">
        <ActionForm action={commentItem.bind(null, itemId, null)} submit="Make this remark" submitKind="secondary">
          <SelectField
            name="about"
            label="Remark on"
            choices={choices.map(([value, label]) => ({ value, label }))}
            defaultValue={about !== undefined && places.has(about) ? about : "item"}
          />
          <TextAreaField
            name="text"
            label="What you see or ask"
            hint="Tester and reviewers read it; it is not published."
            rows={3}
            maxLength={2000}
          />
        </ActionForm>
      </div>
    </>
  );
}

function Thread({
  remark,
  answers,
  place,
  person,
}: {
  remark: CommentRecord;
  answers: CommentRecord[];
  place: string;
  person: Person;
}) {
  const settled = remark.settledAt !== null;
  const maySettle = remark.authorId === person.id || person.role === "owner";
  return (
    <section className={`${styles.thread} flow`} aria-label={`Remark on ${place}`}>
      <p className={styles.place}>{place}</p>
      <Said comment={remark} />
      {answers.map((answer) => (
        <div key={answer.id} className={styles.answer}>
          <Said comment={answer} />
        </div>
      ))}
      {settled ? (
        <p className="small soft">Settled on {plainDate(remark.settledAt?.toISOString() ?? "")}.</p>
      ) : (
        <div className={styles.controls}>
          <Disclosure summary="Answer">
            <ActionForm action={commentItem.bind(null, remark.itemId, remark.id)} submit="Answer">
              <TextAreaField id={`answer-${remark.id}`} name="text" label="Your answer" rows={2} maxLength={2000} />
            </ActionForm>
          </Disclosure>
          {maySettle ? (
            <ActionForm
              action={settleComment.bind(null, remark.id)}
              submit="Call it settled"
              submitKind="quiet"
              compact
            />
          ) : null}
        </div>
      )}
    </section>
  );
}

const Said = ({ comment }: { comment: CommentRecord }) => (
  <p>
    <span className="small soft">
      {comment.authorName}, {plainDate(comment.createdAt.toISOString())}:
    </span>{" "}
    <span className={styles.text}>{comment.text}</span>
  </p>
);
