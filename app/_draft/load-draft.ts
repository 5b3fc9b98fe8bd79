import { type PlacedResult, resultsByWeight } from "@/lib/publication/leading-decision.ts";
import { type FieldChange, revisionDifference } from "@/lib/publication/revision-difference.ts";
import type { LogEntry, Snapshot } from "@/lib/publication/snapshot.ts";
import type { Problem } from "@/lib/quantity/problem.ts";
import { database } from "@/lib/store/database.ts";
import { type ItemDraft, itemDraft } from "@/lib/store/item-draft.ts";
import { peopleByIds } from "@/lib/store/people.ts";

/** An item as its page would be at this moment, worked out afresh; nothing of it is stored. */
export type Draft = Omit<ItemDraft, "published" | "problems"> & {
  placed: PlacedResult[];
  /** What stands in the way of publishing it; the reason of a revision is asked in the form and not counted. */
  problems: Problem[];
  /** What an approval is bound to. */
  inputsDigest: string;
  loadedBy: { id: string; name: string }[];
  published: LogEntry | null;
  /** What the public page does not say yet; empty where it says the same, and before the first publication. */
  changes: FieldChange[];
};

/**
 * The draft of an item for `viewerId`. Whoever re-tests it blind gets their own readings and what follows from them, and nothing of reviews
 * or of the public page: the first value is not in what this returns.
 */
export async function loadDraft(itemId: string, now: Date, viewerId: string | null = null): Promise<Draft | null> {
  const db = database();
  const draft = await itemDraft(db, itemId, { now, viewerId });
  if (!draft) return null;
  const { record, snapshot, published, problems, blind } = draft;
  return {
    ...draft,
    reviews: blind ? [] : draft.reviews,
    placed: resultsByWeight(snapshot),
    problems: problems.filter((p) => p.code !== "reason-missing"),
    inputsDigest: draft.digest,
    loadedBy: await peopleByIds(db, record.authors),
    published: published?.entry ?? null,
    changes: published && !blind ? changesSince(published.snapshot, snapshot) : [],
  };
}

/** In a result: what a person did, and what the page then states. The figures in between follow, some fifty to a reading. */
const toldInResult = new Set(["readings", "stated", "state", "method"]);

/** Days of judgement move by themselves, with every morning; they are no change that a person made. */
function changesSince(before: Snapshot, now: Snapshot): FieldChange[] {
  return revisionDifference(before, now).filter((change) => {
    const fields = change.place.map((step) => step.field);
    if (fields.includes("decisions") || fields[0] === "review" || fields[0] === "interests") return false;
    const inner = fields[fields.indexOf("results") + 1];
    return !fields.includes("results") || inner === undefined || toldInResult.has(inner);
  });
}
