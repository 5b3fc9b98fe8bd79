import { DataTable } from "@/app/_components/data-table.tsx";
import { Verdict } from "@/app/_components/verdict.tsx";
import { evidenceId } from "@/app/(catalogue)/_item/result-block.tsx";
import { type PlacedResult, verdictOf } from "@/lib/publication/leading-decision.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { wordsForFlag } from "@/lib/wording/flags.ts";
import { resultText } from "@/lib/wording/formats.ts";
import { limitBeside, verdictWords } from "@/lib/wording/verdicts.ts";

/** Every result in one table, the one the page would lead with first. */
export function ResultSummary({ placed }: { placed: PlacedResult[] }) {
  return (
    <DataTable
      caption="Worked out from the readings as they stand, most pressing first"
      rows={placed}
      rowKey={(p) => `${evidenceId(p)} ${p.result.inputsDigest}`}
      columns={[
        {
          key: "what",
          head: "Part and element",
          roomy: true,
          cell: (p) => (
            <a href={`#part-${p.part.id}`}>
              {p.part.name}: {elementTitle(p.result.element)}
            </a>
          ),
        },
        { key: "value", head: "Value", roomy: true, cell: (p) => resultText(p.result) },
        { key: "verdict", head: "Verdict", roomy: true, cell: (p) => <LeadingVerdict placed={p} /> },
        {
          key: "flags",
          head: "Bear in mind",
          roomy: true,
          cell: (p) => p.result.flags.map((flag) => wordsForFlag(flag).label).join("; ") || "–",
        },
      ]}
    />
  );
}

function LeadingVerdict({ placed }: { placed: PlacedResult }) {
  const verdict = verdictOf(placed);
  if (verdict === null) return <>no limit to compare with</>;
  return (
    <>
      <Verdict verdict={verdict} words={verdictWords[verdict]} />
      {placed.decision ? <div className="small soft">{limitBeside(placed.decision)}</div> : null}
    </>
  );
}
