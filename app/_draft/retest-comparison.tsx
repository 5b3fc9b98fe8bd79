import { DataTable } from "@/app/_components/data-table.tsx";
import { compareRetest } from "@/lib/consistency/compare-retest.ts";
import type { RetestRecord } from "@/lib/store/retests.ts";
import { counted, plainDate, resultText } from "@/lib/wording/formats.ts";
import { comparisonSentences } from "@/lib/wording/retests.ts";

/** Both values of a re-test that was handed in, and how they stand to each other. */
export function RetestComparison({ retest, testers }: { retest: RetestRecord; testers: ReadonlyMap<string, string> }) {
  const { first, second } = retest;
  if (second === null) return null;
  const rows = [
    { who: "First value, as it stood when the re-test was asked for", on: retest.askedAt, value: first },
    { who: testers.get(retest.testerId) ?? "The second tester", on: retest.doneAt ?? retest.askedAt, value: second },
  ];
  return (
    <>
      <DataTable
        caption="The two values"
        hideCaption
        rows={rows}
        rowKey={(row) => row.who}
        columns={[
          { key: "who", head: "Value of", roomy: true, cell: (row) => row.who },
          { key: "on", head: "On", nowrap: true, cell: (row) => plainDate(row.on.toISOString()) },
          { key: "value", head: "Value", roomy: true, cell: (row) => resultText(row.value) },
          {
            key: "from",
            head: "From",
            cell: (row) =>
              `${counted(row.value.counts.readings, "reading")}, ${counted(row.value.counts.spots, "spot")}`,
          },
        ]}
      />
      <ul>
        {comparisonSentences(compareRetest(first, second), first.unit).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}
