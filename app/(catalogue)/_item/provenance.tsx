import { DataTable } from "@/app/_components/data-table.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { enteredByHand, howGotText, madeText, reviewText, yesNo } from "@/lib/wording/catalogue.ts";
import { listed, plainDate, withUnit } from "@/lib/wording/formats.ts";
import { ageGroupLabels, categoryLabels, fitnessLabels, labelOf } from "@/lib/wording/labels.ts";
import { instrumentDay } from "@/lib/wording/sessions.ts";
import styles from "./item-view.module.css";

/** The item as a reader would recognise it, and each object of it that was tested. */
export function Tested({ snapshot }: { snapshot: Snapshot }) {
  const { item, specimens } = snapshot;
  return (
    <>
      {item.description ? <p>{item.description}</p> : null}
      <Facts
        facts={[
          { name: "Marks on it", value: item.marks },
          { name: "Also called", value: item.aliases.join("; ") },
          { name: "Maker", value: item.maker ?? "not known" },
          { name: "Product code", value: item.gtin },
          { name: "Kind", value: labelOf(categoryLabels, item.category) },
          { name: "Made for", value: labelOf(ageGroupLabels, item.ageGroup) },
          { name: "Touches food or drink", value: yesNo(item.foodContact) },
          { name: "A child can put it in the mouth", value: yesNo(item.mouthable) },
        ]}
      />
      {specimens.map((specimen) => (
        <div key={specimen.id} className="flow">
          <h3>{specimens.length > 1 ? specimen.label : "The very object"}</h3>
          <Facts
            facts={[
              { name: "Called", value: specimen.label },
              { name: "How it was got", value: howGotText(specimen) },
              { name: "Who paid", value: specimen.whoPaid },
              { name: "Date code", value: specimen.dateCode },
              { name: "Made", value: madeText(specimen.madeOn) },
              { name: "Condition", value: specimen.condition },
              { name: "Parts tested", value: specimen.parts.map((part) => part.name).join("; ") },
            ]}
          />
        </div>
      ))}
    </>
  );
}

/** Who tested, with which instrument, from which files, and who checked it. */
export function Provenance({ snapshot }: { snapshot: Snapshot }) {
  return (
    <>
      <Facts
        facts={[
          { name: "Tested on", value: plainDate(snapshot.testedOn) },
          { name: "Tested by", value: listed(snapshot.testers.map((tester) => tester.name)) },
          { name: "Review", value: reviewText(snapshot.review) },
          { name: "Ties to the maker, as the tester states", value: snapshot.interests ?? null },
          ...(snapshot.review.interests ?? []).map(({ name, statement }) => ({
            name: `Ties to the maker, as ${name} states`,
            value: statement,
          })),
          { name: "Published", value: plainDate(snapshot.publishedAt) },
          { name: "Registry", value: snapshot.registry.name },
          { name: "Questions and corrections", value: snapshot.registry.contact },
        ]}
      />
      {snapshot.instruments.length > 0 ? (
        <DataTable
          caption="Instruments"
          rows={snapshot.instruments}
          rowKey={(instrument) => instrument.serial}
          columns={[
            { key: "name", head: "Instrument", cell: (i) => i.name },
            { key: "kind", head: "Kind", roomy: true, cell: (i) => i.kind },
            { key: "serial", head: "Serial", nowrap: true, cell: (i) => i.serial },
            {
              key: "window",
              head: "Window",
              numeric: true,
              cell: (i) => (i.windowMm === null ? "–" : withUnit(String(i.windowMm), "mm")),
            },
            {
              key: "errors",
              head: "Its error figures are",
              roomy: true,
              cell: (i) => (i.errorK === null ? "not known" : `${i.errorK} × the standard uncertainty u`),
            },
            {
              key: "fitness",
              head: "Was it fit to measure?",
              roomy: true,
              cell: (i) => instrumentDay(snapshot.sessions, i.serial, labelOf(fitnessLabels, i.fitness)),
            },
          ]}
        />
      ) : null}
      {snapshot.files.length > 0 ? (
        <DataTable
          caption="Files the readings came from, kept byte for byte"
          rows={snapshot.files.map((file, index) => ({ ...file, index: index + 1 }))}
          rowKey={(file) => file.sha256}
          columns={[
            { key: "name", head: "File", cell: (f) => `${f.index}. ${f.name}` },
            { key: "rows", head: "Rows", numeric: true, cell: (f) => f.rows },
            { key: "sha256", head: "SHA-256", cell: (f) => <code className={styles.hash}>{f.sha256}</code> },
          ]}
        />
      ) : (
        <p>{enteredByHand}</p>
      )}
    </>
  );
}
