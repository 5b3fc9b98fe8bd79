import { ActionForm } from "@/app/_components/action-form.tsx";
import { Checkbox, Fieldset } from "@/app/_components/choice-field.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry } from "@/app/_components/entry.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { paths } from "@/lib/platform/paths.ts";
import type { CheckStandard } from "@/lib/store/check-standards.ts";
import { database } from "@/lib/store/database.ts";
import { listBatches } from "@/lib/store/imports.ts";
import { type StoredReading, sampleGroups } from "@/lib/store/readings.ts";
import { asWritten } from "@/lib/wording/bench.ts";
import { counted } from "@/lib/wording/formats.ts";
import { uncountedSentence } from "@/lib/wording/sessions.ts";
import { markCheckReadings } from "../actions.ts";

/** Its readings, each to be taken off again, and the samples of files that may be this standard under another name. */
export async function StandardReadings({ standard, readings }: { standard: CheckStandard; readings: StoredReading[] }) {
  const db = database();
  const [groups, batches] = await Promise.all([sampleGroups(db), listBatches(db)]);
  const files = new Map(batches.map((b) => [b.id, b.fileName]));
  const open = groups.filter((g) => g.sample !== null && g.unassigned > 0);
  const wrongMode = readings.filter((r) => standard.modes.length > 0 && !standard.modes.includes(r.mode ?? ""));
  const elements = Object.keys(standard.certified);
  return (
    <Entry title="Its readings" id="readings" aside={counted(readings.length, "reading")}>
      {wrongMode.length > 0 ? (
        <Warning>
          <p>
            {counted(wrongMode.length, "reading counts", "readings count")} for nothing.{" "}
            {uncountedSentence("wrong-mode", {
              standard: standard.name,
              mode: wrongMode[0]?.mode ?? null,
              modes: standard.modes,
              expiresOn: standard.expiresOn,
            })}
          </p>
        </Warning>
      ) : null}
      {readings.length === 0 ? (
        <p>None yet. They are recognised by the standard’s names when a file is loaded.</p>
      ) : (
        <Disclosure summary="Every reading of it, to take off what is none">
          <ActionForm action={markCheckReadings} submit="The ticked ones are no checks" submitKind="secondary">
            <DataTable
              caption={`Readings of ${standard.name}`}
              hideCaption
              rows={readings}
              rowKey={(r) => r.id}
              columns={[
                {
                  key: "tick",
                  head: "Tick",
                  rowHeader: false,
                  cell: (r) => (
                    <input
                      type="checkbox"
                      name="readingIds"
                      value={r.id}
                      aria-label={`Reading ${r.number ?? r.row} of ${r.fileName}`}
                    />
                  ),
                },
                {
                  key: "time",
                  head: "Taken",
                  nowrap: true,
                  rowHeader: true,
                  cell: (r) => r.takenAt?.slice(0, 16).replace("T", " ") ?? r.takenAtText ?? "no time",
                },
                { key: "number", head: "No.", cell: (r) => r.number ?? "" },
                { key: "sample", head: "Called", cell: (r) => r.sample ?? "" },
                { key: "mode", head: "Mode", cell: (r) => r.mode ?? "" },
                {
                  key: "results",
                  head: "As written",
                  roomy: true,
                  cell: (r) =>
                    r.results
                      .filter((result) => elements.includes(result.element))
                      .map((result) => `${result.element} ${asWritten(result)}`)
                      .join("; "),
                },
                {
                  key: "session",
                  head: "Session",
                  cell: (r) => (r.sessionId ? <a href={paths.benchSession(r.sessionId)}>its session</a> : "none"),
                },
              ]}
            />
          </ActionForm>
        </Disclosure>
      )}
      {open.length > 0 ? (
        <Disclosure summary="Say that readings were taken on it">
          <ActionForm action={markCheckReadings} submit="These were taken on it" submitKind="secondary">
            <input type="hidden" name="checkStandardId" value={standard.id} />
            <Fieldset legend="Samples that belong to no part yet">
              {open.slice(0, 60).map((group) => (
                <Checkbox
                  key={`${group.batchId} ${group.sample}`}
                  id={`sample-${group.batchId}-${group.sample}`}
                  name="samples"
                  value={`${group.batchId}\n${group.sample}`}
                  label={`${group.sample} (${counted(group.unassigned, "reading")})`}
                  hint={files.get(group.batchId)}
                />
              ))}
            </Fieldset>
          </ActionForm>
        </Disclosure>
      ) : null}
    </Entry>
  );
}
