import { ActionForm } from "@/app/_components/action-form.tsx";
import { Entry } from "@/app/_components/entry.tsx";
import { TextAreaField } from "@/app/_components/field.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { doubtedElements } from "@/lib/consistency/session-fitness.ts";
import type { StoredReading } from "@/lib/store/readings.ts";
import { type CheckedSession, standardReading } from "@/lib/store/sessions.ts";
import { doubtLines, doubtWords } from "@/lib/wording/sessions.ts";
import { allowDoubtful } from "../actions.ts";

/** The stretches about a failed check, and what becomes of the readings in them. Nothing where every check was good. */
export function SessionDoubt({ checked, readings }: { checked: CheckedSession; readings: StoredReading[] }) {
  const { session, fitness } = checked;
  const doubted = fitness.elements.filter((e) => e.inDoubt.length > 0);
  if (doubted.length === 0) return null;
  const touched = readings.filter(
    (r) =>
      r.checkStandardId === null &&
      r.componentId !== null &&
      doubtedElements(fitness, standardReading(r, session.clockShiftMinutes)).length > 0,
  );
  return (
    <Entry title="A check failed" id="doubt">
      <Warning>
        <ul>
          {doubtLines(doubted).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </Warning>
      <p>
        {session.inDoubtReason === null
          ? doubtWords.leftOut(touched.length)
          : doubtWords.usedAnyway(session.inDoubtReason)}
      </p>
      {session.inDoubtReason === null ? (
        <ActionForm action={allowDoubtful} submit="Use them all the same" submitKind="secondary">
          <input type="hidden" name="id" value={session.id} />
          <TextAreaField
            name="inDoubtReason"
            label="Why they are used although a check failed"
            hint="This is published on every page that rests on them"
            rows={2}
            required
          />
        </ActionForm>
      ) : (
        <ActionForm action={allowDoubtful} submit="Leave them out again" submitKind="secondary" compact>
          <input type="hidden" name="id" value={session.id} />
          <input type="hidden" name="leaveOut" value="yes" />
        </ActionForm>
      )}
    </Entry>
  );
}
