import { DataTable } from "@/app/_components/data-table.tsx";
import { Verdict } from "@/app/_components/verdict.tsx";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { groupDigits, listed, resultText } from "@/lib/wording/formats.ts";
import { verdictText } from "@/lib/wording/verdicts.ts";
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
      <div key={`${part.specimen.id} ${part.part.id}`}>
        <h3>{title}</h3>
        {found.length > 0 ? (
          <DataTable
            caption={`Found in ${title}`}
            hideCaption
            rows={found}
            rowKey={evidenceId}
            columns={[
              {
                key: "element",
                head: "Element",
                cell: (p) => <a href={`#${evidenceId(p)}`}>{elementTitle(p.result.element)}</a>,
              },
              { key: "result", head: "Result", cell: (p) => resultText(p.result), nowrap: true },
              { key: "verdict", head: "Beside the limit", roomy: true, cell: (p) => <Beside placed={p} /> },
            ]}
          />
        ) : null}
        {unseen.length > 0 ? (
          <p>Not detected: {listed(unseen.map((p) => `${elementTitle(p.result.element)}${bound(p)}`))}.</p>
        ) : null}
      </div>
    );
  });
}

const bound = ({ result }: PlacedResult): string =>
  result.stated.below === null ? "" : ` below ${groupDigits(result.stated.below)} ${result.unit}`;

function Beside({ placed }: { placed: PlacedResult }) {
  const { decision, result } = placed;
  if (!decision) return <>no limit to compare</>;
  return <Verdict verdict={decision.verdict} words={verdictText(decision, result)} />;
}
