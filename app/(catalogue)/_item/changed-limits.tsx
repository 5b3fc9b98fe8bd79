import { Entry } from "@/app/_components/entry.tsx";
import { changesFor, type FamilyChange } from "@/lib/limits/changes-for.ts";
import { subjectOf } from "@/lib/limits/subject-of.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import type { QuantityKind } from "@/lib/quantity/kinds.ts";
import { elementName } from "@/lib/wording/elements.ts";
import { listed } from "@/lib/wording/formats.ts";
import { changeSentence, changesLead, changesPanel, noChange } from "@/lib/wording/limit-changes.ts";

export type ToldChange = { change: FamilyChange; about: string[] };

/** Each change once, with the parts and elements it is about. */
export function changedSince(snapshot: Snapshot, placed: readonly PlacedResult[], today: string): ToldChange[] {
  const told = new Map<string, ToldChange>();
  for (const { specimen, part, result } of placed) {
    const subject = subjectOf({ item: snapshot.item, specimen, part });
    const kind = result.quantity as QuantityKind;
    for (const change of changesFor(subject, kind, result.element, snapshot.testedOn, today)) {
      const key = `${change.family} ${change.on} ${change.applies}`;
      const about = `${elementName(result.element)} in ${part.name}`;
      const known = told.get(key);
      if (!known) told.set(key, { change, about: [about] });
      else if (!known.about.includes(about)) known.about.push(about);
    }
  }
  return [...told.values()].sort((a, b) => (a.change.on < b.change.on ? -1 : a.change.on > b.change.on ? 1 : 0));
}

/** Which limits for these parts and elements changed since the test, worked out from the dates of the limits on the day of reading. */
export function ChangedLimits({
  snapshot,
  placed,
  today,
}: {
  snapshot: Snapshot;
  placed: readonly PlacedResult[];
  today: string;
}) {
  const told = changedSince(snapshot, placed, today);
  return (
    <Entry title={changesPanel.title} id="limits-since">
      {told.length === 0 ? <p>{noChange(snapshot.testedOn, today)}</p> : <p>{changesLead(snapshot.testedOn)}</p>}
      {told.length > 0 ? (
        <ul>
          {told.map(({ change, about }) => {
            const limit = change.after ?? change.before;
            return (
              <li key={`${change.family} ${change.on} ${change.applies}`}>
                {limit ? <a href={paths.limit(limit.id)}>{changeSentence(change)}</a> : changeSentence(change)} For{" "}
                {listed(about)}.
              </li>
            );
          })}
        </ul>
      ) : null}
      <p className="soft small">{changesPanel.caution}</p>
    </Entry>
  );
}
