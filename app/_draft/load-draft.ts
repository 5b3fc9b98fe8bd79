import { sha256 } from "@/lib/platform/sha256.ts";
import { approvalOf } from "@/lib/publication/approval.ts";
import { assessItem } from "@/lib/publication/assess-item.ts";
import { draftSnapshot } from "@/lib/publication/build-snapshot.ts";
import { type PlacedResult, resultsByWeight } from "@/lib/publication/leading-decision.ts";
import { type FieldChange, revisionDifference } from "@/lib/publication/revision-difference.ts";
import type { LogEntry, Snapshot } from "@/lib/publication/snapshot.ts";
import { workingItemOf } from "@/lib/publication/working-item-of.ts";
import type { Problem } from "@/lib/quantity/problem.ts";
import { database } from "@/lib/store/database.ts";
import { peopleByIds } from "@/lib/store/people.ts";
import { type ReviewRecord, registry, reviewsOf } from "@/lib/store/publications.ts";
import { latestPublished } from "@/lib/store/published.ts";
import { type WorkingRecord, workingItem } from "@/lib/store/working-item.ts";

/** An item as its page would be at this moment, worked out afresh; nothing of it is stored. */
export type Draft = {
  record: WorkingRecord;
  snapshot: Snapshot;
  placed: PlacedResult[];
  /** What stands in the way of publishing it; the reason of a revision is asked in the form and not counted. */
  problems: Problem[];
  inputsDigest: string;
  reviews: ReviewRecord[];
  loadedBy: { id: string; name: string }[];
  published: LogEntry | null;
  /** What the public page does not say yet; empty where it says the same, and before the first publication. */
  changes: FieldChange[];
};

export async function loadDraft(itemId: string, now: Date): Promise<Draft | null> {
  const db = database();
  const record = await workingItem(db, itemId, now.toISOString().slice(0, 10));
  if (!record) return null;
  const [reviews, loadedBy, registryRecord, public_] = await Promise.all([
    reviewsOf(db, itemId),
    peopleByIds(db, record.authors),
    registry(db),
    latestPublished(record.item.slug, db),
  ]);
  const assessed = assessItem(record.assess, sha256);
  const revision = (public_?.entry.revision ?? 0) + 1;
  const { snapshot, problems } = draftSnapshot(
    workingItemOf(record, assessed, {
      registry: registryRecord,
      revision,
      kind: revision === 1 ? "first" : "update",
      reason: null,
      publishedAt: now.toISOString(),
      testers: loadedBy.map(({ name }) => ({ name })),
      review: approvalOf(reviews, assessed.inputsDigest),
    }),
  );
  return {
    record,
    snapshot,
    placed: resultsByWeight(snapshot),
    problems: problems.filter((p) => p.code !== "reason-missing"),
    inputsDigest: assessed.inputsDigest,
    reviews,
    loadedBy,
    published: public_?.entry ?? null,
    changes: public_ ? changesSince(public_.snapshot, snapshot) : [],
  };
}

/** In a result: what a person did, and what the page then states. The figures in between follow, some fifty to a reading. */
const toldInResult = new Set(["readings", "stated", "state", "method"]);

/** Days of judgement move by themselves, with every morning; they are no change that a person made. */
function changesSince(before: Snapshot, now: Snapshot): FieldChange[] {
  return revisionDifference(before, now).filter((change) => {
    const fields = change.place.map((step) => step.field);
    if (fields.includes("decisions") || fields[0] === "review") return false;
    const inner = fields[fields.indexOf("results") + 1];
    return !fields.includes("results") || inner === undefined || toldInResult.has(inner);
  });
}
