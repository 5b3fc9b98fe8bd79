import type { Metadata } from "next";
import { connection } from "next/server";
import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { PageLink } from "@/app/_components/page-link.tsx";
import { Pager } from "@/app/_components/pager.tsx";
import { correctionsShown, entryBefore } from "@/app/_log/log-page.ts";
import { alternates } from "@/app/_site/alternates.ts";
import { paths as english } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { recentRevisions } from "@/lib/store/published.ts";
import { registryTerms } from "@/lib/store/registry.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>>; language?: Language };

export async function generateMetadata({ searchParams, language = "en" }: Props): Promise<Metadata> {
  const { title, lead } = catalogueIn[language].corrections;
  const before = entryBefore(await searchParams) ?? undefined;
  return {
    title,
    description: lead,
    alternates: {
      ...alternates(english.corrections(before), language),
      types: { "application/atom+xml": pathsIn[language].correctionsFeed() },
    },
  };
}

/** Every revision after a first one, newest first, with its reason. */
export default async function CorrectionsPage({ searchParams, language = "en" }: Props) {
  const { corrections: correctionsPage } = catalogueIn[language];
  const before = entryBefore(await searchParams);
  const paths = pathsIn[language];
  await connection();
  const { contact, rightOfReply } = await registryTerms(database());
  // One more than is shown tells whether there is a next page.
  const found = await recentRevisions(correctionsShown + 1, { kinds: ["correction", "update", "withdrawal"], before });
  const shown = found.slice(0, correctionsShown);
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
      {shown.length === 0 && before === null ? (
        <EmptyState title={correctionsPage.none}>
          <p>{correctionsPage.noneText}</p>
        </EmptyState>
      ) : (
        <>
          <Ledger>
            {shown.map(({ entry, snapshot }) => (
              <Entry
                key={entry.seq}
                title={labelsIn[language].revision[entry.kind]}
                aside={plainDate(entry.publishedAt, language)}
              >
                <p>
                  <a href={paths.revision(entry.slug, entry.revision)}>
                    <Told
                      text={correctionsPage.revisionOf(snapshot.item.name, entry.revision)}
                      own={[snapshot.item.name]}
                      language={language}
                    />
                  </a>
                </p>
                {snapshot.reason ? <p>{asWritten(snapshot.reason, language)}</p> : null}
                <p className="small">
                  <a href={paths.difference(entry.slug, entry.revision)}>{correctionsPage.difference}</a> ·{" "}
                  <a href={paths.revision(entry.slug, entry.revision - 1)}>{correctionsPage.before}</a>
                </p>
              </Entry>
            ))}
          </Ledger>
          <Pager
            language={language}
            first={before === null ? null : paths.corrections()}
            next={found.length > correctionsShown ? paths.corrections(shown.at(-1)?.entry.seq) : null}
          />
        </>
      )}
    </>
  );
}
