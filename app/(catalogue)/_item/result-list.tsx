import { Verdict } from "@/app/_components/verdict.tsx";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { groupDigits, listed, resultText } from "@/lib/wording/formats.ts";
import { verdictText } from "@/lib/wording/verdicts.ts";
import styles from "./item-view.module.css";
import { partTitle, samePart } from "./part-title.ts";
import { evidenceId } from "./result-block.tsx";

/** Every result of an item, part by part: what was found a row each, what was not detected together in one. */
export function ResultList({ placed, several }: { placed: PlacedResult[]; several: boolean }) {
  const parts = placed.filter((p, at) => placed.findIndex((other) => samePart(p, other)) === at);
  return parts.map((part) => {
    const mine = placed.filter((p) => samePart(p, part));
    const found = mine.filter((p) => p.result.state !== "not-detected");
    const unseen = mine.filter((p) => p.result.state === "not-detected");
    const title = partTitle(part, several);
    return (
      <section key={`${part.specimen.id} ${part.part.id}`} className={styles.result}>
        <h3>{title}</h3>
        {found.length > 0 ? (
          <ul className={styles.found}>
            {found.map((each) => (
              <li key={evidenceId(each)}>
                <p>
                  <a href={`#${evidenceId(each)}`}>{elementTitle(each.result.element)}</a>{" "}
                  <span className={styles.amount}>{resultText(each.result)}</span>
                </p>
                <Beside placed={each} />
              </li>
            ))}
          </ul>
        ) : null}
        {unseen.length > 0 ? (
          <p>Not detected: {listed(unseen.map((p) => `${elementTitle(p.result.element)}${bound(p)}`))}.</p>
        ) : null}
      </section>
    );
  });
}

const bound = ({ result }: PlacedResult): string =>
  result.stated.below === null ? "" : ` below ${groupDigits(result.stated.below)} ${result.unit}`;

function Beside({ placed }: { placed: PlacedResult }) {
  const { decision, result } = placed;
  if (!decision) return <p className="soft">no limit to compare</p>;
  return <Verdict verdict={decision.verdict} words={verdictText(decision, result)} />;
}
