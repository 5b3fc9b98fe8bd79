import { Actions, Button, ButtonLink } from "@/app/_components/button.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { ageGroups, itemCategories, materials } from "@/lib/quantity/item-words.ts";
import type { FacetCounts } from "@/lib/store/search.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { labelOf, labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { scanWordsIn } from "@/lib/wording/scan.ts";
import { verdictsIn } from "@/lib/wording/verdicts.ts";
import type { ItemSearch } from "./item-search.ts";
import styles from "./items.module.css";

type Counts = FacetCounts | null;
type Kind = keyof NonNullable<Counts>;

const elements = ["Pb", "Cd", "As", "Hg", "Sb", "Cr", "Ni", "Ba"] as const;
const verdicts = ["above", "too-close", "below", "not-detected"] as const;

/** What the list can be narrowed down by, each choice with how many items it leaves. A plain form: its answer is an address. */
export function ItemFilters({ search, counts, language }: { search: ItemSearch; counts: Counts; language: Language }) {
  const searchPage = catalogueIn[language].search;
  const { facets } = searchPage;
  const labels = labelsIn[language];
  const years =
    counts?.year
      .map((row) => row.value)
      .sort()
      .reverse() ?? (search.year ? [search.year] : []);
  const more = (["material", "age", "year", "sort"] as const).some((kind) => search[kind]);
  return (
    // biome-ignore lint/a11y/useSemanticElements: "search" is not yet known to every browser in use
    <form
      role="search"
      aria-label={searchPage.form}
      action={pathsIn[language].items()}
      method="get"
      className={`${styles.filters} no-print`}
    >
      <TextField name="q" id="items-q" label={searchPage.words} type="search" defaultValue={search.q} maxLength={200} />
      <Facet kind="category" {...facets.category} values={itemCategories} {...{ search, counts }}>
        {(value) => labelOf(labels.category, value)}
      </Facet>
      <Facet kind="element" {...facets.element} values={elements} {...{ search, counts }}>
        {(value) => elementTitle(value, language)}
      </Facet>
      <Facet kind="verdict" {...facets.verdict} values={verdicts} {...{ search, counts }}>
        {(value) => labelOf(verdictsIn[language].verdicts, value)}
      </Facet>
      <Actions>
        <Button kind="primary" type="submit">
          {searchPage.search}
        </Button>
        <ButtonLink href={pathsIn[language].scan()}>{scanWordsIn[language].open}</ButtonLink>
      </Actions>
      <div className={styles.more}>
        <Disclosure summary={searchPage.more} open={more}>
          <div className={styles.filters}>
            <Facet kind="material" {...facets.material} values={materials} {...{ search, counts }}>
              {(value) => labelOf(labels.material, value)}
            </Facet>
            <Facet kind="age" {...facets.age} values={ageGroups} {...{ search, counts }}>
              {(value) => labelOf(labels.ageGroup, value)}
            </Facet>
            <Facet kind="year" {...facets.year} values={years} {...{ search, counts }}>
              {(value) => value}
            </Facet>
            <SelectField
              name="sort"
              label={searchPage.order}
              defaultValue={search.sort ?? ""}
              empty={search.q === "" ? searchPage.sorts.newest : searchPage.sorts.best}
              choices={(["newest", "name"] as const).map((value) => ({ value, label: searchPage.sorts[value] }))}
            />
          </div>
        </Disclosure>
      </div>
    </form>
  );
}

function Facet({
  kind,
  label,
  empty,
  values,
  search,
  counts,
  children,
}: {
  kind: Kind;
  label: string;
  empty: string;
  values: readonly string[];
  search: ItemSearch;
  counts: Counts;
  children: (value: string) => string;
}) {
  const items = new Map(counts?.[kind].map((row) => [row.value, row.items]));
  // A value that leaves nothing is left out, but for the one that was chosen.
  const offered = values.filter((value) => counts === null || items.has(value) || search[kind] === value);
  return (
    <SelectField
      name={kind}
      label={label}
      empty={empty}
      defaultValue={search[kind] ?? ""}
      choices={offered.map((value) => ({
        value,
        label: counts === null ? children(value) : `${children(value)} (${items.get(value) ?? 0})`,
      }))}
    />
  );
}
