import { DataTable } from "@/app/_components/data-table.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { loadDraft } from "@/app/_draft/load-draft.ts";
import { currentPerson } from "@/lib/access/current-person.ts";
import { may } from "@/lib/access/permissions.ts";
import { repeatsOf } from "@/lib/consistency/repeats.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listItems } from "@/lib/store/items.ts";
import { claimOf, commentsOf } from "@/lib/store/reviews.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { counted, listed, plainDate } from "@/lib/wording/formats.ts";
import { categoryLabels, labelOf, revisionLabels } from "@/lib/wording/labels.ts";
import { claimWords, queueStanding, repeatsCount, reviewPage } from "@/lib/wording/review.ts";
import { ReviewTabs } from "./review-tabs.tsx";

/** What waits for a reviewer. */
export default async function ReviewPage() {
  const db = database();
  const person = await currentPerson();
  const submitted = await listItems(db, ["submitted"]);
  const rows = (
    await Promise.all(
      submitted.map(async (item) => {
        const draft = await loadDraft(item.id, systemClock(), person?.id ?? null);
        const [claim, comments] = await Promise.all([claimOf(db, item.id), commentsOf(db, item.id)]);
        return draft && !draft.blind ? [{ ...draft, claim, open: comments.filter(isOpen).length }] : [];
      }),
    )
  ).flat();
  return (
    <>
      <PageHead title={reviewPage.title}>
        <p>{reviewPage.lead}</p>
      </PageHead>
      <ReviewTabs current={paths.review()} person={person} />
      {rows.length === 0 ? (
        <EmptyState title={reviewPage.none}>
          <p>{reviewPage.noneText}</p>
        </EmptyState>
      ) : (
        <DataTable
          caption={`${counted(rows.length, "item")} waiting`}
          rows={rows}
          rowKey={({ record }) => record.item.id}
          columns={[
            {
              key: "item",
              head: "Item",
              roomy: true,
              cell: ({ record: { item }, snapshot, submission, loadedBy }) => (
                <>
                  <a href={paths.reviewItem(item.id)}>{item.name}</a>
                  <div className="small soft">
                    {labelOf(categoryLabels, item.category)} · {revisionLabels[snapshot.kind].toLowerCase()}
                    {submission.submittedAt ? ` · since ${plainDate(submission.submittedAt.toISOString())}` : ""}
                    {` · readings by ${listed(loadedBy.map((p) => p.name)) || "nobody yet"}`}
                  </div>
                </>
              ),
            },
            { key: "says", head: "It would say", roomy: true, cell: ({ snapshot }) => itemAnswer(snapshot).headline },
            {
              key: "repeats",
              head: "Do repeats agree?",
              roomy: true,
              cell: ({ placed }) => repeatsCount(placed.map((p) => repeatsOf(p.result).verdict)),
            },
            { key: "open", head: "Open remarks", numeric: true, cell: ({ open }) => open },
            {
              key: "standing",
              head: "For you",
              nowrap: true,
              cell: ({ concerned, record, claim }) => (
                <>
                  {queueStanding(may(person, "review-item", { authors: concerned, state: record.item.state }))}
                  <div className="small soft">
                    {claimWords(claim?.reviewerName ?? null, claim?.reviewerId === person?.id)}
                  </div>
                </>
              ),
            },
          ]}
        />
      )}
    </>
  );
}

const isOpen = (comment: { replyToId: string | null; settledAt: Date | null }): boolean =>
  comment.replyToId === null && comment.settledAt === null;
