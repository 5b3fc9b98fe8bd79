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

/**
 * The limit that a part which shows nothing leaves open: the lowest of those that lead (see `leadingDecision`) whose number its bound does
 * not pass. Null where there is none; a limit of a sum is not one element's to settle.
 */
export function openNonDetect(result: SnapshotResult): SnapshotDecision | null {
  const own = result.decisions.filter((d) => (d.element ?? result.element) === result.element);
  const applying = own.filter((d) => d.applies === "applies");
  const open = (applying.length > 0 ? applying : own.filter((d) => d.applies === "for-reference")).filter(
    (d) => d.verdict === "not-detected" && d.value !== null,
  );
  return open.reduce<SnapshotDecision | null>((low, d) => (low === null || d.value! < low.value! ? d : low), null);
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
 * Every result of the snapshot, the one to lead with first. What a reader must not miss comes before what is in order:
 *   0 above a limit that applies      1 too close to one             2 above a limit held beside it for reference
 *   3 too close to such a limit       4 found, nothing to compare    5 below a limit that applies
 *   6 below one for reference         7 not detected
 * Of equal place: lead, then cadmium, arsenic, mercury, antimony, chromium, then all else; then the larger share of its
 * limit; then the order of the snapshot.
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

type Weight = [place: number, element: number, share: number];

const gravest = ["Pb", "Cd", "As", "Hg", "Sb", "Cr"];

function placeOf({ result, decision }: PlacedResult): number {
  const found = result.state !== "not-detected" && result.state !== "no-readings";
  const applies = decision?.applies === "applies";
  switch (decision?.verdict) {
    case "above":
      return applies ? 0 : 2;
    case "too-close":
      return applies ? 1 : 3;
    case "below":
      return found ? (applies ? 5 : 6) : 7;
    default:
      return found ? 4 : 7;
  }
}

function weightOf(placed: PlacedResult): Weight {
  const { decision, result } = placed;
  const size = result.value ?? result.upperBound ?? result.below ?? 0;
  const element = gravest.indexOf(result.element);
  return [placeOf(placed), element < 0 ? gravest.length : element, decision?.value ? -size / decision.value : 0];
}

const compareWeights = (a: Weight, b: Weight): number => a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
