import { Aligned, type Column, DataTable } from "@/app/_components/data-table.tsx";
import type { Snapshot, SnapshotReading, SnapshotResult } from "@/lib/publication/snapshot.ts";
import { asideReason } from "@/lib/wording/sessions.ts";

const most = (decimals: (number | undefined)[]): number => Math.max(0, ...decimals.map((each) => each ?? 0));

const valueText = (reading: SnapshotReading): string => {
  if (!reading.belowDetection) return reading.value?.text ?? "";
  const limit = reading.detectionLimit?.text;
  return limit ? `< ${limit.replace(/^<\s*/, "")}` : "not detected";
};

/** Every reading of a result as the file wrote it, used or not; a reading set aside carries its reason under it. */
export function ReadingsTable({
  result,
  files,
  subject,
}: {
  result: SnapshotResult;
  files: Snapshot["files"];
  subject: string;
}) {
  const { readings } = result;
  const units = [...new Set(readings.map((reading) => reading.unit))];
  const unit = units.length === 1 ? units[0] : null;
  const valueDecimals = most(readings.map((r) => (r.belowDetection ? r.detectionLimit?.decimals : r.value?.decimals)));
  const errorDecimals = most(readings.map((r) => r.error?.decimals));
  const ks = [...new Set(readings.flatMap((reading) => (reading.error ? [reading.k] : [])))];
  const errorHead = ks.length === 1 && ks[0] !== null ? `Error as written (${ks[0]} × u)` : "Error as written";
  const fileNumber = new Map(files.map((file, index) => [file.sha256, index + 1]));

  const columns: (Column<SnapshotReading> | null)[] = [
    {
      key: "row",
      head: files.length > 1 ? "File and row" : "Row",
      cell: (r) =>
        r.row === null
          ? "by hand"
          : files.length > 1 && r.file !== null
            ? `${fileNumber.get(r.file) ?? "?"}, ${r.row}`
            : r.row,
    },
    readings.some((r) => r.number !== null) ? { key: "number", head: "No.", cell: (r) => r.number ?? "" } : null,
    { key: "spot", head: "Spot", cell: (r) => r.spot ?? "not named" },
    {
      key: "value",
      head: unit ? `Value as written (${unit})` : "Value as written",
      numeric: true,
      struck: true,
      cell: (r) => (
        <>
          <Aligned text={valueText(r)} decimals={valueDecimals} />
          {unit ? null : ` ${r.unit}`}
        </>
      ),
    },
    {
      key: "error",
      head: errorHead,
      numeric: true,
      struck: true,
      cell: (r) =>
        r.error ? (
          <>
            <Aligned text={r.error.text} decimals={errorDecimals} />
            {ks.length > 1 && r.k !== null ? ` (${r.k} × u)` : null}
          </>
        ) : (
          "–"
        ),
    },
    readings.some((r) => r.secondsCounted !== null)
      ? { key: "seconds", head: "Seconds", numeric: true, cell: (r) => r.secondsCounted ?? "–" }
      : null,
    readings.some((r) => r.mode !== null) ? { key: "mode", head: "Mode", cell: (r) => r.mode ?? "–" } : null,
    readings.some((r) => r.takenAt !== null || r.takenAtText !== null)
      ? {
          key: "taken",
          head: "Taken",
          nowrap: true,
          cell: (r) => (r.takenAt ? r.takenAt.replace("T", " ") : (r.takenAtText ?? "–")),
        }
      : null,
    readings.some((r) => r.factor !== undefined)
      ? {
          key: "factor",
          head: "Corrected by",
          numeric: true,
          cell: (r) => (r.factor === undefined ? "–" : `× ${r.factor.toPrecision(4)}`),
        }
      : null,
    { key: "used", head: "Used", nowrap: true, cell: (r) => (r.setAside ? "set aside" : "yes") },
  ];
  return (
    <DataTable
      caption={`Readings: ${subject}`}
      rows={readings}
      rowKey={(r) => r.id}
      muted={(r) => r.setAside !== null}
      rowNote={(r) => (r.setAside ? `Set aside: ${asideReason(r.setAside.reason)}` : null)}
      columns={columns.filter((column) => column !== null)}
    />
  );
}
