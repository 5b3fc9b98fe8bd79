import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { citation } from "@/lib/exports/citation.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { LogEntry, Snapshot } from "@/lib/publication/snapshot.ts";
import styles from "./item-view.module.css";

/** The same page for programs, and what proves that nobody changed it. */
export function DataLinks({ snapshot, entry, baseUrl }: { snapshot: Snapshot; entry: LogEntry; baseUrl: string }) {
  const { slug, revision } = snapshot;
  const { text, bibtex, cslJson } = citation({ snapshot, entry }, baseUrl);
  return (
    <>
      <ul>
        <li>
          <a href={paths.api.readings(slug, revision)}>Readings as CSV</a>
        </li>
        <li>
          <a href={paths.api.item(slug, revision)}>This revision as JSON</a>, byte for byte what the log's hash covers
        </li>
        <li>
          <a href={paths.log()}>Publication log</a>
        </li>
      </ul>
      <Facts
        facts={[
          {
            name: "Permanent address",
            value: <a href={paths.revision(slug, revision)}>{paths.revision(slug, revision)}</a>,
          },
          { name: "SHA-256 of this revision", value: <code className={styles.hash}>{entry.snapshotSha256}</code> },
          { name: "How to cite it", value: text },
          { name: "Licence of the data", value: snapshot.registry.licence },
        ]}
      />
      <div className="no-print">
        <Disclosure summary="To cite it: BibTeX and CSL-JSON">
          <pre className={styles.cite}>
            <code>{bibtex}</code>
          </pre>
          <pre className={styles.cite}>
            <code>{JSON.stringify(cslJson, null, 2)}</code>
          </pre>
        </Disclosure>
      </div>
    </>
  );
}
