import type { Decision } from "../limits/types.ts";
import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import type { ElementResult } from "../readings/reading.ts";
import type { ReconcileInput, ReconcileResult } from "../reconcile/types.ts";
import { keptInputs } from "./result-inputs.ts";
import {
  type Snapshot,
  type SnapshotDepth,
  type SnapshotReading,
  type SnapshotResult,
  snapshotSchema,
} from "./snapshot.ts";

/** A working reading of one element, walked back to its file. Plain values: the store maps its rows to this. */
export type WorkingReading = {
  id: string; // the id that `ShotInput.id` carried into reconcile
  file: string | null; // SHA-256 of the raw file; null where entered by hand
  row: number | null; // row of the file; null where entered by hand
  number: string | null;
  takenAt: string | null;
  takenAtText: string | null;
  secondsCounted: number | null;
  mode: string | null;
  spot: string | null;
  setAside: { reason: string } | null;
  session?: string | undefined;
  factor?: number | undefined;
  result: Pick<
    ElementResult,
    "element" | "quantity" | "unit" | "belowDetection" | "value" | "error" | "k" | "detectionLimit"
  >;
};

/** One element of one part: what reconcile said, how it stands to limits, and every reading it rests on. */
export type WorkingResult = {
  reconciled: ReconcileResult;
  /** What reconcile was handed, so that a stranger can hand it over again. */
  input?: ReconcileInput;
  decisions: Decision[];
  readings: WorkingReading[];
  depth?: SnapshotDepth | null;
  fitness?: SnapshotResult["fitness"];
};

export type WorkingPart = Omit<Snapshot["specimens"][number]["parts"][number], "results"> & {
  results: WorkingResult[];
};
export type WorkingSpecimen = Omit<Snapshot["specimens"][number], "parts"> & { parts: WorkingPart[] };

/** All that a first publication, a correction or an update says. Lists keep the order given. */
export type WorkingItem = Omit<Snapshot, "format" | "specimens"> & { specimens: WorkingSpecimen[] };

const slugForm = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

/**
 * Turns plain working records, reconcile's results and the decisions into the snapshot that will be published.
 * Nothing is computed here: every figure is copied, so a page can only say what reconcile said.
 *
 * Refused, each with its place: `nothing-to-publish` (no part), `part-without-result`, `no-readings` (a result that
 * rests on none), `reading-unknown` (a spot names a shot that is not among the readings), `reading-of-another-kind`,
 * `file-not-listed`, `photo-without-words`, `revision-kind` (revision 1 is the first and only the first),
 * `reason-missing`, `slug-form`, and
 * `snapshot-shape` for whatever the snapshot's schema refuses. A withdrawal is made by `withdrawnSnapshot`.
 */
export function buildSnapshot(item: WorkingItem): Outcome<Snapshot> {
  const { snapshot, problems } = draftSnapshot(item);
  return problems.length > 0 ? refused(...problems) : validSnapshot(snapshot);
}

/**
 * The same before it is published: the snapshot as it would stand, whole or not, and what stands in the way of it. The
 * bench and the review desk show it with the components of the public page. It is never stored.
 */
export function draftSnapshot(item: WorkingItem): { snapshot: Snapshot; problems: Problem[] } {
  const problems = [
    ...frameProblems(item),
    ...item.photos
      .filter((p) => p.alt.trim() === "")
      .map((p) => ({ code: "photo-without-words", found: `photo ${item.photos.indexOf(p) + 1}` })),
    ...item.specimens.flatMap((s) => s.parts.flatMap((p) => partProblems(item, p))),
  ];
  const specimens = item.specimens.map((specimen) => ({
    ...specimen,
    parts: specimen.parts.map((part) => ({ ...part, results: part.results.map(snapshotResultOf) })),
  }));
  return { snapshot: { ...item, format: 1, specimens }, problems };
}

/**
 * The snapshot of a withdrawal: title and reason stay, every figure goes. The earlier revisions keep their texts and
 * hashes in the log (COPE retraction guidelines: the notice names the item and says why).
 */
