import type { Metadata } from "next";
import { connection } from "next/server";
import { Actions, Button, ButtonLink } from "@/app/_components/button.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { Pager } from "@/app/_components/pager.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { readQuestion } from "@/lib/search/read-question.ts";
import type { PublishedItem } from "@/lib/store/published.ts";
import { searchNear, searchWithCounts } from "@/lib/store/search.ts";
import { comparePage, searchPage } from "@/lib/wording/catalogue.ts";
import { HitList } from "../_item/hit-list.tsx";
import { ItemFilters } from "./item-filters.tsx";
import { itemSearchHref, readItemSearch } from "./item-search.ts";
import styles from "./items.module.css";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

export async function generateMetadata({ searchParams }: Props): Promise<Metadata> {
  const { q, cursor } = readItemSearch(await searchParams);
  // A search may be shared and read by anybody; for search engines the list without a question stands for all of them.
  const canonical = q || cursor ? `${environment().baseUrl}${paths.items()}` : undefined;
  return { title: searchPage.title(q), ...(canonical ? { alternates: { canonical } } : {}) };
}

/** Search results, or all items without a question. The address holds everything asked. */
export default async function ItemsPage({ searchParams }: Props) {
  const search = readItemSearch(await searchParams);
  await connection();
  const { page, counts } = await searchWithCounts(search);
  return (
    <>
      <PageHead title={searchPage.title(search.q)}>
        <ItemFilters search={search} counts={counts} />
      </PageHead>
      {page.total === 0 ? (
        <NotTestedHere query={search.q} near={await searchNear(search.q)} />
      ) : (
        <>
          <p className={styles.count} role="status">
            {searchPage.count(page.total, search.q)}
            {page.read.length > 0 ? ` ${searchPage.readAs(page.read)}` : null}
          </p>
          <form action={paths.compare()} method="get">
            <HitList snapshots={page.hits.map((hit) => hit.snapshot)} pick={page.hits.length > 1} />
            {page.hits.length > 1 ? (
              <Actions>
                <Button type="submit">{comparePage.compare}</Button>
              </Actions>
            ) : null}
          </form>
          <Pager
            first={search.cursor ? itemSearchHref({ ...search, cursor: undefined }) : null}
            next={page.nextCursor ? itemSearchHref({ ...search, cursor: page.nextCursor }) : null}
          />
          <Warning>{searchPage.sameCaution}</Warning>
        </>
      )}
    </>
  );
}

function NotTestedHere({ query, near }: { query: string; near: PublishedItem[] }) {
  const { gtin } = readQuestion(query);
  return (
    <EmptyState title={searchPage.nothing}>
      <p>
        {gtin.state === "wrong-check-digit" ? searchPage.wrongCheckDigit(query, gtin) : searchPage.nothingText(query)}
      </p>
      <Warning>{searchPage.proves}</Warning>
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
        <a href={paths.items()}>See all tested items</a>
      </p>
      {near.length > 0 ? (
        <>
          <h2>{searchPage.near}</h2>
          <p>{searchPage.nearText}</p>
          <HitList snapshots={near.map((hit) => hit.snapshot)} headingLevel={3} />
        </>
      ) : null}
    </EmptyState>
  );
}
