import type { Metadata } from "next";
import { connection } from "next/server";
import { asWritten } from "@/app/_components/as-written.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { Pager } from "@/app/_components/pager.tsx";
import { entriesShown, entryBefore } from "@/app/_log/log-page.ts";
import { signedHead } from "@/app/_log/signed-head.ts";
import { alternates } from "@/app/_site/alternates.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { firstHeadOfEachKey } from "@/lib/store/log-heads.ts";
import { newestEntries } from "@/lib/store/published.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import styles from "./log.module.css";
import { SignedHeadEntry } from "./signed-head-entry.tsx";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>>; language?: Language };

export async function generateMetadata({ searchParams, language = "en" }: Props): Promise<Metadata> {
  const { title, lead } = catalogueIn[language].log;
  const before = entryBefore(await searchParams) ?? undefined;
  return { title, description: lead, alternates: alternates(paths.log(before), language) };
}

/** The publication log, newest first, and its head as signed. */
export default async function LogPage({ searchParams, language = "en" }: Props) {
  const { log: logPage } = catalogueIn[language];
  const before = entryBefore(await searchParams);
  const { columns } = logPage;
  await connection();
  // Shown with the newest entries alone; asked for before them, as it may be signed just now.
  const head = before === null ? await signedHead() : null;
  // One more than is shown tells whether there is a next page.
  const found = await newestEntries(entriesShown + 1, before);
  const entries = found.slice(0, entriesShown);
  const [, ...otherKeys] = before === null ? await firstHeadOfEachKey(database()) : [];
  return (
    <>
      <PageHead title={logPage.title}>
        <p>{logPage.lead}</p>
        <p>
          <a href={paths.api.log()}>{logPage.asJson}</a> · <a href={paths.data.dataPackage()}>{logPage.dataPackage}</a>
        </p>
      </PageHead>
      {entries.length === 0 && before === null ? (
        <EmptyState title={logPage.none}>
          <p>{logPage.noneText}</p>
        </EmptyState>
      ) : (
        <>
          {before === null ? (
            <SignedHeadEntry
              head={head}
              newest={entries[0]?.seq ?? 0}
              keyChanges={otherKeys.map((first) => first.seq)}
              baseUrl={environment().baseUrl}
              language={language}
            />
          ) : null}
          <DataTable
            caption={logPage.caption}
            rows={entries}
            rowKey={(entry) => String(entry.seq)}
            columns={[
              { key: "seq", head: columns.entry, numeric: true, cell: (entry) => entry.seq },
              {
                key: "item",
                head: columns.item,
                roomy: true,
                cell: (entry) => (
                  <a href={pathsIn[language].revision(entry.slug, entry.revision)}>
                    {asWritten(entry.slug, language)}, {entry.revision}
                  </a>
                ),
              },
              { key: "kind", head: columns.what, cell: (entry) => labelsIn[language].revision[entry.kind] },
              {
                key: "at",
                head: columns.published,
                nowrap: true,
                cell: (entry) => plainDate(entry.publishedAt, language),
              },
              {
                key: "snapshot",
                head: columns.snapshot,
                cell: (entry) => <Hash text={entry.snapshotSha256} />,
              },
              { key: "hash", head: columns.hash, cell: (entry) => <Hash text={entry.hash} /> },
            ]}
          />
          <Pager
            language={language}
            first={before === null ? null : pathsIn[language].log()}
            next={found.length > entriesShown ? pathsIn[language].log(entries.at(-1)?.seq) : null}
          />
        </>
      )}
    </>
  );
}

const Hash = ({ text }: { text: string }) => <code className={styles.hash}>{text}</code>;
