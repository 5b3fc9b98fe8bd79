import { createHash } from "node:crypto";
import type { PublishedRevision } from "@/lib/exports/published-revision.ts";
import type { Sha256 } from "@/lib/publication/canonical-json.ts";
import { nextLogEntry } from "@/lib/publication/log-entry.ts";
import type { LogEntry, Snapshot } from "@/lib/publication/snapshot.ts";
import { sampleCorrection, sampleSnapshot, sampleSnapshotOf, sampleWithdrawal } from "./sample-snapshot.ts";

export const sha256: Sha256 = (data) => createHash("sha256").update(data).digest("hex");

/** Snapshots chained into a log, with the canonical text of each. */
export function chained(snapshots: readonly Snapshot[]): (PublishedRevision & { text: string })[] {
  const revisions: (PublishedRevision & { text: string })[] = [];
  let previous: LogEntry | null = null;
  for (const snapshot of snapshots) {
    const { entry, text } = nextLogEntry(snapshot, previous, sha256);
    revisions.push({ snapshot, entry, text });
    previous = entry;
  }
  return revisions;
}

/** The invented mug's first publication as a published revision. */
export const publishedSample = (change: Partial<Snapshot> = {}): PublishedRevision =>
  chained([sampleSnapshot(change)])[0]!;

/** Five revisions of two invented items: the mug's three, and a rattle's two. */
export const sampleHistory = (): (PublishedRevision & { text: string })[] => {
  const rattle = { slug: "rattle", publishedAt: "2026-11-25T10:00:00+01:00" };
  return chained([
    sampleSnapshot(),
    sampleSnapshotOf("not-detected", rattle),
    sampleCorrection(),
    sampleSnapshotOf("uneven", {
      ...rattle,
      revision: 2,
      kind: "update",
      reason: "More spots were measured.",
      publishedAt: "2026-11-27T10:00:00Z",
    }),
    sampleWithdrawal(),
  ]);
};
