import type { Draft } from "@/app/_draft/load-draft.ts";
import { type CheckSeries, checkSeries } from "@/lib/consistency/check-series.ts";
import { compareRetest } from "@/lib/consistency/compare-retest.ts";
import {
  type LevelsCompared,
  type PartConsistency,
  partConsistency,
  type ShotPlace,
} from "@/lib/consistency/part-consistency.ts";
import { sha256 } from "@/lib/platform/sha256.ts";
import type { AssessedPart, AssessedResult } from "@/lib/publication/assess-item.ts";
import { checkedSittings } from "@/lib/store/checked-sittings.ts";
import { database } from "@/lib/store/database.ts";

/** One result of the item that the page can be about, and how its address names it. */
export type Choice = { key: string; specimen: string; part: AssessedPart; result: AssessedResult };

export const choicesOf = ({ assessed }: Draft): Choice[] =>
  assessed.specimens.flatMap((specimen) =>
    specimen.parts.flatMap((part) =>
      part.results.map((result) => {
        const { element, quantity } = result.reconciled;
        const key = [part.id, element, quantity, result.mode ?? ""].join(":");
        return { key, specimen: specimen.label, part, result };
      }),
    ),
  );

const threeWeeks = 21 * 24 * 3600 * 1000;

export type LoadedConsistency = {
  consistency: PartConsistency;
  /** The same part of other objects, held beside this one. */
  objects: LevelsCompared[];
  series: CheckSeries[];
};

/** All that one result's page of consistency shows. */
export async function loadConsistency(
  draft: Draft,
  choice: Choice,
  all: readonly Choice[],
): Promise<LoadedConsistency> {
  const { input } = choice.result;
  if (!input) throw new Error("A result of the bench carries what it was made from.");
  return {
    consistency: partConsistency(input, placesOf(draft, choice), sha256),
    objects: otherObjects(choice, all),
    series: await seriesAround(draft, choice),
  };
}

function placesOf({ record, loadedBy }: Draft, { specimen, part }: Choice): Map<string, ShotPlace> {
  const instruments = new Map(record.instruments.map((i) => [i.id, i.name]));
  const sessions = new Map((record.assess.sessions ?? []).map((s) => [s.id, s]));
  const people = new Map(loadedBy.map((p) => [p.id, p.name]));
  return new Map(
    record.readings
      .filter((r) => r.componentId === part.id)
      .map((r): [string, ShotPlace] => {
        const session = sessions.get(r.sessionId ?? "");
        const instrument = instruments.get(r.instrumentId ?? "") ?? session?.instrument.name ?? r.serial;
        const day = r.takenAt?.slice(0, 10) ?? r.takenOn;
        return [
          r.id,
          {
            specimen,
            instrument,
            operator: r.operator ?? session?.operator ?? people.get(r.createdById) ?? null,
            // Where no session is written down, a day with one analyser is taken for one.
            session: session
              ? `${session.label}, ${session.startedAt.slice(11, 16)}`
              : day && [instrument, day].join(", "),
            spot: r.spot,
          },
        ];
      }),
  );
}

/** A part of the same name on another object of the item, measured for the same in the same mode. */
function otherObjects(choice: Choice, all: readonly Choice[]): LevelsCompared[] {
  const one = choice.result.reconciled;
  return all
    .filter(
      (other) =>
        other.part.id !== choice.part.id &&
        other.part.name === choice.part.name &&
        other.result.mode === choice.result.mode &&
        other.result.reconciled.element === one.element &&
        other.result.reconciled.quantity === one.quantity,
    )
    .map((other) => ({
      factor: "specimen",
      a: choice.specimen,
      b: other.specimen,
      compared: compareRetest({ ...one, instruments: [] }, { ...other.result.reconciled, instruments: [] }),
    }));
}

/** The check standards for this element and mode, by the same analysers, three weeks before and after. */
async function seriesAround({ record }: Draft, { part, result }: Choice): Promise<CheckSeries[]> {
  const own = record.readings.filter((r) => r.componentId === part.id);
  const times = own.flatMap((r) => (r.takenAt ? [Date.parse(r.takenAt)] : []));
  if (times.length === 0) return [];
  const sittings = await checkedSittings(database(), {
    instrumentIds: [...new Set(own.flatMap((r) => r.instrumentId ?? []))],
    from: new Date(Math.min(...times) - threeWeeks).toISOString(),
    to: new Date(Math.max(...times) + threeWeeks).toISOString(),
  });
  return checkSeries(sittings).filter((s) => s.element === result.reconciled.element && s.mode === result.mode);
}
