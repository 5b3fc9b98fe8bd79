import { Actions, Button } from "@/app/_components/button.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { ScanButton } from "@/app/_components/scan-button.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { ageGroups, itemCategories, materials } from "@/lib/quantity/item-words.ts";
import type { FacetCounts } from "@/lib/store/search.ts";
import { searchPage } from "@/lib/wording/catalogue.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { ageGroupLabels, categoryLabels, labelOf, materialLabels } from "@/lib/wording/labels.ts";
import { verdictWords } from "@/lib/wording/verdicts.ts";
import type { ItemSearch } from "./item-search.ts";
import styles from "./items.module.css";

type Counts = FacetCounts | null;
type Kind = keyof NonNullable<Counts>;

const elements = ["Pb", "Cd", "As", "Hg", "Sb", "Cr", "Ni", "Ba"] as const;
const verdicts = ["above", "too-close", "below", "not-detected"] as const;

/** What the list can be narrowed down by, each choice with how many items it leaves. A plain form: its answer is an address. */
export function ItemFilters({ search, counts }: { search: ItemSearch; counts: Counts }) {
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
      aria-label="Search and narrow down"
      action={paths.items()}
      method="get"
      className={`${styles.filters} no-print`}
    >
      <TextField name="q" id="items-q" label="Words" type="search" defaultValue={search.q} maxLength={200} />
      <Facet kind="category" label="Kind" empty="Any kind" values={itemCategories} {...{ search, counts }}>
        {(value) => labelOf(categoryLabels, value)}
      </Facet>
      <Facet kind="element" label="Looked for" empty="Anything" values={elements} {...{ search, counts }}>
        {elementTitle}
      </Facet>
      <Facet kind="verdict" label="Answer" empty="Any answer" values={verdicts} {...{ search, counts }}>
        {(value) => labelOf(verdictWords, value)}
      </Facet>
      <Actions>
        <Button kind="primary" type="submit">
          Search
        </Button>
        <ScanButton field="items-q" />
      </Actions>
      <div className={styles.more}>
        <Disclosure summary={searchPage.more} open={more}>
          <div className={styles.filters}>
            <Facet kind="material" label="Material" empty="Any material" values={materials} {...{ search, counts }}>
              {(value) => labelOf(materialLabels, value)}
            </Facet>
            <Facet kind="age" label="Made for" empty="Any age" values={ageGroups} {...{ search, counts }}>
              {(value) => labelOf(ageGroupLabels, value)}
            </Facet>
            <Facet kind="year" label="Tested in" empty="Any year" values={years} {...{ search, counts }}>
              {(value) => value}
            </Facet>
            <SelectField
              name="sort"
              label="In order of"
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
