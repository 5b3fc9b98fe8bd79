import { asWritten } from "@/app/_components/as-written.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { PageLink } from "@/app/_components/page-link.tsx";
import { citation } from "@/lib/exports/citation.ts";
import { paths as all } from "@/lib/platform/paths.ts";
import type { LogEntry, Snapshot } from "@/lib/publication/snapshot.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import styles from "./item-view.module.css";

/** The same page for programs, and what proves that nobody changed it. */
export function DataLinks({
  snapshot,
  entry,
  baseUrl,
  language,
}: {
  snapshot: Snapshot;
  entry: LogEntry;
  baseUrl: string;
  language: Language;
}) {
  const [paths, words] = [pathsIn[language], itemPageIn[language].data];
  const { slug, revision } = snapshot;
  const { text, bibtex, cslJson } = citation({ snapshot, entry }, baseUrl);
  return (
    <>
      <ul>
        <li>
          <a href={paths.api.readings(slug, revision)}>{words.csv}</a>
        </li>
        <li>
          <a href={paths.api.item(slug, revision)}>{words.json}</a>
          {words.jsonNote}
        </li>
        <li>
          <PageLink href={paths.log()} language={language}>
            {words.log}
          </PageLink>
        </li>
      </ul>
      <Facts
        facts={[
          {
            name: words.address,
            value: <a href={all.revision(slug, revision)}>{all.revision(slug, revision)}</a>,
          },
          { name: words.sha, value: <code className={styles.hash}>{entry.snapshotSha256}</code> },
          { name: words.cite, value: asWritten(text, language) },
          { name: words.licence, value: asWritten(snapshot.registry.licence, language) },
        ]}
      />
      <div className="no-print">
        <Disclosure summary={words.citeFormats}>
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
