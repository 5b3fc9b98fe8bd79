import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { type Repeats, repeatsOf, type SpotRepeats } from "@/lib/consistency/repeats.ts";
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
import { repeatsCount } from "@/lib/wording/review.ts";

/** Do repeats agree? What does not, or cannot be said, stands open; what agrees is folded, each with its verdict in the fold. */
export function Consistency({ placed }: { placed: PlacedResult[] }) {
  const judged = placed.map((each) => ({ placed: each, repeats: repeatsOf(each.result) }));
  const key = ({ placed: { part, result } }: Judged) => `${part.id} ${result.inputsDigest}`;
  const agreeing = judged.filter((each) => each.repeats.verdict === "agree");
  return (
    <>
      <p>{repeatsCount(judged.map((each) => each.repeats.verdict))}.</p>
      {judged
        .filter((each) => !agreeing.includes(each))
        .map((each) => (
          <section key={key(each)} className="flow">
            <h3>{titleOf(each)}</h3>
            <OneResult {...each} />
          </section>
        ))}
      <div>
        {agreeing.map((each) => (
          <Disclosure key={key(each)} summary={`${titleOf(each)}: ${repeatHeadlines.agree.toLowerCase()}`}>
            <OneResult {...each} />
          </Disclosure>
        ))}
      </div>
    </>
  );
}

type Judged = { placed: PlacedResult; repeats: Repeats };

const titleOf = ({ placed: { part, result } }: Judged): string => `${elementTitle(result.element)} in ${part.name}`;

/** One part and element: the verdict and why, then every spot with its readings. */
function OneResult({ placed: { result }, repeats }: Judged) {
  const readings = new Map(result.readings.map((r) => [r.id, r]));
  const apart = repeats.candidates.flatMap((id) => readings.get(id) ?? []);
  return (
    <>
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
            { key: "readings", head: "Readings as written", roomy: true, cell: (spot) => writtenOf(spot, readings) },
            { key: "value", head: "The spot's value", cell: (spot) => spotValueText(spot, repeats.unit), nowrap: true },
            { key: "within", head: "Its readings among themselves", roomy: true, cell: withinSpotText },
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
    </>
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
