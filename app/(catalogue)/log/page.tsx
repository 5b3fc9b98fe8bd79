import type { Metadata } from "next";
import { connection } from "next/server";
import { DataTable } from "@/app/_components/data-table.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { signedHead } from "@/app/_log/signed-head.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { firstHeadOfEachKey } from "@/lib/store/log-heads.ts";
import { publicationLog } from "@/lib/store/published.ts";
import { logPage } from "@/lib/wording/catalogue.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { revisionLabels } from "@/lib/wording/labels.ts";
import styles from "./log.module.css";
import { SignedHeadEntry } from "./signed-head-entry.tsx";

export const metadata: Metadata = { title: logPage.title, description: logPage.lead };

/** The whole publication log, newest first, and its head as signed. */
export default async function LogPage() {
  await connection();
  const head = await signedHead();
  const entries = (await publicationLog()).toReversed();
  const [, ...otherKeys] = await firstHeadOfEachKey(database());
  return (
    <>
      <PageHead title={logPage.title}>
        <p>{logPage.lead}</p>
        <p>
          <a href={paths.api.log()}>The log as JSON</a> ·{" "}
          <a href={paths.data.dataPackage()}>Everything published, as a data package</a>
        </p>
      </PageHead>
      {entries.length === 0 ? (
        <EmptyState title={logPage.none}>
          <p>{logPage.noneText}</p>
        </EmptyState>
      ) : (
        <>
          <SignedHeadEntry
            head={head}
            newest={entries[0]?.seq ?? 0}
            keyChanges={otherKeys.map((first) => first.seq)}
            baseUrl={environment().baseUrl}
          />
          <DataTable
            caption="Entries, newest first"
            rows={entries}
            rowKey={(entry) => String(entry.seq)}
            columns={[
              { key: "seq", head: "Entry", numeric: true, cell: (entry) => entry.seq },
              {
                key: "item",
                head: "Item and revision",
                roomy: true,
                cell: (entry) => (
                  <a href={paths.revision(entry.slug, entry.revision)}>
                    {entry.slug}, {entry.revision}
                  </a>
                ),
              },
              { key: "kind", head: "What", cell: (entry) => revisionLabels[entry.kind] },
              { key: "at", head: "Published", nowrap: true, cell: (entry) => plainDate(entry.publishedAt) },
              {
                key: "snapshot",
                head: "SHA-256 of the page's data",
                cell: (entry) => <Hash text={entry.snapshotSha256} />,
              },
              { key: "hash", head: "Hash of the entry", cell: (entry) => <Hash text={entry.hash} /> },
            ]}
          />
        </>
      )}
    </>
  );
}

const Hash = ({ text }: { text: string }) => <code className={styles.hash}>{text}</code>;
