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
import { itemAnswer } from "@/lib/wording/answers.ts";
import { counted, listed } from "@/lib/wording/formats.ts";
import { categoryLabels, labelOf } from "@/lib/wording/labels.ts";
import { queueStanding, repeatsCount, reviewPage } from "@/lib/wording/review.ts";

/** What waits for a reviewer. */
export default async function ReviewPage() {
  const person = await currentPerson();
  const submitted = await listItems(database(), ["submitted"]);
  const drafts = (await Promise.all(submitted.map((item) => loadDraft(item.id, systemClock())))).filter(
    (draft) => draft !== null,
  );
  return (
    <>
      <PageHead title={reviewPage.title}>
        <p>{reviewPage.lead}</p>
      </PageHead>
      {drafts.length === 0 ? (
        <EmptyState title={reviewPage.none}>
          <p>{reviewPage.noneText}</p>
        </EmptyState>
      ) : (
        <DataTable
          caption={`${counted(drafts.length, "item")} waiting`}
          rows={drafts}
          rowKey={(d) => d.record.item.id}
          columns={[
            {
              key: "item",
              head: "Item",
              cell: (d) => <a href={paths.reviewItem(d.record.item.id)}>{d.record.item.name}</a>,
            },
            { key: "kind", head: "Kind", cell: (d) => labelOf(categoryLabels, d.record.item.category) },
            { key: "answer", head: "The page would say", roomy: true, cell: (d) => itemAnswer(d.snapshot).headline },
            {
              key: "repeats",
              head: "Repeats",
              roomy: true,
              cell: (d) => repeatsCount(d.placed.map((p) => repeatsOf(p.result).verdict)),
            },
            { key: "by", head: "Readings loaded by", cell: (d) => listed(d.loadedBy.map((p) => p.name)) || "–" },
            {
              key: "you",
              head: "For you",
              cell: (d) => queueStanding(may(person, "review-item", { authors: d.record.authors })),
            },
          ]}
        />
      )}
    </>
  );
}
