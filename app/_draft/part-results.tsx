import { Disclosure } from "@/app/_components/disclosure.tsx";
import { ReadingsChart } from "@/app/_components/readings-chart.tsx";
import { Evidence } from "@/app/(catalogue)/_item/evidence.tsx";
import { ResultBlock } from "@/app/(catalogue)/_item/result-block.tsx";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { setAsideSentence } from "@/lib/wording/bench.ts";
import { elementName } from "@/lib/wording/elements.ts";
import { wordsForFlag } from "@/lib/wording/flags.ts";
import { counted, listed } from "@/lib/wording/formats.ts";
import { liveFigureNote } from "@/lib/wording/result-figures.ts";

/**
 * A part's results as its page would show them: number, strip, verdicts, flags, and all evidence folded. What was not
 * detected is folded too, so that what was found comes first.
 */
export function PartResults({ placed, files }: { placed: PlacedResult[]; files: Snapshot["files"] }) {
  if (placed.length === 0) return <p>No readings are on this part yet, so there is no result.</p>;
  const unseen = placed.filter((p) => p.result.state === "not-detected");
  const names = [...new Set(unseen.map((p) => elementName(p.result.element)))];
  return (
    <>
      {placed
        .filter((p) => !unseen.includes(p))
        .map((each) => (
          <Result key={keyOf(each)} placed={each} />
        ))}
      {unseen.length > 0 ? (
        <Disclosure summary={`Not detected: ${listed(names)} (${counted(unseen.length, "result")})`}>
          {unseen.map((each) => (
            <Result key={keyOf(each)} placed={each} />
          ))}
        </Disclosure>
      ) : null}
      <h3>Readings and method behind each result</h3>
      <Evidence
        placed={placed}
        files={files}
        drawSpots={({ result, note: _, ...figure }) => (
          <ReadingsChart {...figure} note={liveFigureNote(result.unit)} unit={result.unit} interval={result.interval} />
        )}
      />
    </>
  );
}

const keyOf = ({ result }: PlacedResult): string => `${result.element} ${result.quantity} ${result.inputsDigest}`;

function Result({ placed }: { placed: PlacedResult }) {
  const { result } = placed;
  const aside = setAsideSentence(result);
  return (
    <div>
      <ResultBlock placed={placed} language="en" />
      {result.flags.length > 0 || aside !== null ? (
        <ul className="small">
          {aside === null ? null : <li>{aside}</li>}
          {result.flags.map((flag) => (
            <li key={flag}>{wordsForFlag(flag).sentence}</li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}
