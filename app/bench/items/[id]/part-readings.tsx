import { ActionForm } from "@/app/_components/action-form.tsx";
import { Button } from "@/app/_components/button.tsx";
import { type Column, DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { TextField } from "@/app/_components/field.tsx";
import type { StoredReading } from "@/lib/store/readings.ts";
import { asWritten } from "@/lib/wording/bench.ts";
import { counted } from "@/lib/wording/formats.ts";
import { handleReadings } from "./actions.ts";
import styles from "./part-readings.module.css";

/** The shots on one part, spot by spot, as written; to be set aside with a reason, taken back, or taken off the part. */
export function PartReadings({ part, readings }: { part: { id: string; name: string }; readings: StoredReading[] }) {
  if (readings.length === 0) return null;
  const rows = [...readings].sort(
    (a, b) => (a.spot ?? "\uffff").localeCompare(b.spot ?? "\uffff") || a.row - b.row || (a.id < b.id ? -1 : 1),
  );
  const aside = rows.filter((r) => r.setAside !== null).length;
  return (
    <Disclosure
      summary={`Work on the readings of ${part.name}: ${rows.length}${aside > 0 ? `, ${aside} set aside` : ""}`}
    >
      <ActionForm
        action={handleReadings.bind(null, part.id)}
        submit="Set the ticked ones aside"
        submitKind="secondary"
        after={
          <>
            <Button type="submit" name="do" value="restore" formNoValidate>
              Take them back into the result
            </Button>
            <Button type="submit" name="do" value="off" kind="quiet" formNoValidate>
              Take them off this part
            </Button>
          </>
        }
      >
        <div className="flow">
          <DataTable
            caption={`Readings of ${part.name}: ${counted(new Set(rows.map((r) => r.spot ?? r.id)).size, "spot")}`}
            rows={rows}
            rowKey={(r) => r.id}
            muted={(r) => r.setAside !== null}
            rowNote={(r) => (r.setAside ? <>Set aside: {r.setAside.reason}</> : null)}
            columns={columnsOf(rows)}
          />
          <TextField
            id={`${part.id}-reason`}
            name="reason"
            label="Why they are set aside"
            hint="At least 8 characters. The reason is published, and so are the readings, with the value they would have made."
            maxLength={400}
            width={44}
          />
        </div>
      </ActionForm>
    </Disclosure>
  );
}

function columnsOf(rows: StoredReading[]): Column<StoredReading>[] {
  const results = rows.flatMap((r) => r.results);
  const heads = [...new Set(results.map((r) => `${r.element} (${r.unit})`))].sort();
  const files = [...new Set(rows.map((r) => r.fileName))];
  return [
    {
      key: "tick",
      head: "Ticked",
      cell: (r) => (
        <input
          type="checkbox"
          className={styles.box}
          name="readingId"
          value={r.id}
          aria-label={`${r.spot ?? "no spot named"}, row ${r.row}${r.number ? `, reading ${r.number}` : ""}`}
        />
      ),
    },
    { key: "spot", head: "Spot", cell: (r) => r.spot ?? "not named", rowHeader: true },
    {
      key: "row",
      head: files.length > 1 ? "File and row" : "Row",
      nowrap: true,
      cell: (r) => (files.length > 1 ? `${files.indexOf(r.fileName) + 1}, ${r.row}` : r.row),
    },
    ...heads.map(
      (head): Column<StoredReading> => ({
        key: head,
        head,
        numeric: true,
        cell: (r) =>
          r.results
            .filter((one) => `${one.element} (${one.unit})` === head)
            .map(asWritten)
            .join("; "),
      }),
    ),
    { key: "seconds", head: "Seconds", numeric: true, cell: (r) => r.secondsCounted ?? "–" },
    { key: "taken", head: "Taken", nowrap: true, cell: (r) => r.takenAt?.replace("T", " ") ?? r.takenAtText ?? "–" },
  ];
}
