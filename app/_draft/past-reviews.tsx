import { DataTable } from "@/app/_components/data-table.tsx";
import type { ReviewRecord } from "@/lib/store/reviews.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { reviewDecisionWords, reviewStanding } from "@/lib/wording/review.ts";

/** Who looked at the item before, what they decided, what ties they stated, and whether it still holds. */
export function PastReviews({ reviews, inputsDigest }: { reviews: ReviewRecord[]; inputsDigest: string }) {
  return (
    <DataTable
      caption="Reviews so far, newest first"
      rows={reviews}
      rowKey={(review) => review.id}
      rowNote={(review) => (review.note === "" ? null : <>Note: {review.note}</>)}
      columns={[
        { key: "who", head: "Reviewer", cell: (review) => review.reviewerName },
        { key: "when", head: "On", cell: (review) => plainDate(review.createdAt.toISOString()), nowrap: true },
        { key: "what", head: "Decision", cell: (review) => reviewDecisionWords[review.decision] },
        { key: "holds", head: "Of", cell: (review) => reviewStanding(review.inputsDigest === inputsDigest) },
        { key: "ties", head: "Ties stated", roomy: true, cell: (review) => review.interests || "not asked then" },
      ]}
    />
  );
}
