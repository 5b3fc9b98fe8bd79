import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { PageLink } from "@/app/_components/page-link.tsx";
import { Verdict } from "@/app/_components/verdict.tsx";
import type { Snapshot, SnapshotOtherTest } from "@/lib/publication/snapshot.ts";
import { plainDate, withUnit } from "@/lib/wording/formats.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { otherTestsIn, otherTestText, otherTestTitle } from "@/lib/wording/other-tests.ts";
import { limitName, verdictsIn } from "@/lib/wording/verdicts.ts";
import { reasonShown } from "./reason-shown.ts";

type Specimens = Snapshot["specimens"];

export const hasOtherTests = (specimens: Specimens): boolean =>
  specimens.some((specimen) => (specimen.otherTests ?? []).length > 0);

/** Wipes, leachates and laboratory results of an item, each by itself and held beside limits of its own kind. */
export function OtherTests({ specimens, language }: { specimens: Specimens; language: Language }) {
  return (
    <>
      <p>{otherTestsIn[language].words.lead}</p>
      {specimens.flatMap((specimen) =>
        (specimen.otherTests ?? []).map((test) => (
          <OtherTest
            key={test.id}
            test={test}
            language={language}
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

export function OtherTest({
  test,
  place,
  language = "en",
}: {
  test: SnapshotOtherTest;
  place: string;
  language?: Language;
}) {
  const { words, notes } = otherTestsIn[language];
  const [page, paths] = [itemPageIn[language], pathsIn[language]];
  const written = (text: string | null) => asWritten(text, language);
  const title = otherTestTitle(test, language);
  return (
    <section className="flow">
      <h3>
        {title}
        {place ? <Told text={` (${place})`} own={[place]} language={language} /> : ""}
      </h3>
      <p>
        <strong>{otherTestText(test, language)}</strong>
      </p>
      <p className="soft small">{notes[test.kind]}</p>
      <Facts
        facts={[
          { name: words.asWritten, value: written(`${test.valueText} ${test.unit}`) },
          {
            name: words.areaWiped,
            value: test.sampleAreaCm2 === null ? null : withUnit(String(test.sampleAreaCm2), "cm²", language),
          },
          { name: words.blank, value: written(test.blankText) },
          { name: words.laboratory, value: written(test.laboratory) },
          { name: words.method, value: written(test.method) },
          { name: words.reportedOn, value: test.reportedOn === null ? null : plainDate(test.reportedOn, language) },
          { name: words.certificate, value: written(test.certificateName) },
          { name: words.note, value: written(test.note) },
        ]}
      />
      {test.decisions.length === 0 ? (
        <p>{words.noLimit}</p>
      ) : (
        <DataTable
          caption={page.decisionsCaption(title)}
          rows={test.decisions}
          rowKey={(d) => `${d.limitId} ${d.day} ${d.value}`}
          rowNote={(d) => reasonShown(d.why, language)}
          columns={[
            {
              key: "limit",
              head: page.decisions.limit,
              roomy: true,
              cell: (d) => (
                <PageLink href={paths.limit(d.limitId)} language={language}>
                  {limitName(d, language)}
                </PageLink>
              ),
            },
            {
              key: "verdict",
              head: page.decisions.verdict,
              cell: (d) => <Verdict verdict={d.verdict} words={verdictsIn[language].verdicts[d.verdict]} />,
            },
            { key: "day", head: words.inForceOn, nowrap: true, cell: (d) => plainDate(d.day, language) },
          ]}
        />
      )}
    </section>
  );
}
