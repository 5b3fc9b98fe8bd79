import { asWritten } from "@/app/_components/as-written.tsx";
import { Verdict } from "@/app/_components/verdict.tsx";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { listed, resultText, withUnit } from "@/lib/wording/formats.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import type { Language } from "@/lib/wording/language.ts";
import { verdictText } from "@/lib/wording/verdicts.ts";
import styles from "./item-view.module.css";
import { partTitle, samePart } from "./part-title.ts";
import { evidenceId } from "./result-block.tsx";

/** Every result of an item, part by part: what was found a row each, what was not detected together in one. */
export function ResultList({
  placed,
  several,
  language,
}: {
  placed: PlacedResult[];
  several: boolean;
  language: Language;
}) {
  const words = itemPageIn[language];
  const parts = placed.filter((p, at) => placed.findIndex((other) => samePart(p, other)) === at);
  return parts.map((part) => {
    const mine = placed.filter((p) => samePart(p, part));
    const found = mine.filter((p) => p.result.state !== "not-detected");
    const unseen = mine.filter((p) => p.result.state === "not-detected");
    const title = partTitle(part, several);
    return (
      <section key={`${part.specimen.id} ${part.part.id}`} className={styles.result}>
        <h3>{asWritten(title, language)}</h3>
        {found.length > 0 ? (
          <ul className={styles.found}>
            {found.map((each) => (
              <li key={evidenceId(each)}>
                <p>
                  <a href={`#${evidenceId(each)}`}>{elementTitle(each.result.element, language)}</a>{" "}
                  <span className={styles.amount}>{resultText(each.result, language)}</span>
                </p>
                <Beside placed={each} language={language} />
              </li>
            ))}
          </ul>
        ) : null}
        {unseen.length > 0 ? (
          <p>
            {words.notDetected(
              listed(
                unseen.map((p) => `${elementTitle(p.result.element, language)}${bound(p, language)}`),
                language,
              ),
            )}
          </p>
        ) : null}
      </section>
    );
  });
}

const bound = ({ result }: PlacedResult, language: Language): string =>
  result.stated.below === null
    ? ""
    : itemPageIn[language].boundBeside(withUnit(result.stated.below, result.unit, language));

function Beside({ placed, language }: { placed: PlacedResult; language: Language }) {
  const { decision, result } = placed;
  if (!decision) return <p className="soft">{itemPageIn[language].noLimit}</p>;
  return <Verdict verdict={decision.verdict} words={verdictText(decision, result, language)} />;
}
