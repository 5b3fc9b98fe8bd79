import type { Metadata } from "next";
import { connection } from "next/server";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { publicationLog, publishedRevision } from "@/lib/store/published.ts";
import { registryTerms } from "@/lib/store/registry.ts";
import { correctionsPage } from "@/lib/wording/catalogue.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { revisionLabels } from "@/lib/wording/labels.ts";

export const metadata: Metadata = {
  title: correctionsPage.title,
  description: correctionsPage.lead,
  alternates: { types: { "application/atom+xml": paths.correctionsFeed() } },
};

/** Every revision after a first one, newest first, with its reason. */
export default async function CorrectionsPage() {
  await connection();
  const { contact, rightOfReply } = await registryTerms(database());
  const entries = (await publicationLog()).filter((entry) => entry.kind !== "first").toReversed();
  const items = await Promise.all(entries.map((entry) => publishedRevision(entry.slug, entry.revision)));
  return (
    <>
      <PageHead title={correctionsPage.title}>
        <p>{correctionsPage.lead}</p>
        <p>
          <a href={paths.correctionsFeed()}>The same as a feed</a>
        </p>
        {contact ? <p>Something is wrong? Write to {contact}.</p> : null}
        {rightOfReply ? <p>{rightOfReply}</p> : null}
      </PageHead>
      {entries.length === 0 ? (
        <EmptyState title={correctionsPage.none}>
          <p>{correctionsPage.noneText}</p>
        </EmptyState>
      ) : (
        <Ledger>
          {entries.map((entry, index) => {
            const snapshot = items[index]?.snapshot;
            return (
              <Entry key={entry.seq} title={revisionLabels[entry.kind]} aside={plainDate(entry.publishedAt)}>
                <p>
                  <a href={paths.revision(entry.slug, entry.revision)}>
                    {snapshot?.item.name ?? entry.slug}, revision {entry.revision}
                  </a>
                </p>
                {snapshot?.reason ? <p>{snapshot.reason}</p> : null}
                <p className="small">
                  <a href={paths.difference(entry.slug, entry.revision)}>What changed, field by field</a> ·{" "}
                  <a href={paths.revision(entry.slug, entry.revision - 1)}>The revision before it</a>
                </p>
              </Entry>
            );
          })}
        </Ledger>
      )}
    </>
  );
}
