import { DataTable } from "@/app/_components/data-table.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { Verdict } from "@/app/_components/verdict.tsx";
import { paths } from "@/lib/platform/paths.ts";
import type { Snapshot, SnapshotOtherTest } from "@/lib/publication/snapshot.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { otherTestNotes, otherTestText, otherTestTitle, otherTestWords } from "@/lib/wording/other-tests.ts";
import { limitName, verdictWords } from "@/lib/wording/verdicts.ts";

type Specimens = Snapshot["specimens"];

export const hasOtherTests = (specimens: Specimens): boolean =>
  specimens.some((specimen) => (specimen.otherTests ?? []).length > 0);

/** Wipes, leachates and laboratory results of an item, each by itself and held beside limits of its own kind. */
export function OtherTests({ specimens }: { specimens: Specimens }) {
  return (
    <>
      <p>{otherTestWords.lead}</p>
      {specimens.flatMap((specimen) =>
        (specimen.otherTests ?? []).map((test) => (
          <OtherTest
            key={test.id}
            test={test}
            place={[
              ...(specimens.length > 1 ? [specimen.label] : []),
              ...specimen.parts.filter((part) => part.id === test.part).map((part) => part.name),
            ].join(", ")}
          />
        )),
      )}
    </>
  );
}

export function OtherTest({ test, place }: { test: SnapshotOtherTest; place: string }) {
  const title = otherTestTitle(test);
  return (
    <section className="flow">
      <h3>
        {title}
        {place ? ` (${place})` : ""}
      </h3>
      <p>
        <strong>{otherTestText(test)}</strong>
      </p>
      <p className="soft small">{otherTestNotes[test.kind]}</p>
      <Facts
        facts={[
          { name: "As the report writes it", value: `${test.valueText} ${test.unit}` },
          { name: "Area wiped", value: test.sampleAreaCm2 === null ? null : `${test.sampleAreaCm2} cm²` },
          { name: otherTestWords.blank, value: test.blankText },
          { name: "Laboratory", value: test.laboratory },
          { name: "Method", value: test.method },
          { name: "Reported on", value: test.reportedOn === null ? null : plainDate(test.reportedOn) },
          { name: "Certificate", value: test.certificateName },
          { name: "Note", value: test.note },
        ]}
      />
      {test.decisions.length === 0 ? (
        <p>{otherTestWords.noLimit}</p>
      ) : (
        <DataTable
          caption={`Held beside each limit: ${title}`}
          rows={test.decisions}
          rowKey={(d) => `${d.limitId} ${d.day} ${d.value}`}
          rowNote={(d) => d.why}
          columns={[
            {
              key: "limit",
              head: "Limit",
              roomy: true,
              cell: (d) => <a href={paths.limit(d.limitId)}>{limitName(d)}</a>,
            },
            {
              key: "verdict",
              head: "Verdict",
              cell: (d) => <Verdict verdict={d.verdict} words={verdictWords[d.verdict]} />,
            },
            { key: "day", head: "In force on", nowrap: true, cell: (d) => plainDate(d.day) },
          ]}
        />
      )}
    </section>
  );
}
