import { Evidence } from "@/app/(catalogue)/_item/evidence.tsx";
import { ResultBlock } from "@/app/(catalogue)/_item/result-block.tsx";
import type { PlacedResult } from "@/lib/publication/leading-decision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { setAsideSentence } from "@/lib/wording/bench.ts";
import { wordsForFlag } from "@/lib/wording/flags.ts";

/** A part's results as its page would show them: number, strip, verdicts, flags, and all evidence folded. */
export function PartResults({ placed, files }: { placed: PlacedResult[]; files: Snapshot["files"] }) {
  if (placed.length === 0) return <p>No readings are on this part yet, so there is no result.</p>;
  return (
    <>
      {placed.map((each) => (
        <div key={`${each.result.element} ${each.result.quantity} ${each.result.inputsDigest}`}>
          <ResultBlock placed={each} />
          <Remarks placed={each} />
        </div>
      ))}
      <Evidence placed={placed} files={files} />
    </>
  );
}

function Remarks({ placed: { result } }: { placed: PlacedResult }) {
  const aside = setAsideSentence(result);
  if (result.flags.length === 0 && aside === null) return null;
  return (
    <ul className="small">
      {aside === null ? null : <li>{aside}</li>}
      {result.flags.map((flag) => (
        <li key={flag}>{wordsForFlag(flag).sentence}</li>
      ))}
    </ul>
  );
}
