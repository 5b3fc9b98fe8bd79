import type { Metadata } from "next";
import { connection } from "next/server";
import { paths } from "@/lib/platform/paths.ts";
import { newestPublished } from "@/lib/store/published.ts";
import { frontPage, inventedNotice } from "@/lib/wording/catalogue.ts";
import { cautions } from "@/lib/wording/cautions.ts";
import { verdictWords } from "@/lib/wording/verdicts.ts";
import { EmptyState } from "./_components/empty-state.tsx";
import { Entry, Ledger } from "./_components/entry.tsx";
import { SearchForm } from "./_components/search-form.tsx";
import { Verdict } from "./_components/verdict.tsx";
import { HitList } from "./(catalogue)/_item/hit-list.tsx";
import styles from "./front.module.css";

export const metadata: Metadata = {
  title: { absolute: "Cupboard Assay: was mine tested?" },
  alternates: { types: { "application/atom+xml": paths.feedXml(), "application/feed+json": paths.feedJson() } },
};

/** The front page is a search; below it what this is, how to read an answer, and what is new. */
export default async function FrontPage() {
  await connection();
  const newest = await newestPublished(6);
  const invented = newest.some((item) => item.snapshot.registry.invented);
  return (
    <>
      <div className={styles.ask}>
        <h1>{frontPage.title}</h1>
        <SearchForm id="front-search" label={frontPage.searchLabel} hint={frontPage.searchHint} size="large" />
      </div>
      <Ledger>
        <Entry title="What this is" id="what">
          {frontPage.what.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <p>{cautions["total-content"].text}</p>
          {invented ? <p className="soft">{inventedNotice}</p> : null}
        </Entry>
        <Entry title={frontPage.newest} id="newest">
          {newest.length === 0 ? (
            <EmptyState title={frontPage.noItems} headingLevel={3}>
              <p>{frontPage.noItemsText}</p>
            </EmptyState>
          ) : (
            <>
              <HitList snapshots={newest.map((item) => item.snapshot)} headingLevel={3} />
              <p>
                <a href={paths.items()}>All tested items</a>
              </p>
            </>
          )}
        </Entry>
        <Entry title={frontPage.howToRead} id="how-to-read">
          <dl className={styles.words}>
            {frontPage.readers.map(({ verdict, text }) => (
              <div key={verdict}>
                <dt>
                  <Verdict verdict={verdict} words={verdictWords[verdict]} />
                </dt>
                <dd>{text}</dd>
              </div>
            ))}
          </dl>
          <p>
            <a href={paths.methods()}>How results are made</a> · <a href={paths.limits()}>The limits we compare with</a>
          </p>
        </Entry>
      </Ledger>
    </>
  );
}
