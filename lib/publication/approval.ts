import { canonicalJson, type Sha256 } from "./canonical-json.ts";
import type { Snapshot } from "./snapshot.ts";

/** A review as far as publishing asks. */
export type ReviewGiven = {
  decision: "approved" | "sent-back" | "more-shots";
  /** The digest of what the reviewer was shown, by `approvalDigest`. */
  inputsDigest: string;
  reviewerId: string;
  reviewerName: string;
  /** The reviewer's statement of interests. */
  interests: string;
  createdAt: Date;
};

/** What moves by itself, or is about the publication rather than the item: no approval is bound to it. */
const unbound: ReadonlySet<string> = new Set([
  "format",
  "registry",
  "slug",
  "revision",
  "publishedAt",
  "testedOn", // of the readings; without times on them, the day of publishing
  "testers",
  "review",
]);

/**
 * The digest an approval is bound to: SHA-256 over the canonical JSON of all that a page will say by anybody's doing. Words,
 * objects, parts, photos, instruments, files, the kind and reason of a revision and the tester's statement of interests stand in it as
 * they are; of each result the digest of its inputs, since its figures follow from these, and since verdicts follow the day's rules.
 *
 * Made from a snapshot, so that anybody can make it again from a published one: where `review.reviewed`, it equals
 * `review.inputsDigest`.
 *
 * Examples with their answers: tests/publication/approval.test.ts.
 */
export function approvalDigest(draft: Snapshot, hash: Sha256): string {
  const bound = Object.entries(draft).filter(([field, value]) => !unbound.has(field) && value !== undefined);
  const specimens = draft.specimens.map(({ parts, ...specimen }) => ({
    ...defined(specimen),
    parts: parts.map(({ results, ...part }) => ({ ...defined(part), results: results.map((r) => r.inputsDigest) })),
  }));
  return hash(canonicalJson({ ...Object.fromEntries(bound), specimens }));
}

const defined = (value: object): object =>
  Object.fromEntries(Object.entries(value).filter(([, each]) => each !== undefined));

/** The approvals that count for this digest: one of each reviewer, the newest first. */
function counting<Given extends ReviewGiven>(reviews: readonly Given[], digest: string): Given[] {
  const approvals = reviews.filter((r) => r.decision === "approved" && r.inputsDigest === digest);
  return approvals.filter((r, at) => approvals.findIndex((other) => other.reviewerId === r.reviewerId) === at);
}

/**
 * What the page says of its review. An approval counts only for the very draft it was given for: once a reading, a spot, a
 * setting aside, a part, a photo, a word or a reason has moved, it counts no longer.
 *
 * `reviews` newest first; the date is the newest approval's, in UTC.
 */
export function approvalOf(reviews: readonly ReviewGiven[], inputsDigest: string): Snapshot["review"] {
  const approvals = counting(reviews, inputsDigest);
  const newest = approvals[0];
  if (!newest) return { reviewed: false, reviewers: [], reviewedOn: null, inputsDigest: null };
  const interests = approvals
    .filter((r) => r.interests !== "")
    .map((r) => ({ name: r.reviewerName, statement: r.interests }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
  return {
    reviewed: true,
    reviewers: [...new Set(approvals.map((r) => r.reviewerName))].sort(),
    reviewedOn: newest.createdAt.toISOString().slice(0, 10),
    inputsDigest,
    ...(interests.length > 0 ? { interests } : {}),
  };
}

export type ApprovalGate = {
  /** "enough": publish; "unreviewed": may be published, and the page says so; "lacking": somebody has to approve first; "moved": approved once, changed since. */
  state: "enough" | "unreviewed" | "lacking" | "moved";
  given: number;
  needed: number;
  /** Who has approved exactly this. */
  by: string[];
};

/**
 * Whether a draft may be published. `needed` approvals of different people, each for this very digest; with none needed, or with nobody else
 * in the registry who could give one, it may go unreviewed and the page says so.
 *
 * @example approvalGate([], "digest", { needed: 1, alone: false }) // { state: "lacking", given: 0, needed: 1, by: [] }
 */
export function approvalGate(
  reviews: readonly ReviewGiven[],
  digest: string,
  { needed, alone }: { needed: number; alone: boolean },
): ApprovalGate {
  const approvals = counting(reviews, digest);
  const given = approvals.length;
  const by = approvals.map((r) => r.reviewerName).sort();
  if (given > 0 && given >= needed) return { state: "enough", given, needed, by };
  if (needed === 0 || alone) return { state: given > 0 ? "enough" : "unreviewed", given, needed, by };
  const before = reviews.some((r) => r.decision === "approved" && r.inputsDigest !== digest);
  const since = reviews[0]?.decision === "approved";
  return { state: before && since && given === 0 ? "moved" : "lacking", given, needed, by };
}
