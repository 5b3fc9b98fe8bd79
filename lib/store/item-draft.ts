import { sha256 } from "../platform/sha256.ts";
import { type ApprovalGate, approvalDigest, approvalGate, approvalOf } from "../publication/approval.ts";
import { type AssessedItem, assessItem } from "../publication/assess-item.ts";
import { draftSnapshot, withdrawnSnapshot } from "../publication/build-snapshot.ts";
import type { Snapshot } from "../publication/snapshot.ts";
import { workingItemOf } from "../publication/working-item-of.ts";
import type { Problem } from "../quantity/problem.ts";
import type { Db } from "./database.ts";
import { peopleByIds } from "./people.ts";
import { registry } from "./publications.ts";
import { latestPublished, type PublishedItem } from "./published.ts";
import { isAlone, registryTerms } from "./registry.ts";
import { hasOpenRetest, isBlindTo } from "./retests.ts";
import {
  operatorsOf,
  type ReviewRecord,
  reviewsOf,
  type StartedRevision,
  type Submission,
  startedRevision,
  submissionOf,
} from "./reviews.ts";
import { type WorkingRecord, workingItem } from "./working-item.ts";

/** An item as its page would be at this moment, worked out afresh, and how far its review has come. Nothing of it is stored. */
export type ItemDraft = {
  record: WorkingRecord;
  assessed: AssessedItem;
  snapshot: Snapshot;
  /** What stands in the way of publishing it. */
  problems: Problem[];
  /** What an approval of exactly this is bound to. */
  digest: string;
  reviews: ReviewRecord[];
  gate: ApprovalGate;
  submission: Submission;
  started: StartedRevision | null;
  published: PublishedItem | null;
  /** Who made the item, loaded, typed or took its readings, or handed it in: they cannot review it. */
  concerned: string[];
  /** The person it is shown to re-tests it and must not see the first value. */
  blind: boolean;
  openRetest: boolean;
};

export type DraftAsked = {
  now: Date;
  /** For whom it is shown; null: the item's own state, as publishing takes it. */
  viewerId?: string | null;
  /** A revision asked for here and now, in place of the one that was started. */
  revision?: { kind: StartedRevision["kind"]; reason: string | null } | null;
};

/** The draft of an item, as bench and review desk show it and as publishing takes it; null where there is no such item. */
export async function itemDraft(db: Db, itemId: string, asked: DraftAsked): Promise<ItemDraft | null> {
  const { now, viewerId = null } = asked;
  const record = await workingItem(db, itemId, now.toISOString().slice(0, 10), viewerId);
  if (!record) return null;
  const [reviews, submission, started, published, terms, alone, blind, openRetest, people, operators] =
    await Promise.all([
      reviewsOf(db, itemId),
      submissionOf(db, itemId),
      startedRevision(db, itemId),
      latestPublished(record.item.slug, db),
      registryTerms(db),
      isAlone(db),
      viewerId === null ? false : isBlindTo(db, viewerId, itemId),
      hasOpenRetest(db, itemId),
      peopleByIds(db, record.authors),
      operatorsOf(
        db,
        record.readings.map((r) => r.id),
      ),
    ]);
  const assessed = assessItem(record.assess, sha256);
  const revision = asked.revision ?? started;
  const reason = revision?.reason ?? null;
  const kind = published === null ? "first" : (revision?.kind ?? "update");
  const made = workingItemOf(record, assessed, {
    registry: await registry(db),
    revision: (published?.entry.revision ?? 0) + 1,
    kind: kind === "withdrawal" ? "update" : kind,
    reason: published === null ? null : reason,
    publishedAt: now.toISOString(),
    testers: people.map(({ name }) => ({ name })),
    review: noReview,
    ...(submission.interests === "" ? {} : { interests: submission.interests }),
  });
  const drafted =
    published && kind === "withdrawal"
      ? withdrawalOf(published, reason, now, draftSnapshot(made))
      : draftSnapshot(made);
  const digest = approvalDigest(drafted.snapshot, sha256);
  return {
    record,
    assessed,
    snapshot: { ...drafted.snapshot, review: approvalOf(reviews, digest) },
    problems: drafted.problems,
    digest,
    reviews,
    gate: approvalGate(reviews, digest, { needed: terms.approvalsNeeded, alone }),
    submission,
    started,
    published,
    concerned: concernedOf(record, submission, operators),
    blind,
    openRetest,
  };
}

const noReview: Snapshot["review"] = { reviewed: false, reviewers: [], reviewedOn: null, inputsDigest: null };

const concernedOf = (record: WorkingRecord, { submittedById }: Submission, operators: string[]): string[] => [
  ...new Set([...record.authors, record.item.createdById, ...operators, ...(submittedById ? [submittedById] : [])]),
];

type Drafted = ReturnType<typeof draftSnapshot>;

/** What the page of a withdrawal says comes from the newest public one; where it cannot be made, the reason why not. */
function withdrawalOf(published: PublishedItem, reason: string | null, now: Date, instead: Drafted): Drafted {
  const made = withdrawnSnapshot(published.snapshot, { reason: reason ?? "", publishedAt: now.toISOString() });
  return made.ok ? { snapshot: made.value, problems: [] } : { ...instead, problems: made.problems };
}
