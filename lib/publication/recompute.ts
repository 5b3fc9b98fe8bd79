import { decide, heldOf } from "../limits/decide.ts";
import { decideSum } from "../limits/decide-sum.ts";
import { DomainError } from "../quantity/domain-error.ts";
import { method, reconcile } from "../reconcile/reconcile.ts";
import type { ReconcileResult } from "../reconcile/types.ts";
import { inputsOfResult } from "./result-inputs.ts";
import type { Snapshot, SnapshotDecision, SnapshotPart, SnapshotResult } from "./snapshot.ts";

/** A published figure and the one made anew, where they differ; `where` is its place in the result ("stated.value"). */
export type FigureDifference = { where: string; published: unknown; recomputed: unknown };

/** One published result made anew from its readings. */
export type RecomputedResult = {
  specimen: string;
  part: string;
  published: SnapshotResult;
  /** Null where the method refused the inputs, or is another version than the published one's. */
  recomputed: ReconcileResult | null;
  /** How many published figures, words and codes were compared. */
  figures: number;
  differences: FigureDifference[];
  /** The inputs came whole with the snapshot; else the budget's published sizes stood in for them. */
  whole: boolean;
  /** The canonical text whose SHA-256 the published `inputsDigest` must be; null where the inputs did not come whole. */
  inputsText: string | null;
};

/**
 * Every result of a snapshot made anew by the same method from the readings in it, each published figure held beside the
 * new one: value, uncertainty, interval, the printed digits, every spot, budget line, flag and note, and each verdict with its
 * probability. Nothing but the snapshot is asked. Whether the instrument was fit, and how deep it sees, are taken as published:
 * they are not made from these readings.
 *
 * Texts, codes and printed digits must be the same. Numbers may differ by `lastBits` of themselves: ECMAScript leaves the
 * last bit of exp and log to the engine.
 */
export function recomputeSnapshot(snapshot: Snapshot): RecomputedResult[] {
  return snapshot.specimens.flatMap((specimen) =>
    specimen.parts.flatMap((part) => {
      const made = part.results.map((result) => madeAnew(result, part));
      const results = made.flatMap(({ recomputed }) => (recomputed ? [recomputed] : []));
      return part.results.map((published, i) => ({
        specimen: specimen.label,
        part: part.name,
        published,
        ...compared(published, made[i]!, results),
      }));
    }),
  );
}

/** Relative difference up to which two numbers count as the same. */
export const lastBits = 1e-11;

type Made = Pick<RecomputedResult, "recomputed" | "whole" | "inputsText"> & { trouble: FigureDifference[] };

function madeAnew(published: SnapshotResult, part: SnapshotPart): Made {
  const { input, whole } = inputsOfResult(published, part.form);
  const nothing = { recomputed: null, whole, inputsText: null };
  if (published.method.name !== method.name || published.method.version !== method.version) {
    const differs = { where: "method.version", published: published.method.version, recomputed: method.version };
    return { ...nothing, trouble: [differs] };
  }
  try {
    // The "hash" keeps the text, so that whoever can only hash asynchronously hashes it afterwards.
    const made = reconcile(input, (text) => text);
    return { recomputed: made, whole, inputsText: whole ? made.inputsDigest : null, trouble: [] };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { ...nothing, trouble: [{ where: "", published: published.state, recomputed: error.code }] };
  }
}

function compared(published: SnapshotResult, made: Made, ofPart: readonly ReconcileResult[]) {
  const { recomputed, whole, inputsText, trouble } = made;
  if (recomputed === null) return { recomputed, whole, inputsText, figures: trouble.length, differences: trouble };
  const tally: Tally = { figures: 0, differences: [] };
  const {
    readings: _,
    depth: __,
    fitness: ___,
    inputs: ____,
    inputsDigest: _____,
    decisions,
    flags,
    ...figures
  } = published;
  compare(figures, recomputed, "", tally);
  if (whole) compare(flags, recomputed.flags, "flags", tally);
  for (const decision of decisions) {
    const judged = judgedAnew(decision, recomputed, ofPart);
    const { verdict, probabilityAbove } = decision;
    if (judged) compare({ verdict, probabilityAbove }, judged, decision.limitId, tally);
  }
  return { recomputed, whole, inputsText, ...tally };
}

/** The verdict against the limit as the snapshot states it; null for what is a rule in words or of another quantity. */
function judgedAnew(decision: SnapshotDecision, result: ReconcileResult, ofPart: readonly ReconcileResult[]) {
  const { value, failsAt, applies, element = result.element } = decision;
  if (value === null || applies === "other-quantity") return null;
  if (element === result.element) return decide(heldOf(result), { value, failsAt });
  const alike = [result, ...ofPart].filter((one) => one.quantity === result.quantity).toReversed();
  const held = Object.fromEntries(alike.map((one) => [one.element, heldOf(one)]));
  return decideSum(held, { value, failsAt, sum: true, substances: element.split("+") });
}

type Tally = { figures: number; differences: FigureDifference[] };

/** Walks the published value; whatever else the new one carries is not asked. */
function compare(published: unknown, recomputed: unknown, where: string, tally: Tally): void {
  if (typeof published === "object" && published !== null) {
    const other = recomputed as Record<string, unknown> | null | undefined;
    if (Array.isArray(published) && (!Array.isArray(recomputed) || recomputed.length !== published.length)) {
      tally.figures += 1;
      tally.differences.push({ where, published, recomputed });
      return;
    }
    for (const [key, value] of Object.entries(published))
      compare(value, other?.[key], where === "" ? key : `${where}.${key}`, tally);
    return;
  }
  tally.figures += 1;
  if (!same(published, recomputed)) tally.differences.push({ where, published, recomputed });
}

function same(a: unknown, b: unknown): boolean {
  if (typeof a !== "number" || typeof b !== "number") return Object.is(a, b);
  return a === b || Math.abs(a - b) <= lastBits * Math.max(Math.abs(a), Math.abs(b));
}
