import type { Metadata } from "next";
import { connection } from "next/server";
import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { PageLink } from "@/app/_components/page-link.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { paths as english } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { publicationLog, publishedRevision } from "@/lib/store/published.ts";
import { registryTerms } from "@/lib/store/registry.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";

type Props = { language?: Language };

export async function generateMetadata({ language = "en" }: Props): Promise<Metadata> {
  await connection();
  const { title, lead } = catalogueIn[language].corrections;
  return {
    title,
    description: lead,
    alternates: {
      ...alternates(english.corrections(), language),
      types: { "application/atom+xml": pathsIn[language].correctionsFeed() },
    },
  };
}

/** Every revision after a first one, newest first, with its reason. */
export default async function CorrectionsPage({ language = "en" }: Props) {
  const correctionsPage = catalogueIn[language].corrections;
  const paths = pathsIn[language];
  await connection();
  const { contact, rightOfReply } = await registryTerms(database());
  const entries = (await publicationLog()).filter((entry) => entry.kind !== "first").toReversed();
  const items = await Promise.all(entries.map((entry) => publishedRevision(entry.slug, entry.revision)));
  return (
    <>
      <PageHead title={correctionsPage.title}>
        <p>{correctionsPage.lead}</p>
        <p>
          <PageLink href={paths.correctionsFeed()} language={language}>
            {correctionsPage.feed}
          </PageLink>
        </p>
        {contact ? <p>{correctionsPage.writeTo(contact)}</p> : null}
        {rightOfReply ? <p>{asWritten(rightOfReply, language)}</p> : null}
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
              <Entry
                key={entry.seq}
                title={labelsIn[language].revision[entry.kind]}
                aside={plainDate(entry.publishedAt, language)}
              >
                <p>
                  <a href={paths.revision(entry.slug, entry.revision)}>
                    <Told
                      text={correctionsPage.revisionOf(snapshot?.item.name ?? entry.slug, entry.revision)}
                      own={[snapshot?.item.name]}
                      language={language}
                    />
                  </a>
                </p>
                {snapshot?.reason ? <p>{asWritten(snapshot.reason, language)}</p> : null}
                <p className="small">
                  <a href={paths.difference(entry.slug, entry.revision)}>{correctionsPage.difference}</a> ·{" "}
                  <a href={paths.revision(entry.slug, entry.revision - 1)}>{correctionsPage.before}</a>
                </p>
              </Entry>
            );
          })}
        </Ledger>
      )}
    </>
  );
}
