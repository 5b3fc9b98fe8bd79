import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Button } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { SelectField } from "@/app/_components/field.tsx";
import { CheckSeriesFigure } from "@/app/_draft/check-series-figure.tsx";
import { loadDraft } from "@/app/_draft/load-draft.ts";
import { requirePerson } from "@/lib/access/require-person.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { paths } from "@/lib/platform/paths.ts";
import { consistencyPage } from "@/lib/wording/consistency.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { amountText, counted } from "@/lib/wording/formats.ts";
import { type Choice, choicesOf, loadConsistency } from "./load-consistency.ts";
import { ComparedLevels, Components, Levels, Precision, WithoutEach } from "./tables.tsx";

export const metadata: Metadata = { title: consistencyPage.title };

type Props = { params: Promise<{ id: string }>; searchParams: Promise<{ value?: string }> };

const nameOf = ({ part, specimen, result }: Choice, several: boolean): string =>
  [`${elementTitle(result.reconciled.element)} in ${part.name}`, several ? specimen : "", result.mode ?? ""]
    .filter((text) => text !== "")
    .join(", ");

/** One part and element: by spot, session, analyser and operator; what scatters; the check standards around; each reading left out. */
export default async function PartConsistencyPage({ params, searchParams }: Props) {
  const { id } = await params;
  const { value } = await searchParams;
  const person = await requirePerson("see-review", paths.partConsistency(id));
  const draft = await loadDraft(id, systemClock(), person.id);
  if (!draft || draft.blind) notFound();
  const { item } = draft.record;
  const choices = choicesOf(draft);
  const several = item.specimens.length > 1;
  const lead = draft.placed[0];
  const first = choices.find(
    (c) => c.part.id === lead?.part.id && c.result.reconciled.inputsDigest === lead.result.inputsDigest,
  );
  const choice = value === undefined ? (first ?? choices[0]) : choices.find((c) => c.key === value);
  if (value !== undefined && !choice) notFound();
  const head = (
    <PageHead
      title={`${consistencyPage.title}: ${item.name}`}
      kicker={
        <>
          <a href={paths.review()}>Review</a> · <a href={paths.reviewItem(id)}>{item.name}</a>
        </>
      }
    >
      <p>{consistencyPage.lead}</p>
    </PageHead>
  );
  if (!choice)
    return (
      <>
        {head}
        <EmptyState title="No result yet">
          <p>Readings have to be on a part before they can be held beside each other.</p>
        </EmptyState>
      </>
    );
  const { consistency, objects, series } = await loadConsistency(draft, choice, choices);
  const { unit, whole } = consistency;
  const rows = new Map(draft.record.readings.map((r) => [r.id, r]));
  return (
    <>
      {head}
      <div className="flow">
        <form method="get" action={paths.partConsistency(id)} className="flow no-print">
          <SelectField
            name="value"
            label="Part and element"
            choices={choices.map((each) => ({ value: each.key, label: nameOf(each, several) }))}
            defaultValue={choice.key}
          />
          <Button type="submit">Show</Button>
        </form>
      </div>
      <h2>{nameOf(choice, several)}</h2>
      <Ledger>
        <Entry title="By what they share" id="levels" aside={counted(whole.counts.used, "reading")}>
          <Levels levels={consistency.levels} unit={unit} />
        </Entry>
        <Entry title="Where the scatter comes from" id="components">
          <Components survey={consistency.survey} unit={unit} />
        </Entry>
        <Entry title="Within and between sessions" id="precision">
          <Precision precision={consistency.precision} unit={unit} />
        </Entry>
        <Entry title="Held beside each other" id="compared">
          <ComparedLevels rows={[...consistency.compared, ...objects]} unit={unit} />
        </Entry>
        <Entry title="Check standards around" id="checks" aside="three weeks before and after">
          {series.length === 0 ? <p>{consistencyPage.noSessions}</p> : null}
          {series.map((each) => (
            <CheckSeriesFigure key={`${each.instrument} ${each.standard}`} series={each} />
          ))}
        </Entry>
        <Entry title="Standing apart" id="candidates">
          {whole.crossCheck && whole.crossCheck.candidates.length > 0 ? (
            <DataTable
              caption="Candidates for a closer look; nothing is left out"
              rows={whole.crossCheck.candidates.flatMap((candidate) => rows.get(candidate) ?? [])}
              rowKey={(r) => r.id}
              columns={[
                { key: "spot", head: "Spot", cell: (r) => r.spot ?? "not named" },
                { key: "row", head: "File and row", cell: (r) => `${r.fileName}, ${r.row}` },
                {
                  key: "remark",
                  head: "Remark",
                  cell: (r) => <a href={`${paths.reviewItem(id)}?about=reading:${r.id}#remark`}>Remark on this row</a>,
                },
              ]}
            />
          ) : (
            <p>No reading stands apart by the tests of the method (its step 8).</p>
          )}
        </Entry>
        <Entry
          title="What if this one were not there"
          id="without"
          aside={whole.value === null ? undefined : `with all: ${amountText(whole.value, unit)}`}
        >
          <WithoutEach without={consistency.withoutEach} rows={rows} unit={unit} />
        </Entry>
      </Ledger>
    </>
  );
}
