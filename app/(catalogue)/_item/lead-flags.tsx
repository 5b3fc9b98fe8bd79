import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { restsOn, reviewText } from "@/lib/wording/catalogue.ts";
import { elementName } from "@/lib/wording/elements.ts";
import { wordsForFlag } from "@/lib/wording/flags.ts";
import { fitnessLabels, labelOf } from "@/lib/wording/labels.ts";
import { fitnessSentence } from "@/lib/wording/sessions.ts";

/** What bears on the leading result's certainty, in sentences: how much was measured, the flags, the instrument, the review. */
export function LeadFlags({ placed, snapshot }: { placed: PlacedResult; snapshot: Snapshot }) {
  const { counts, flags, fitness, element } = placed.result;
  return (
    <>
      <p>{restsOn(counts.used, counts.spots, placed.part.name)}</p>
      <ul>
        {flags.map((flag) => (
          <li key={flag}>{wordsForFlag(flag).sentence}</li>
        ))}
        {fitness && snapshot.sessions ? (
          <li>
            {fitnessSentence[fitness](elementName(element))} <a href="#fitness">See the checks</a>.
          </li>
        ) : (
          snapshot.instruments.map((instrument) => (
            <li key={instrument.serial}>
              {instrument.name}: {labelOf(fitnessLabels, instrument.fitness).toLowerCase()}.
            </li>
          ))
        )}
        <li>{reviewText(snapshot.review)}.</li>
      </ul>
    </>
  );
}
