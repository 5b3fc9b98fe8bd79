import { Told } from "@/app/_components/as-written.tsx";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { catalogueIn, reviewText } from "@/lib/wording/catalogue.ts";
import { elementName } from "@/lib/wording/elements.ts";
import { wordsForFlag } from "@/lib/wording/flags.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import { labelOf, labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { sessionsIn } from "@/lib/wording/sessions.ts";

/** What bears on the leading result's certainty, in sentences: how much was measured, the flags, the instrument, the review. */
export function LeadFlags({
  placed,
  snapshot,
  language,
}: {
  placed: PlacedResult;
  snapshot: Snapshot;
  language: Language;
}) {
  const { counts, flags, fitness, element } = placed.result;
  return (
    <>
      <p>
        <Told
          text={catalogueIn[language].notes.restsOn(counts.used, counts.spots, placed.part.name)}
          own={[placed.part.name]}
          language={language}
        />
      </p>
      <ul>
        {flags.map((flag) => (
          <li key={flag}>{wordsForFlag(flag, language).sentence}</li>
        ))}
        {fitness && snapshot.sessions ? (
          <li>
            {sessionsIn[language].fitness[fitness](elementName(element, language))}{" "}
            <a href="#fitness">{itemPageIn[language].seeChecks}</a>.
          </li>
        ) : (
          snapshot.instruments.map((instrument) => (
            <li key={instrument.serial}>
              {instrument.name}: {labelOf(labelsIn[language].fitness, instrument.fitness).toLowerCase()}.
            </li>
          ))
        )}
        <li>{reviewText(snapshot.review, language)}.</li>
      </ul>
    </>
  );
}
