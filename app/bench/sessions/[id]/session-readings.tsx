import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry } from "@/app/_components/entry.tsx";
import { doubtedElements } from "@/lib/consistency/session-fitness.ts";
import { database } from "@/lib/store/database.ts";
import { partLabels } from "@/lib/store/items-at-bench.ts";
import type { StoredReading } from "@/lib/store/readings.ts";
import { type CheckedSession, standardReading } from "@/lib/store/sessions.ts";
import { counted, listed } from "@/lib/wording/formats.ts";
import { clockOf } from "@/lib/wording/sessions.ts";

/** Every reading of the session in order of time, what it was taken on, and whether it is in doubt. */
export async function SessionReadings({ checked, readings }: { checked: CheckedSession; readings: StoredReading[] }) {
  const { session, fitness } = checked;
  const parts = await partLabels(
    database(),
    readings.flatMap(({ componentId }) => componentId ?? []),
  );
  const standards = new Map(checked.standards.map((s) => [s.id, s.name]));
  const rows = readings
    .map((reading) => {
      const right = standardReading(reading, session.clockShiftMinutes);
      const isCheck = reading.checkStandardId !== null;
      return { reading, at: right.takenAt, doubted: isCheck ? [] : doubtedElements(fitness, right), isCheck };
    })
    .sort((a, b) => Date.parse(a.at ?? "") - Date.parse(b.at ?? ""));
  const shifted = session.clockShiftMinutes !== 0;
  if (rows.length === 0)
    return (
      <Entry title="Readings" id="readings">
        <p>None yet. They join by their times when their file is loaded.</p>
      </Entry>
    );
  return (
    <Entry title="Readings" id="readings" aside={counted(rows.length, "reading")}>
      <Disclosure summary="Every reading in order of time">
        <DataTable
          caption="Readings of this session"
          hideCaption
          rows={rows}
          rowKey={(r) => r.reading.id}
          columns={[
            {
              key: "time",
              head: shifted ? "Time, put right" : "Time",
              nowrap: true,
              cell: (r) => (r.at ? clockOf(r.at) : "–"),
            },
            ...(shifted
              ? [
                  {
                    key: "written",
                    head: "As written",
                    nowrap: true,
                    cell: (r: (typeof rows)[number]) => r.reading.takenAtText ?? "–",
                  },
                ]
              : []),
            { key: "number", head: "No.", cell: (r) => r.reading.number ?? "" },
            { key: "sample", head: "Sample as written", rowHeader: true, cell: (r) => r.reading.sample ?? "not named" },
            { key: "mode", head: "Mode", cell: (r) => r.reading.mode ?? "" },
            {
              key: "on",
              head: "Taken on",
              roomy: true,
              cell: (r) =>
                r.isCheck
                  ? `check standard ${standards.get(r.reading.checkStandardId ?? "") ?? ""}`
                  : (parts.get(r.reading.componentId ?? "") ?? "no part yet"),
            },
            {
              key: "doubt",
              head: "In doubt for",
              cell: (r) => (r.doubted.length > 0 ? listed(r.doubted) : "–"),
            },
          ]}
        />
      </Disclosure>
    </Entry>
  );
}
