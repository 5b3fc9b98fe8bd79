import { asWritten } from "@/app/_components/as-written.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { catalogueIn, madeText, reviewText, yesNo } from "@/lib/wording/catalogue.ts";
import { listed, plainDate, withUnit } from "@/lib/wording/formats.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import { labelOf, labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { instrumentDay } from "@/lib/wording/sessions.ts";
import styles from "./item-view.module.css";

/** The item as a reader would recognise it, and each object of it that was tested. */
export function Tested({ snapshot, language }: { snapshot: Snapshot; language: Language }) {
  const words = itemPageIn[language].tested;
  const labels = labelsIn[language];
  const written = (text: string | null | undefined) => asWritten(text, language);
  const { item, specimens } = snapshot;
  return (
    <>
      {item.description ? <p>{written(item.description)}</p> : null}
      <Facts
        facts={[
          { name: words.marks, value: written(item.marks) },
          { name: words.aliases, value: written(item.aliases.join("; ")) },
          { name: words.maker, value: item.maker ? written(item.maker) : words.notKnown },
          { name: words.gtin, value: item.gtin },
          { name: words.kind, value: labelOf(labels.category, item.category) },
          { name: words.madeFor, value: labelOf(labels.ageGroup, item.ageGroup) },
          { name: words.food, value: yesNo(item.foodContact, language) },
          { name: words.mouth, value: yesNo(item.mouthable, language) },
        ]}
      />
      {specimens.map((specimen) => (
        <div key={specimen.id} className="flow">
          <h3>{specimens.length > 1 ? written(specimen.label) : words.veryObject}</h3>
          <Facts
            facts={[
              { name: words.called, value: written(specimen.label) },
              {
                name: words.howGot,
                value: (
                  <>
                    {written(specimen.howGot)}
                    {specimen.howGot && specimen.gotOn ? ", " : null}
                    {specimen.gotOn ? catalogueIn[language].notes.gotOn(plainDate(specimen.gotOn, language)) : null}
                  </>
                ),
              },
              { name: words.whoPaid, value: written(specimen.whoPaid) },
              { name: words.dateCode, value: written(specimen.dateCode) },
              { name: words.made, value: madeText(specimen.madeOn, language) },
              { name: words.condition, value: written(specimen.condition) },
              { name: words.parts, value: written(specimen.parts.map((part) => part.name).join("; ")) },
            ]}
          />
        </div>
      ))}
    </>
  );
}

/** Who tested, with which instrument, from which files, and who checked it. */
export function Provenance({ snapshot, language }: { snapshot: Snapshot; language: Language }) {
  const words = itemPageIn[language].provenance;
  const written = (text: string | null | undefined) => asWritten(text, language);
  return (
    <>
      <Facts
        facts={[
          { name: words.testedOn, value: plainDate(snapshot.testedOn, language) },
          {
            name: words.testedBy,
            value: listed(
              snapshot.testers.map((tester) => tester.name),
              language,
            ),
          },
          { name: words.review, value: reviewText(snapshot.review, language) },
          { name: words.interests, value: written(snapshot.interests) ?? null },
          ...(snapshot.review.interests ?? []).map(({ name, statement }) => ({
            name: words.interestsOf(name),
            value: written(statement),
          })),
          { name: words.published, value: plainDate(snapshot.publishedAt, language) },
          { name: words.registry, value: written(snapshot.registry.name) },
          { name: words.contact, value: written(snapshot.registry.contact) },
        ]}
      />
      {snapshot.instruments.length > 0 ? (
        <DataTable
          caption={words.instruments}
          rows={snapshot.instruments}
          rowKey={(instrument) => instrument.serial}
          columns={[
            { key: "name", head: words.instrument, cell: (i) => written(i.name) },
            { key: "kind", head: words.kind, roomy: true, cell: (i) => written(i.kind) },
            { key: "serial", head: words.serial, nowrap: true, cell: (i) => i.serial },
            {
              key: "window",
              head: words.window,
              numeric: true,
              cell: (i) => (i.windowMm === null ? "–" : withUnit(String(i.windowMm), "mm", language)),
            },
            {
              key: "errors",
              head: words.errors,
              roomy: true,
              cell: (i) => (i.errorK === null ? itemPageIn[language].tested.notKnown : words.errorsOf(i.errorK)),
            },
            {
              key: "fitness",
              head: words.fitness,
              roomy: true,
              cell: (i) =>
                instrumentDay(snapshot.sessions, i.serial, labelOf(labelsIn[language].fitness, i.fitness), language),
            },
          ]}
        />
      ) : null}
      {snapshot.files.length > 0 ? (
        <DataTable
          caption={words.files}
          rows={snapshot.files.map((file, index) => ({ ...file, index: index + 1 }))}
          rowKey={(file) => file.sha256}
          columns={[
            { key: "name", head: words.file, cell: (f) => written(`${f.index}. ${f.name}`) },
            { key: "rows", head: words.rows, numeric: true, cell: (f) => f.rows },
            { key: "sha256", head: "SHA-256", cell: (f) => <code className={styles.hash}>{f.sha256}</code> },
          ]}
        />
      ) : (
        <p>{catalogueIn[language].notes.enteredByHand}</p>
      )}
    </>
  );
}
