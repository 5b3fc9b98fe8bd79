import type { ReactNode } from "react";
import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { Aligned, type Column, DataTable } from "@/app/_components/data-table.tsx";
import type { Snapshot, SnapshotReading, SnapshotResult } from "@/lib/publication/snapshot.ts";
import { numberText } from "@/lib/wording/formats.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import type { Language } from "@/lib/wording/language.ts";
import { asideReason } from "@/lib/wording/sessions.ts";

const most = (decimals: (number | undefined)[]): number => Math.max(0, ...decimals.map((each) => each ?? 0));

const valueText = (reading: SnapshotReading, notDetected: string): string => {
  if (!reading.belowDetection) return reading.value?.text ?? "";
  const limit = reading.detectionLimit?.text;
  return limit ? `< ${limit.replace(/^<\s*/, "")}` : notDetected;
};

/** Every reading of a result as the file wrote it, used or not; a reading set aside carries its reason under it. */
export function ReadingsTable({
  result,
  files,
  caption,
  language,
}: {
  result: SnapshotResult;
  files: Snapshot["files"];
  caption: ReactNode;
  language: Language;
}) {
  const words = itemPageIn[language].readings;
  const written = (text: string | null) => asWritten(text, language);
  const { readings } = result;
  const units = [...new Set(readings.map((reading) => reading.unit))];
  const unit = units.length === 1 ? units[0] : null;
  const valueDecimals = most(readings.map((r) => (r.belowDetection ? r.detectionLimit?.decimals : r.value?.decimals)));
  const errorDecimals = most(readings.map((r) => r.error?.decimals));
  const ks = [...new Set(readings.flatMap((reading) => (reading.error ? [reading.k] : [])))];
  const errorHead = ks.length === 1 && ks[0] !== null ? `${words.error} (${ks[0]} × u)` : words.error;
  const fileNumber = new Map(files.map((file, index) => [file.sha256, index + 1]));

  const columns: (Column<SnapshotReading> | null)[] = [
    {
      key: "row",
      head: files.length > 1 ? words.fileAndRow : words.row,
      cell: (r) =>
        r.row === null
          ? words.byHand
          : files.length > 1 && r.file !== null
            ? `${fileNumber.get(r.file) ?? "?"}, ${r.row}`
            : r.row,
    },
    readings.some((r) => r.number !== null) ? { key: "number", head: words.number, cell: (r) => r.number ?? "" } : null,
    { key: "spot", head: words.spot, cell: (r) => written(r.spot) ?? words.notNamed },
    {
      key: "value",
      head: unit ? `${words.value} (${unit})` : words.value,
      numeric: true,
      struck: true,
      cell: (r) => (
        <>
          <Aligned text={valueText(r, words.notDetected)} decimals={valueDecimals} />
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
      ? { key: "seconds", head: words.seconds, numeric: true, cell: (r) => r.secondsCounted ?? "–" }
      : null,
    readings.some((r) => r.mode !== null)
      ? { key: "mode", head: words.mode, cell: (r) => written(r.mode) ?? "–" }
      : null,
    readings.some((r) => r.takenAt !== null || r.takenAtText !== null)
      ? {
          key: "taken",
          head: words.taken,
          nowrap: true,
          cell: (r) => (r.takenAt ? r.takenAt.replace("T", " ") : (r.takenAtText ?? "–")),
        }
      : null,
    readings.some((r) => r.factor !== undefined)
      ? {
          key: "factor",
          head: words.corrected,
          numeric: true,
          cell: (r) =>
            r.factor === undefined
              ? "–"
              : `× ${language === "en" ? r.factor.toPrecision(4) : numberText(r.factor, 4, language)}`,
        }
      : null,
    { key: "used", head: words.used, nowrap: true, cell: (r) => (r.setAside ? words.setAside : words.yes) },
  ];
  return (
    <DataTable
      caption={caption}
      rows={readings}
      rowKey={(r) => r.id}
      muted={(r) => r.setAside !== null}
      rowNote={(r) =>
        r.setAside ? (
          <Told
            text={words.setAsideWhy(asideReason(r.setAside.reason, language))}
            own={[r.setAside.reason]}
            language={language}
          />
        ) : null
      }
      columns={columns.filter((column) => column !== null)}
    />
  );
}
