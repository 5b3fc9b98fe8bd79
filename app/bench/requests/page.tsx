import type { Metadata } from "next";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { SelectField } from "@/app/_components/field.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { itemNames, itemsAtBench } from "@/lib/store/items-at-bench.ts";
import { type TestRequestRecord, testRequestQueue } from "@/lib/store/test-requests.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { requestPage, requestQueue } from "@/lib/wording/test-requests.ts";
import { benchQuery } from "../bench-query.ts";
import { BenchTabs } from "../bench-tabs.tsx";
import { FindItemsForm } from "../find-items-form.tsx";
import { tieRequest } from "./actions.ts";
import styles from "./requests.module.css";

export const metadata: Metadata = { title: requestQueue.title };

/** How many items a request can be tied to at once: those last worked on. */
const itemsOffered = 200;

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

/** What readers ask for, most asked for first; each can be tied to its item, closed, or opened again. */
export default async function RequestsPage({ searchParams }: Props) {
  const { find } = benchQuery(await searchParams);
  const db = database();
  const [open, tied, closed, { items, total }] = await Promise.all([
    testRequestQueue(db, "open"),
    testRequestQueue(db, "tied", 20),
    testRequestQueue(db, "closed", 20),
    itemsAtBench(db, { find }, { take: itemsOffered }),
  ]);
  const choices = items.map(({ id, name }) => ({ value: id, label: name }));
  const names = await itemNames(
    db,
    tied.flatMap(({ itemId }) => itemId ?? []),
  );
  return (
    <>
      <PageHead title={requestQueue.title}>
        <p>{requestQueue.lead}</p>
      </PageHead>
      <BenchTabs current={paths.benchRequests()} />
      <Ledger>
        <Entry title={requestQueue.waiting} id="open">
          {open.length === 0 ? (
            <EmptyState title={requestQueue.none} headingLevel={3}>
              <p>{requestQueue.noneText}</p>
            </EmptyState>
          ) : (
            <>
              {total > items.length || find !== undefined ? (
                <FindItemsForm
                  action={paths.benchRequests()}
                  find={find}
                  hint={requestQueue.offered(items.length, total)}
                />
              ) : null}
              <RequestList requests={open} choices={choices} names={names} />
            </>
          )}
        </Entry>
        {tied.length + closed.length > 0 ? (
          <Entry title={requestQueue.answered} id="answered">
            <RequestList requests={[...tied, ...closed]} choices={choices} names={names} />
          </Entry>
        ) : null}
      </Ledger>
    </>
  );
}

type ListProps = {
  requests: TestRequestRecord[];
  /** Items that a request can be tied to. */
  choices: { value: string; label: string }[];
  /** Names of the items that requests are tied to. */
  names: ReadonlyMap<string, string>;
};

function RequestList({ requests, choices, names }: ListProps) {
  return (
    <ol className={styles.list}>
      {requests.map((request) => (
        <li key={request.id} className={styles.request}>
          <p>
            <a href={paths.request(request.id)}>{request.description}</a>
          </p>
          <p className="soft small">
            {requestPage.asked(request.count)} First on {plainDate(request.firstAt.toISOString())}.
          </p>
          {request.photoKey === null ? null : (
            // biome-ignore lint/performance/noImgElement: made to size and stripped when it was stored
            <img
              className={styles.photo}
              src={paths.benchRequestPhoto(request.id)}
              alt={requestQueue.photoAlt(request.description)}
              loading="lazy"
              decoding="async"
            />
          )}
          {request.state === "open" ? (
            <div className={styles.actions}>
              <ActionForm action={tieRequest} submit={requestQueue.tie} submitKind="secondary" compact>
                <input type="hidden" name="requestId" value={request.id} />
                <SelectField
                  name="itemId"
                  id={`item-${request.id}`}
                  label="Item"
                  empty="Choose an item"
                  required
                  choices={choices}
                />
              </ActionForm>
              <ActionForm action={tieRequest} submit={requestQueue.close} submitKind="quiet" compact>
                <input type="hidden" name="requestId" value={request.id} />
                <input type="hidden" name="closed" value="yes" />
              </ActionForm>
            </div>
          ) : (
            <div className={styles.actions}>
              <p>{names.get(request.itemId ?? "") ?? requestPage.states[request.state]}</p>
              <ActionForm action={tieRequest} submit={requestQueue.reopen} submitKind="quiet" compact>
                <input type="hidden" name="requestId" value={request.id} />
              </ActionForm>
            </div>
          )}
        </li>
      ))}
    </ol>
  );
}
