import type { Metadata } from "next";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { ButtonLink } from "@/app/_components/button.tsx";
import { ConfirmDialog } from "@/app/_components/confirm-dialog.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { handInRetest } from "@/app/_draft/actions.ts";
import { RetestComparison } from "@/app/_draft/retest-comparison.tsx";
import { requirePerson } from "@/lib/access/require-person.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { itemNames } from "@/lib/store/items-at-bench.ts";
import { listPeople } from "@/lib/store/people.ts";
import { listReadings } from "@/lib/store/readings.ts";
import { openRetestsFor, retestsOf } from "@/lib/store/retests.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { counted, plainDate } from "@/lib/wording/formats.ts";
import { retestPage, retestStateWords } from "@/lib/wording/retests.ts";
import { ReviewTabs } from "../review-tabs.tsx";

export const metadata: Metadata = { title: retestPage.title };

/** What is asked of the person who looks, without the first value; below, all re-tests that are no secret to them. */
export default async function RetestsPage() {
  const person = await requirePerson("see-review", paths.retests());
  const db = database();
  const [asked, all, people] = await Promise.all([openRetestsFor(db, person.id), retestsOf(db), listPeople(db)]);
  const names = new Map(people.map((each) => [each.id, each.name]));
  const named = await itemNames(
    db,
    [...asked, ...all].map((retest) => retest.itemId),
  );
  const blindItems = new Set(asked.map((retest) => retest.itemId));
  const told = all.filter((retest) => !blindItems.has(retest.itemId));
  const loaded = await Promise.all(
    asked.map(async ({ componentId }) =>
      (await listReadings(db, { componentId }, 10_000)).filter((r) => r.createdById === person.id),
    ),
  );
  return (
    <>
      <PageHead title={retestPage.title}>
        <p>{retestPage.lead}</p>
      </PageHead>
      <ReviewTabs current={paths.retests()} person={person} />
      {asked.length === 0 && told.length === 0 ? (
        <EmptyState title={retestPage.none}>
          <p>{retestPage.noneText}</p>
        </EmptyState>
      ) : (
        <Ledger>
          {asked.map((retest, index) => (
            <Entry
              key={retest.id}
              title={named.get(retest.itemId) ?? "An item"}
              aside={retestPage.forYou}
              id={`asked-${retest.id}`}
            >
              <p>
                {elementTitle(retest.element)}, asked on {plainDate(retest.askedAt.toISOString())}.{" "}
                {retest.note ? `Note: ${retest.note}` : ""}
              </p>
              <ol>
                {retestPage.how.map((step) => (
                  <li key={step}>{step}</li>
                ))}
              </ol>
              <p>Readings of yours on that part: {counted(loaded[index]?.length ?? 0, "reading")}.</p>
              <p>
                <ButtonLink href={paths.benchItem(retest.itemId)}>The item at the bench</ButtonLink>
              </p>
              <ConfirmDialog
                ask="Hand in"
                askKind="primary"
                title="Hand your value in?"
                form={<ActionForm action={handInRetest.bind(null, retest.id)} submit="Hand it in" compact />}
              >
                <p>Both values are shown from then on. What you load later is no longer blind.</p>
              </ConfirmDialog>
            </Entry>
          ))}
          {told.map((retest) => (
            <Entry
              key={retest.id}
              title={named.get(retest.itemId) ?? "An item"}
              aside={`${elementTitle(retest.element)}: ${retestStateWords[retest.state]}`}
            >
              <p>
                Asked of {names.get(retest.testerId) ?? "somebody"} by {names.get(retest.askedById) ?? "somebody"} on{" "}
                {plainDate(retest.askedAt.toISOString())}. <a href={paths.reviewItem(retest.itemId)}>The item</a>
              </p>
              <RetestComparison retest={retest} testers={names} />
            </Entry>
          ))}
        </Ledger>
      )}
    </>
  );
}
