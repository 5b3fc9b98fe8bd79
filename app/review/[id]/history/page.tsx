import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { DataTable } from "@/app/_components/data-table.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { may } from "@/lib/access/permissions.ts";
import { requirePerson } from "@/lib/access/require-person.ts";
import { paths } from "@/lib/platform/paths.ts";
import { actsOnItem } from "@/lib/store/audit.ts";
import { database } from "@/lib/store/database.ts";
import { findItem } from "@/lib/store/items.ts";
import { isBlindTo } from "@/lib/store/retests.ts";
import { detailText } from "@/lib/wording/acts.ts";
import { counted, timeInZone } from "@/lib/wording/formats.ts";
import { actText } from "@/lib/wording/review.ts";

export const metadata: Metadata = { title: "Who did what" };

const most = 500;

/** Who did what to an item, when; written by the very acts, never changed. For its team, not for the public. */
export default async function HistoryPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const person = await requirePerson("see-review", paths.itemHistory(id));
  const db = database();
  const item = await findItem(db, id);
  if (!item) notFound();
  // Reasons and notes may tell the value; whoever measures it blind reads them afterwards.
  const acts = (await isBlindTo(db, person.id, id)) ? [] : await actsOnItem(db, id, most);
  return (
    <>
      <PageHead
        title={`${item.name}: who did what`}
        kicker={
          <>
            <a href={paths.review()}>Review</a> · <a href={paths.reviewItem(id)}>{item.name}</a>
            {may(person, "see-bench").yes ? (
              <>
                {" "}
                · <a href={paths.benchItem(id)}>bench</a>
              </>
            ) : null}
          </>
        }
      >
        <p>Written down as it happened, and never changed. Times are UTC.</p>
      </PageHead>
      {acts.length === 0 ? (
        <p>Nothing is written down for this item that you may read.</p>
      ) : (
        <DataTable
          caption={
            acts.length === most
              ? `The last ${most} acts, newest first`
              : `${counted(acts.length, "act")}, newest first`
          }
          rows={acts}
          rowKey={(act) => String(act.id)}
          columns={[
            { key: "at", head: "When", roomy: true, cell: (act) => timeInZone(act.at.toISOString(), "UTC") },
            { key: "who", head: "Who", nowrap: true, cell: (act) => act.actorName },
            { key: "what", head: "What", nowrap: true, cell: (act) => actText(act.action) },
            { key: "detail", head: "More", roomy: true, cell: (act) => detailText(act.detail) },
          ]}
        />
      )}
    </>
  );
}
