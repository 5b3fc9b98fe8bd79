import { ActionForm } from "@/app/_components/action-form.tsx";
import { Checkbox } from "@/app/_components/choice-field.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry } from "@/app/_components/entry.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { paths } from "@/lib/platform/paths.ts";
import type { CheckedSession } from "@/lib/store/sessions.ts";
import { elementName } from "@/lib/wording/elements.ts";
import { amountText } from "@/lib/wording/formats.ts";
import { labelOf, materialLabels } from "@/lib/wording/labels.ts";
import {
  correctionText,
  dayStates,
  fitnessWord,
  recoveriesText,
  recoveryText,
  uncountedSentence,
} from "@/lib/wording/sessions.ts";
import { askCorrections } from "../actions.ts";

/** What the check standards of the session show, a row for each element, mode and standard. */
export function SessionFit({ checked }: { checked: CheckedSession }) {
  const { session, fitness, checkReadings } = checked;
  const rows = fitness.elements.flatMap((e) => e.standards.map((verdict) => ({ ...e, verdict })));
  const correctable = [
    ...new Set(
      rows
        .filter(({ verdict }) => verdict.uCertified !== null && verdict.recovery?.differs === true)
        .map((r) => r.element)
        .concat(session.corrections),
    ),
  ];
  return (
    <Entry title="Was it fit?" id="fit" aside={dayStates(fitness.elements)}>
      {rows.length === 0 ? (
        <p>
          No check standard was read in this session, so nothing shows whether the analyser was fit. Read one before,
          between and after; <a href={paths.benchCheckStandards()}>it is recognised by its name</a>.
        </p>
      ) : (
        <DataTable
          caption="What the check standards show"
          hideCaption
          rows={rows}
          rowKey={(r) => `${r.element} ${r.mode} ${r.verdict.standard.id}`}
          columns={[
            { key: "element", head: "Element", cell: (r) => elementName(r.element) },
            { key: "mode", head: "Mode", cell: (r) => r.mode ?? "not named" },
            { key: "state", head: "State", nowrap: true, cell: (r) => fitnessWord[r.verdict.state] },
            {
              key: "standard",
              head: "Standard",
              cell: (r) => <a href={paths.benchCheckStandard(r.verdict.standard.id)}>{r.verdict.standard.name}</a>,
            },
            {
              key: "certified",
              head: "Certified",
              numeric: true,
              cell: ({ verdict: v }) =>
                v.certified === null ? `< ${amountText(v.below ?? 0, v.unit)}` : amountText(v.certified, v.unit),
            },
            {
              key: "read",
              head: "Read",
              roomy: true,
              cell: ({ verdict: v }) => recoveriesText(v.checks.map((c) => c.recovery)),
            },
            {
              key: "recovery",
              head: "Recovery R ± U",
              nowrap: true,
              cell: ({ verdict: v }) => recoveryText(v.recovery),
            },
            {
              key: "correction",
              head: "Correction",
              roomy: true,
              cell: ({ element, verdict: v }) =>
                correctionText({
                  uCertified: v.uCertified,
                  factor: v.corrected?.factor ?? null,
                  asked: session.corrections.includes(element),
                  differs: v.recovery?.differs ?? false,
                  material: labelOf(materialLabels, v.standard.material),
                }),
            },
          ]}
        />
      )}
      {fitness.uncounted.map(({ readingId, standardId, why }) => {
        const reading = checkReadings.find((r) => r.id === readingId);
        const standard = checked.standards.find((s) => s.id === standardId);
        return (
          <Warning key={readingId}>
            <p>
              {reading?.number ? `Reading ${reading.number}: ` : ""}
              {uncountedSentence(why, {
                standard: standard?.name ?? "a standard",
                mode: reading?.mode ?? null,
                modes: standard?.modes ?? [],
                expiresOn: standard?.expiresOn ?? null,
              })}
            </p>
          </Warning>
        );
      })}
      {correctable.length > 0 ? (
        <Disclosure summary="Correct for what the standard shows">
          <p>
            A correction is made only where it is asked for, the difference is more than chance, and the part is of the
            same material as the standard. Otherwise the whole difference counts as doubt.
          </p>
          <ActionForm action={askCorrections} submit="Save" submitKind="secondary">
            <input type="hidden" name="id" value={session.id} />
            {correctable.map((element) => (
              <Checkbox
                key={element}
                name="corrections"
                value={element}
                label={`Correct ${elementName(element)}`}
                defaultChecked={session.corrections.includes(element)}
              />
            ))}
          </ActionForm>
        </Disclosure>
      ) : null}
    </Entry>
  );
}