export function withdrawnSnapshot(
  newest: Snapshot,
  withdrawal: { reason: string; publishedAt: string; review?: Snapshot["review"] },
): Outcome<Snapshot> {
  if (newest.kind === "withdrawal") return refused({ code: "already-withdrawn", found: newest.slug });
  if (withdrawal.reason.trim() === "") return refused({ code: "reason-missing", where: { field: "reason" } });
  return validSnapshot({
    ...newest,
    revision: newest.revision + 1,
    kind: "withdrawal",
    reason: withdrawal.reason,
    publishedAt: withdrawal.publishedAt,
    review: withdrawal.review ?? { reviewed: false, reviewers: [], reviewedOn: null, inputsDigest: null },
    specimens: [],
    photos: [],
    files: [],
  });
}

/** A draft as the schema takes it: what will be stored, or `snapshot-shape` for each member that does not fit. */
export function validSnapshot(candidate: Snapshot): Outcome<Snapshot> {
  const parsed = snapshotSchema.safeParse(candidate);
  if (parsed.success) return done(parsed.data);
  return refused(
    ...parsed.error.issues.map((issue) => ({
      code: "snapshot-shape",
      where: { field: issue.path.map(String).join(".") },
      found: issue.message,
    })),
  );
}

function frameProblems(item: WorkingItem): Problem[] {
  const problems: Problem[] = [];
  if (item.specimens.every((s) => s.parts.length === 0))
    problems.push({ code: "nothing-to-publish", found: item.slug });
  if (!slugForm.test(item.slug)) problems.push({ code: "slug-form", where: { field: "slug" }, found: item.slug });
  if ((item.revision === 1) !== (item.kind === "first") || item.kind === "withdrawal")
    problems.push({
      code: "revision-kind",
      where: { field: "kind" },
      found: `${item.kind}, revision ${item.revision}`,
    });
  if (item.kind !== "first" && (item.reason ?? "").trim() === "")
    problems.push({ code: "reason-missing", where: { field: "reason" } });
  return problems;
}

function partProblems(item: WorkingItem, part: WorkingPart): Problem[] {
  const tested = item.specimens.some((s) => s.otherTests?.some((test) => test.part === part.id));
  if (part.results.length === 0 && tested) return [];
  if (part.results.length === 0)
    return [{ code: "part-without-result", where: { field: part.name }, found: part.name }];
  const files = new Set(item.files.map((f) => f.sha256));
  return part.results.flatMap(({ reconciled, readings }) => {
    const field = `${part.name}, ${reconciled.element}`;
    const ids = new Set(readings.map((r) => r.id));
    const unknown = reconciled.spots.flatMap((s) => s.shots).filter((id) => !ids.has(id));
    const foreign = readings.filter(
      (r) => r.result.element !== reconciled.element || r.result.quantity !== reconciled.quantity,
    );
    const unlisted = readings.filter((r) => r.file !== null && !files.has(r.file));
    return [
      ...(readings.length === 0 ? [{ code: "no-readings", where: { field }, found: field }] : []),
      ...unknown.map((id) => ({ code: "reading-unknown", where: { field }, found: id })),
      ...foreign.map((r) => ({
        code: "reading-of-another-kind",
        where: { field },
        found: `${r.result.element}, ${r.result.quantity}`,
        allowed: `${reconciled.element}, ${reconciled.quantity}`,
      })),
      ...unlisted.map((r) => ({ code: "file-not-listed", where: { field }, found: r.file! })),
    ];
  });
}

const snapshotResultOf = ({
  reconciled,
  input,
  decisions,
  readings,
  depth,
  fitness,
}: WorkingResult): SnapshotResult => ({
  ...reconciled,
  decisions,
  readings: readings.map(snapshotReadingOf),
  ...(input ? { inputs: keptInputs(input, readings) } : {}),
  ...(depth ? { depth } : {}),
  ...(fitness ? { fitness } : {}),
});

function snapshotReadingOf({ result, ...reading }: WorkingReading): SnapshotReading {
  const { belowDetection, value, error, k, detectionLimit, unit } = result;
  return { ...reading, belowDetection, value, error, k, detectionLimit, unit };
}
