import type { Snapshot } from "./snapshot.ts";

/** A review as far as publishing asks. */
export type ReviewGiven = {
  decision: "approved" | "sent-back";
  inputsDigest: string;
  reviewerName: string;
  createdAt: Date;
};

/**
 * What the page says of its review. An approval counts only for the very inputs it was given for: once a reading, a spot, a
 * setting aside, a part or a word has moved, the page says that nobody has checked it.
 *
 * `reviews` newest first; the date is the newest approval's, in UTC.
 */
export function approvalOf(reviews: readonly ReviewGiven[], inputsDigest: string): Snapshot["review"] {
  const approvals = reviews.filter((r) => r.decision === "approved" && r.inputsDigest === inputsDigest);
  const newest = approvals[0];
  if (!newest) return { reviewed: false, reviewers: [], reviewedOn: null, inputsDigest: null };
  const reviewers = [...new Set(approvals.map((r) => r.reviewerName))].sort();
  return { reviewed: true, reviewers, reviewedOn: newest.createdAt.toISOString().slice(0, 10), inputsDigest };
}
