import type { Metadata } from "next";
import { connection } from "next/server";
import { Actions, Button, ButtonLink } from "@/app/_components/button.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { Pager } from "@/app/_components/pager.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { readQuestion } from "@/lib/search/read-question.ts";
import type { PublishedItem } from "@/lib/store/published.ts";
import { searchNear, searchWithCounts } from "@/lib/store/search.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { HitList } from "../_item/hit-list.tsx";
import { ItemFilters } from "./item-filters.tsx";
import { itemSearchHref, readItemSearch } from "./item-search.ts";
import styles from "./items.module.css";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>>; language?: Language };

export async function generateMetadata({ searchParams, language = "en" }: Props): Promise<Metadata> {
  const search = readItemSearch(await searchParams);
  // A search may be shared and read by anybody; for search engines the list without a question stands for all of them.
  const { canonical } = alternates(pathsIn.en.items(), language);
  const { languages } = alternates(itemSearchHref(search), language);
  return {
    title: catalogueIn[language].search.title(search.q),
    alternates: { ...(search.q || search.cursor ? { canonical } : {}), languages },
  };
}

/** Search results, or all items without a question. The address holds everything asked. */
export default async function ItemsPage({ searchParams, language = "en" }: Props) {
  const { search: searchPage, compare: comparePage } = catalogueIn[language];
  const search = readItemSearch(await searchParams);
  await connection();
  const { page, counts } = await searchWithCounts(search);
  return (
    <>
      <PageHead title={searchPage.title(search.q)}>
        <ItemFilters search={search} counts={counts} language={language} />
      </PageHead>
      {page.total === 0 ? (
        <NotTestedHere query={search.q} near={await searchNear(search.q)} language={language} />
      ) : (
        <>
          <p className={styles.count} role="status">
            {searchPage.count(page.total, search.q)}
            {page.read.length > 0 ? ` ${searchPage.readAs(page.read)}` : null}
          </p>
          <form action={pathsIn[language].compare()} method="get">
            <HitList snapshots={page.hits.map((hit) => hit.snapshot)} pick={page.hits.length > 1} language={language} />
            {page.hits.length > 1 ? (
              <Actions>
                <Button type="submit">{comparePage.compare}</Button>
              </Actions>
            ) : null}
          </form>
          <Pager
            language={language}
            first={search.cursor ? itemSearchHref({ ...search, cursor: undefined }, language) : null}
            next={page.nextCursor ? itemSearchHref({ ...search, cursor: page.nextCursor }, language) : null}
          />
          <Warning language={language}>{searchPage.sameCaution}</Warning>
        </>
      )}
    </>
  );
}

function NotTestedHere({ query, near, language }: { query: string; near: PublishedItem[]; language: Language }) {
  const { search: searchPage } = catalogueIn[language];
  const paths = pathsIn[language];
  const { gtin } = readQuestion(query);
  return (
    <>
      <EmptyState title={searchPage.nothing}>
        <p>
          {gtin.state === "wrong-check-digit" ? searchPage.wrongCheckDigit(query, gtin) : searchPage.nothingText(query)}
        </p>
        <Warning language={language}>{searchPage.proves}</Warning>
        <ul>
          {searchPage.whatToDo.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
        {query === "" ? null : (
          <Actions>
            <ButtonLink href={paths.requestTest(query)}>{searchPage.askForTest}</ButtonLink>
          </Actions>
        )}
        <p>
          <a href={paths.items()}>{searchPage.seeAll}</a>
        </p>
      </EmptyState>
      {near.length > 0 ? (
        <div className="flow">
          <h2>{searchPage.near}</h2>
          <p>{searchPage.nearText}</p>
          <HitList snapshots={near.map((hit) => hit.snapshot)} headingLevel={3} language={language} />
        </div>
      ) : null}
    </>
  );
}
