import { DataTable } from "@/app/_components/data-table.tsx";
import type { StoredReading } from "@/lib/store/readings.ts";
import { asWritten } from "@/lib/wording/bench.ts";
import { plainDate } from "@/lib/wording/formats.ts";

/** Readings that a person set aside, whole, with the reason; the result shows its value with and without them. */
export function SetAside({ readings, partNames }: { readings: StoredReading[]; partNames: Map<string, string> }) {
  const rows = readings.filter((r) => r.setAside !== null);
  if (rows.length === 0) return <p>No reading of this item is set aside.</p>;
  return (
    <DataTable
      caption="Readings set aside"
      rows={rows}
      rowKey={(r) => r.id}
      rowNote={(r) => <>Reason: {r.setAside?.reason}</>}
      columns={[
        { key: "part", head: "Part", cell: (r) => partNames.get(r.componentId ?? "") ?? "" },
        { key: "spot", head: "Spot", cell: (r) => r.spot ?? "not named" },
        { key: "row", head: "File and row", cell: (r) => `${r.fileName}, ${r.row}` },
        {
          key: "results",
          head: "Results as written",
          cell: (r) => r.results.map((one) => `${one.element} ${asWritten(one)} ${one.unit}`).join("; "),
        },
        { key: "on", head: "Set aside on", cell: (r) => plainDate(r.setAside?.at ?? "") },
      ]}
    />
  );
}
