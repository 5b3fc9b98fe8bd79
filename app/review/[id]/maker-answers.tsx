import { ActionForm } from "@/app/_components/action-form.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { TextAreaField, TextField } from "@/app/_components/field.tsx";
import type { MakerAnswerRecord } from "@/lib/store/reviews.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { makerAnswerWords } from "@/lib/wording/revisions.ts";
import { addMakerAnswer } from "./actions.ts";

/** What makers answered, and for the owner the form to attach another answer. */
export function MakerAnswers({
  itemId,
  answers,
  mayAdd,
}: {
  itemId: string;
  answers: MakerAnswerRecord[];
  mayAdd: boolean;
}) {
  return (
    <>
      {answers.length === 0 ? <p>No maker has answered.</p> : <p className="soft">{makerAnswerWords.lead}</p>}
      {answers.map((answer) => (
        <p key={answer.id}>
          {answer.fromWhom}, {plainDate(answer.receivedOn)}: {answer.text}
        </p>
      ))}
      {mayAdd ? (
        <Disclosure summary="Attach an answer">
          <ActionForm action={addMakerAnswer.bind(null, itemId)} submit="Put it on the public page">
            <TextField name="fromWhom" label="From whom" width={30} maxLength={200} />
            <TextField name="receivedOn" label="Received on" type="date" width={14} />
            <TextAreaField
              name="answer"
              id="maker-answer"
              label="The answer, word for word"
              hint="In full: nothing is cut, and nothing is added. It cannot be taken back."
              rows={8}
              maxLength={20_000}
            />
          </ActionForm>
        </Disclosure>
      ) : null}
    </>
  );
}
