import { Told } from "@/app/_components/as-written.tsx";
import { IntervalStrip } from "@/app/_components/interval-strip.tsx";
import { VerdictMark } from "@/app/_components/verdict.tsx";
import { type PlacedResult, verdictOf } from "@/lib/publication/leading-decision.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { resultText } from "@/lib/wording/formats.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import type { Language } from "@/lib/wording/language.ts";
import { axisNote, stripFigure, stripSentence } from "@/lib/wording/result-figures.ts";
import { verdictText } from "@/lib/wording/verdicts.ts";
import styles from "./item-view.module.css";

/** The id of a result's evidence, so that the block above can lead to it. */
export const evidenceId = ({ part, result }: PlacedResult): string =>
  `evidence-${part.id}-${result.element}-${result.quantity}-${result.inputsDigest.slice(0, 8)}`.replace(
    /[^A-Za-z0-9-]/g,
    "-",
  );

/** One part and element: its number, the strip, and how it stands to each limit that can be compared. */
export function ResultBlock({ placed, language }: { placed: PlacedResult; language: Language }) {
  const words = itemPageIn[language];
  const { part, result } = placed;
  const others = result.decisions.filter((d) => d.applies === "other-quantity").length;
  return (
    <section className={styles.result}>
      <h3>
        <Told
          text={words.elementIn(elementTitle(result.element, language), part.name)}
          own={[part.name]}
          language={language}
        />
      </h3>
      <Standing placed={placed} language={language} />
      <p className="small no-print">
        <a href={`#${evidenceId(placed)}`}>{words.readingsAndMethod}</a>
        {catalogueIn[language].notes.otherLimits(others)}
      </p>
    </section>
  );
}

/** The number, the strip and the verdicts, without a heading; `small`: the strip for one of many. */
export function Standing({
  placed,
  small = false,
  language,
}: {
  placed: PlacedResult;
  small?: boolean;
  language: Language;
}) {
  const { result } = placed;
  const compared = result.decisions.filter((d) => d.applies !== "other-quantity");
  const verdict = verdictOf(placed);
  return (
    <>
      <p className={styles.number}>{resultText(result, language)}</p>
      <IntervalStrip
        input={stripFigure(result, language)}
        sentence={stripSentence(result, language)}
        size={small ? "small" : "full"}
        axisNote={axisNote(result.unit, language)}
        language={language}
      />
      <ul className={styles.verdicts}>
        {compared.map((decision) => (
          <li key={`${decision.limitId} ${decision.day} ${decision.value}`}>
            <VerdictMark verdict={decision.verdict} />
            <span>{verdictText(decision, result, language)}</span>
          </li>
        ))}
        {compared.length === 0 && verdict ? (
          <li>
            <VerdictMark verdict={verdict} />
            <span>{catalogueIn[language].notes.noLimitOfKind}</span>
          </li>
        ) : null}
      </ul>
    </>
  );
}
