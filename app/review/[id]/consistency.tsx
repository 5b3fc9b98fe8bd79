import { DataTable } from "@/app/_components/data-table.tsx";
import { repeatsOf, type SpotRepeats } from "@/lib/consistency/repeats.ts";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { SnapshotReading } from "@/lib/publication/snapshot.ts";
import { asWritten } from "@/lib/wording/bench.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { listed } from "@/lib/wording/formats.ts";
import {
  betweenSpotsSentences,
  repeatHeadlines,
  repeatReasons,
  spotValueText,
  withinSpotText,
} from "@/lib/wording/repeats.ts";

/** Do repeats agree? One part and element: the verdict and why, then every spot with its readings. */
export function Consistency({ placed: { part, result } }: { placed: PlacedResult }) {
  const repeats = repeatsOf(result);
  const readings = new Map(result.readings.map((r) => [r.id, r]));
  const apart = repeats.candidates.flatMap((id) => readings.get(id) ?? []);
  return (
    <section className="flow">
      <h3>
        {elementTitle(result.element)} in {part.name}
      </h3>
      <p>
        <strong>{repeatHeadlines[repeats.verdict]}</strong>
        {repeats.reasons.map((reason) => ` ${repeatReasons[reason]}`)}
      </p>
      {repeats.spots.length > 0 ? (
        <DataTable
          caption={`Spot by spot, in ${repeats.unit} where worked out`}
          rows={repeats.spots}
          rowKey={(spot) => spot.shots.join(" ")}
          columns={[
            { key: "spot", head: "Spot", cell: (spot) => spot.spot ?? "not named" },
            { key: "readings", head: "Readings as written", cell: (spot) => writtenOf(spot, readings) },
            { key: "value", head: "The spot's value", cell: (spot) => spotValueText(spot, repeats.unit), nowrap: true },
            { key: "within", head: "Its readings among themselves", cell: withinSpotText },
          ]}
        />
      ) : null}
      <ul>
        {betweenSpotsSentences(repeats).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        {apart.length > 0 ? (
          <li>Standing apart: {listed(apart.map((r) => `${asWritten(r)} ${r.unit} (${placeOf(r)})`))}.</li>
        ) : null}
      </ul>
    </section>
  );
}

function writtenOf(spot: SpotRepeats, readings: Map<string, SnapshotReading>): string {
  const own = spot.shots.flatMap((id) => readings.get(id) ?? []);
  const units = [...new Set(own.map((r) => r.unit))];
  return units.length === 1
    ? `${own.map(asWritten).join("; ")} ${units[0]}`
    : own.map((r) => `${asWritten(r)} ${r.unit}`).join("; ");
}

const placeOf = (r: SnapshotReading): string =>
  [r.spot ?? "no spot named", r.row === null ? "by hand" : `row ${r.row}`].join(", ");
