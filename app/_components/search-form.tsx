import { catalogueIn } from "@/lib/wording/catalogue.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { SearchField } from "./search-field.tsx";
import styles from "./search-form.module.css";

/** The one search form: a plain GET, so it works without scripts and its result has an address. */
export function SearchForm({
  id,
  label,
  query = "",
  size = "small",
  hint,
  language = "en",
}: {
  id: string;
  label: string;
  query?: string;
  size?: "small" | "large";
  hint?: string;
  language?: Language;
}) {
  const words = catalogueIn[language].site;
  return (
    // biome-ignore lint/a11y/useSemanticElements: "search" is not yet known to every browser in use
    <form
      role="search"
      aria-label={label}
      action={pathsIn[language].items()}
      method="get"
      className={`${styles.form} ${styles[size] ?? ""}`}
    >
      <label htmlFor={id} className={size === "small" ? "visually-hidden" : styles.label}>
        {label}
      </label>
      {hint ? (
        <p className={styles.hint} id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      <div className={styles.line}>
        <SearchField
          id={id}
          query={query}
          placeholder={size === "small" ? words.placeholder : undefined}
          words={{
            suggestions: words.suggestions,
            oneSuggestion: words.oneSuggestion,
            suggestionsBelow: words.suggestionsBelow,
            language,
          }}
          describedBy={hint ? `${id}-hint` : undefined}
        />
        <button type="submit">{catalogueIn[language].search.search}</button>
      </div>
    </form>
  );
}
