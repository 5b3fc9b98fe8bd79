import { Told } from "@/app/_components/as-written.tsx";
import { Entry } from "@/app/_components/entry.tsx";
import { PageLink } from "@/app/_components/page-link.tsx";
import { changesFor, type FamilyChange } from "@/lib/limits/changes-for.ts";
import { subjectOf } from "@/lib/limits/subject-of.ts";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import type { QuantityKind } from "@/lib/quantity/kinds.ts";
import { elementName } from "@/lib/wording/elements.ts";
import { listed } from "@/lib/wording/formats.ts";
import type { Language } from "@/lib/wording/language.ts";
import { changeSentence, changesLead, changesPanelIn, noChange } from "@/lib/wording/limit-changes.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";

export type ToldChange = { change: FamilyChange; about: string[] };

/** Each change once, with the parts and elements it is about. */
export function changedSince(
  snapshot: Snapshot,
  placed: readonly PlacedResult[],
  today: string,
  language: Language = "en",
): ToldChange[] {
  const told = new Map<string, ToldChange>();
  for (const { specimen, part, result } of placed) {
    const subject = subjectOf({ item: snapshot.item, specimen, part });
    const kind = result.quantity as QuantityKind;
    for (const change of changesFor(subject, kind, result.element, snapshot.testedOn, today)) {
      const key = `${change.family} ${change.on} ${change.applies}`;
      const about = changesPanelIn[language].elementIn(elementName(result.element, language), part.name);
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
  language = "en",
}: {
  snapshot: Snapshot;
  placed: readonly PlacedResult[];
  today: string;
  language?: Language;
}) {
  const told = changedSince(snapshot, placed, today, language);
  const [paths, words] = [pathsIn[language], changesPanelIn[language]];
  const parts = placed.map(({ part }) => part.name);
  return (
    <Entry title={words.title} id="limits-since">
      {told.length === 0 ? (
        <p>{noChange(snapshot.testedOn, today, language)}</p>
      ) : (
        <p>{changesLead(snapshot.testedOn, language)}</p>
      )}
      {told.length > 0 ? (
        <ul>
          {told.map(({ change, about }) => {
            const limit = change.after ?? change.before;
            return (
              <li key={`${change.family} ${change.on} ${change.applies}`}>
                {limit ? (
                  <PageLink href={paths.limit(limit.id)} language={language}>
                    {changeSentence(change, language)}
                  </PageLink>
                ) : (
                  changeSentence(change, language)
                )}{" "}
                <Told text={words.about(listed(about, language))} own={parts} language={language} />
              </li>
            );
          })}
        </ul>
      ) : null}
      <p className="soft small">{words.caution}</p>
    </Entry>
  );
}
