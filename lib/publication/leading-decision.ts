import type { Snapshot, SnapshotDecision, SnapshotPart, SnapshotResult } from "./snapshot.ts";

export type Verdict = SnapshotDecision["verdict"];

/** Most pressing first: what a reader must hear before anything else. */
const pressing: readonly Verdict[] = ["above", "too-close", "cannot-say", "below", "not-detected"];
const rank = (verdict: Verdict): number => pressing.indexOf(verdict);

/**
 * The decision a page leads with: among the limits that apply the most pressing verdict (above, too close, cannot say,
 * below, not detected), the lowest limit where verdicts are equal; only where none applies, the same among those held beside it for
 * reference. Limits of another quantity never lead. Null where nothing can be compared.
 */
export function leadingDecision(result: SnapshotResult): SnapshotDecision | null {
  const applying = result.decisions.filter((d) => d.applies === "applies");
  const reference = result.decisions.filter((d) => d.applies === "for-reference");
  const candidates = applying.length > 0 ? applying : reference;
  return candidates.reduce<SnapshotDecision | null>((best, d) => {
    if (best === null || rank(d.verdict) < rank(best.verdict)) return d;
    const lower = (d.value ?? Number.POSITIVE_INFINITY) < (best.value ?? Number.POSITIVE_INFINITY);
    return rank(d.verdict) === rank(best.verdict) && lower ? d : best;
  }, null);
}

/** A result with the part it belongs to and the decision it leads with. */
export type PlacedResult = {
  specimen: Snapshot["specimens"][number];
  part: SnapshotPart;
  result: SnapshotResult;
  decision: SnapshotDecision | null;
};

/** Verdict of a result: its leading decision's, or "not-detected" where nothing was found and nothing compared. */
export const verdictOf = (placed: Pick<PlacedResult, "result" | "decision">): Verdict | null =>
  placed.decision?.verdict ?? (placed.result.state === "not-detected" ? "not-detected" : null);

/**
 * Every result of the snapshot, the one to lead with first: limits that apply before those for reference, then the
 * more pressing verdict, then the larger share of its limit, then the order of the snapshot.
 */
export function resultsByWeight(snapshot: Snapshot): PlacedResult[] {
  const placed = snapshot.specimens.flatMap((specimen) =>
    specimen.parts.flatMap((part) =>
      part.results.map((result) => ({ specimen, part, result, decision: leadingDecision(result) })),
    ),
  );
  return placed
    .map((p, order) => ({ p, order, weight: weightOf(p) }))
    .sort((a, b) => compareWeights(a.weight, b.weight) || a.order - b.order)
    .map(({ p }) => p);
}

type Weight = [place: number, verdict: number, share: number];

function weightOf(placed: PlacedResult): Weight {
  const { decision, result } = placed;
  const verdict = verdictOf(placed);
  const size = result.value ?? result.upperBound ?? result.below ?? 0;
  return [
    decision?.applies === "applies" ? 0 : 1,
    verdict === null ? pressing.length : rank(verdict),
    decision?.value ? -size / decision.value : 0,
  ];
}

const compareWeights = (a: Weight, b: Weight): number => a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
