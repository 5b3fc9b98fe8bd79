import { ActionForm } from "@/app/_components/action-form.tsx";
import { RadioGroup } from "@/app/_components/choice-field.tsx";
import { ConfirmDialog } from "@/app/_components/confirm-dialog.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { TextAreaField } from "@/app/_components/field.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { revisionLabels } from "@/lib/wording/labels.ts";
import { revisionHints } from "@/lib/wording/revisions.ts";
import { dropRevision, startRevision } from "./actions.ts";
import type { Draft } from "./load-draft.ts";

/** For a published item: start its correction, update or withdrawal with a reason; or the one that was started. */
export function RevisionEntry({ draft: { record, published, started, changes } }: { draft: Draft }) {
  const { item } = record;
  if (published === null) return null;
  const locked = item.state === "submitted";
  if (started)
    return (
      <>
        <p>
          <strong>{revisionLabels[started.kind]}</strong>, started as revision {published.revision + 1}. Reason:{" "}
          {started.reason}
        </p>
        {locked ? null : (
          <ConfirmDialog
            ask="Drop this revision"
            title="Drop the revision that was started?"
            form={<ActionForm action={dropRevision.bind(null, item.id)} submit="Drop it" compact />}
          >
            <p>The public page stays as it is. What was changed on the bench stays changed there.</p>
          </ConfirmDialog>
        )}
      </>
    );
  if (locked) return null;
  const withdrawn = published.kind === "withdrawal";
  const kinds = withdrawn ? (["update"] as const) : (["correction", "update", "withdrawal"] as const);
  const form = (
    <ActionForm action={startRevision.bind(null, item.id)} submit="Start this revision" submitKind="secondary">
      <RadioGroup
        name="kind"
        legend="What kind of change is it?"
        {...(changes.length > 0 || withdrawn ? { defaultValue: "update" } : {})}
        choices={kinds.map((kind) => ({ value: kind, label: revisionLabels[kind], hint: revisionHints[kind] }))}
      />
      <TextAreaField
        name="reason"
        label="Why, in words"
        hint="At least 8 characters. It stands on the page, in the log and among the corrections for ever."
        rows={3}
        maxLength={600}
      />
    </ActionForm>
  );
  return changes.length > 0 ? (
    <>
      <h4>A new revision</h4>
      {form}
    </>
  ) : (
    <Disclosure summary="Correct, bring up to date or withdraw">
      {form}
      <p className="small">
        <a href={paths.corrections()}>How others have been corrected</a>
      </p>
    </Disclosure>
  );
}
