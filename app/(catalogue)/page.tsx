import type { Metadata } from "next";
import { connection } from "next/server";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger } from "@/app/_components/entry.tsx";
import { PageLink } from "@/app/_components/page-link.tsx";
import { SearchForm } from "@/app/_components/search-form.tsx";
import { Verdict } from "@/app/_components/verdict.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { paths } from "@/lib/platform/paths.ts";
import { newestPublished } from "@/lib/store/published.ts";
import { catalogueIn, explainedVerdicts } from "@/lib/wording/catalogue.ts";
import { cautionsIn } from "@/lib/wording/cautions.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { scanWordsIn } from "@/lib/wording/scan.ts";
import { verdictsIn } from "@/lib/wording/verdicts.ts";
import { HitList } from "./_item/hit-list.tsx";
import styles from "./front.module.css";

type Props = { language?: Language };

export async function generateMetadata({ language = "en" }: Props): Promise<Metadata> {
  await connection();
  const here = pathsIn[language];
  return {
    title: { absolute: catalogueIn[language].site.frontTitle },
    alternates: {
      ...alternates(paths.home(), language),
      types: { "application/atom+xml": here.feedXml(), "application/feed+json": here.feedJson() },
    },
  };
}

/** The front page is a search; below it what this is, how to read an answer, and what is new. */
export default async function FrontPage({ language = "en" }: Props) {
  const { front: frontPage, invented: inventedNotice } = catalogueIn[language];
  const [here, words] = [pathsIn[language], verdictsIn[language].verdicts];
  await connection();
  const newest = await newestPublished(6);
  const invented = newest.some((item) => item.snapshot.registry.invented);
  return (
    <>
      <div className={styles.ask}>
        <h1>{frontPage.title}</h1>
        <SearchForm
          id="front-search"
          label={frontPage.searchLabel}
          hint={frontPage.searchHint}
          size="large"
          language={language}
        />
        <p>
          <a href={here.scan()}>{scanWordsIn[language].open}</a>
        </p>
      </div>
      <Ledger>
        <Entry title={frontPage.whatTitle} id="what">
          {frontPage.what.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <p>{cautionsIn[language].always["total-content"].text}</p>
          {invented ? <p className="soft">{inventedNotice}</p> : null}
        </Entry>
        <Entry title={frontPage.newest} id="newest">
          {newest.length === 0 ? (
            <EmptyState title={frontPage.noItems} headingLevel={3}>
              <p>{frontPage.noItemsText}</p>
            </EmptyState>
          ) : (
            <>
              <HitList snapshots={newest.map((item) => item.snapshot)} headingLevel={3} language={language} />
              <p>
                <a href={here.items()}>{frontPage.allItems}</a>
              </p>
            </>
          )}
        </Entry>
        <Entry title={frontPage.howToRead} id="how-to-read">
          <dl className={styles.words}>
            {explainedVerdicts.map((verdict) => (
              <div key={verdict}>
                <dt>
                  <Verdict verdict={verdict} words={words[verdict]} />
                </dt>
                <dd>{frontPage.readers[verdict]}</dd>
              </div>
            ))}
          </dl>
          <p>
            <PageLink href={here.methods()} language={language}>
              {frontPage.methods}
            </PageLink>{" "}
            ·{" "}
            <PageLink href={here.limits()} language={language}>
              {frontPage.limits}
            </PageLink>
          </p>
        </Entry>
      </Ledger>
    </>
  );
}
