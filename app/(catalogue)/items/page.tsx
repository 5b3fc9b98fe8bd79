import type { Metadata } from "next";
import { connection } from "next/server";
import { Actions, Button } from "@/app/_components/button.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { Pager } from "@/app/_components/pager.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { itemCategories } from "@/lib/quantity/item-words.ts";
import { searchPublished } from "@/lib/store/search.ts";
import { searchPage } from "@/lib/wording/catalogue.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { categoryLabels } from "@/lib/wording/labels.ts";
import { verdictWords } from "@/lib/wording/verdicts.ts";
import { HitList } from "../_item/hit-list.tsx";
import { type ItemSearch, itemSearchHref, readItemSearch } from "./item-search.ts";
import styles from "./items.module.css";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

export async function generateMetadata({ searchParams }: Props): Promise<Metadata> {
  const { q, cursor } = readItemSearch(await searchParams);
  return { title: searchPage.title(q), ...(q || cursor ? { robots: { index: false } } : {}) };
}

/** Search results, or all items without a question. The address holds everything asked. */
export default async function ItemsPage({ searchParams }: Props) {
  const search = readItemSearch(await searchParams);
  await connection();
  const page = await searchPublished(search);
  return (
    <>
      <PageHead title={searchPage.title(search.q)}>
        <Filters search={search} />
      </PageHead>
      {page.total === 0 ? (
        <NotTestedHere query={search.q} />
      ) : (
        <>
          <p className={styles.count} role="status">
            {searchPage.count(page.total, search.q)}
          </p>
          <HitList snapshots={page.hits.map((hit) => hit.snapshot)} />
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

const elements = ["Pb", "Cd", "As", "Hg", "Sb", "Cr", "Ni", "Ba"] as const;
const verdicts = ["above", "too-close", "below", "not-detected"] as const;

function Filters({ search }: { search: ItemSearch }) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: "search" is not yet known to every browser in use
    <form
      role="search"
      aria-label="Search and narrow down"
      action={paths.items()}
      method="get"
      className={`${styles.filters} no-print`}
    >
      <TextField name="q" id="items-q" label="Words" type="search" defaultValue={search.q} maxLength={200} />
      <SelectField
        name="category"
        label="Kind"
        empty="Any kind"
        defaultValue={search.category ?? ""}
        choices={itemCategories.map((value) => ({ value, label: categoryLabels[value] }))}
      />
      <SelectField
        name="element"
        label="Looked for"
        empty="Anything"
        defaultValue={search.element ?? ""}
        choices={elements.map((value) => ({ value, label: elementTitle(value) }))}
      />
      <SelectField
        name="verdict"
        label="Answer"
        empty="Any answer"
        defaultValue={search.verdict ?? ""}
        choices={verdicts.map((value) => ({ value, label: verdictWords[value] }))}
      />
      <Actions>
        <Button kind="primary" type="submit">
          Search
        </Button>
      </Actions>
    </form>
  );
}

function NotTestedHere({ query }: { query: string }) {
  return (
    <EmptyState title={searchPage.nothing}>
      <p>{searchPage.nothingText(query)}</p>
      <Warning>{searchPage.proves}</Warning>
      <ul>
        {searchPage.whatToDo.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p>
        <a href={paths.items()}>See all tested items</a>
      </p>
    </EmptyState>
  );
}
