import type { Metadata } from "next";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { CheckSeriesFigure } from "@/app/_draft/check-series-figure.tsx";
import { requirePerson } from "@/lib/access/require-person.ts";
import { type CheckSeries, checkSeries, type DriftCount, driftCounts } from "@/lib/consistency/check-series.ts";
import { compareRetest } from "@/lib/consistency/compare-retest.ts";
import { paths } from "@/lib/platform/paths.ts";
import { checkedSittings } from "@/lib/store/checked-sittings.ts";
import { database } from "@/lib/store/database.ts";
import { itemNames } from "@/lib/store/items-at-bench.ts";
import { openRetestsFor, retestsOf } from "@/lib/store/retests.ts";
import {
  comparedText,
  driftText,
  factorWords,
  levelName,
  registryConsistency,
  retestTally,
  seriesTitle,
} from "@/lib/wording/consistency.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { counted, plainDate, resultText } from "@/lib/wording/formats.ts";
import { ReviewTabs } from "../review-tabs.tsx";

export const metadata: Metadata = { title: registryConsistency.title };

/** The registry as a whole: what drifts, and how values fared when somebody else measured again. */
export default async function RegistryConsistencyPage() {
  const person = await requirePerson("see-review", paths.registryConsistency());
  const db = database();
  const [sittings, asked, all] = await Promise.all([checkedSittings(db), openRetestsFor(db, person.id), retestsOf(db)]);
  const series = checkSeries(sittings);
  const counts = (["instrument", "operator", "mode"] as const).flatMap((by) =>
    driftCounts(sittings, by).map((count) => ({ by, ...count })),
  );
  const blind = new Set(asked.map((retest) => retest.itemId));
  const done = all
    .filter((retest) => retest.state === "done" && !blind.has(retest.itemId))
    .map((retest) => ({ retest, compared: retest.second ? compareRetest(retest.first, retest.second) : null }));
  const names = await itemNames(
    db,
    done.map(({ retest }) => retest.itemId),
  );
  const apart = series.filter((each) => each.speaksUp === true);
  const others = series.filter((each) => each.speaksUp !== true);
  return (
    <>
      <PageHead title={registryConsistency.title}>
        <p>{registryConsistency.lead}</p>
      </PageHead>
      <ReviewTabs current={paths.registryConsistency()} person={person} />
      <Ledger>
        <Entry title="What drifts" id="drifts" aside={counted(sittings.length, "session")}>
          {series.length === 0 ? <p>{registryConsistency.noChecks}</p> : <DriftTable counts={counts} />}
        </Entry>
        {apart.length > 0 ? (
          <Entry title="Look at these" id="apart" aside={counted(apart.length, "series", "series")}>
            {apart.map((each) => (
              <CheckSeriesFigure key={keyOf(each)} series={each} />
            ))}
          </Entry>
        ) : null}
        {others.length > 0 ? (
          <Entry title="Steady, or too short to say" id="steady" aside={counted(others.length, "series", "series")}>
            <div>
              {others.map((each) => (
                <Disclosure key={keyOf(each)} summary={seriesTitle(each)}>
                  <CheckSeriesFigure series={each} />
                </Disclosure>
              ))}
            </div>
          </Entry>
        ) : null}
        <Entry title="Measured again" id="retested" aside={counted(done.length, "re-test")}>
          {done.length === 0 ? (
            <p>{registryConsistency.noRetests}</p>
          ) : (
            <>
              <p>{retestTally(done.map(({ compared }) => compared?.verdict ?? "cannot-say"))}.</p>
              <DataTable
                caption="First value and second"
                rows={done}
                rowKey={({ retest }) => retest.id}
                columns={[
                  {
                    key: "item",
                    head: "Item",
                    roomy: true,
                    cell: ({ retest }) => (
                      <a href={paths.reviewItem(retest.itemId)}>
                        {names.get(retest.itemId)}: {elementTitle(retest.element)}
                      </a>
                    ),
                  },
                  {
                    key: "on",
                    head: "Handed in",
                    nowrap: true,
                    cell: ({ retest }) => (retest.doneAt ? plainDate(retest.doneAt.toISOString()) : "–"),
                  },
                  { key: "first", head: "First", roomy: true, cell: ({ retest }) => resultText(retest.first) },
                  {
                    key: "second",
                    head: "Second",
                    roomy: true,
                    cell: ({ retest }) => (retest.second ? resultText(retest.second) : "–"),
                  },
                  { key: "says", head: "Do they agree?", roomy: true, cell: ({ compared }) => comparedText(compared) },
                ]}
              />
            </>
          )}
        </Entry>
      </Ledger>
    </>
  );
}

const keyOf = (s: CheckSeries): string => [s.instrument, s.mode, s.element, s.standard].join(" ");

function DriftTable({ counts }: { counts: (DriftCount & { by: "instrument" | "operator" | "mode" })[] }) {
  const what = { instrument: factorWords.instrument, operator: factorWords.operator, mode: "mode" };
  return (
    <DataTable
      caption="By the check standards of all sessions"
      rows={counts}
      rowKey={({ by, level }) => `${by} ${level}`}
      columns={[
        { key: "level", head: "Which", roomy: true, cell: ({ level }) => levelName(level) },
        { key: "what", head: "What", cell: ({ by }) => what[by] },
        { key: "checks", head: "Check readings", numeric: true, cell: ({ checks }) => checks },
        { key: "says", head: "Does it drift?", roomy: true, cell: driftText },
      ]}
    />
  );
}
