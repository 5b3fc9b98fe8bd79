import { paths } from "@/lib/platform/paths.ts";
import { SearchField } from "./search-field.tsx";
import styles from "./search-form.module.css";

/** The one search form: a plain GET, so it works without scripts and its result has an address. */
export function SearchForm({
  id,
  label,
  query = "",
  size = "small",
  hint,
}: {
  id: string;
  label: string;
  query?: string;
  size?: "small" | "large";
  hint?: string;
}) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: "search" is not yet known to every browser in use
    <form
      role="search"
      aria-label={label}
      action={paths.items()}
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
          placeholder={size === "small" ? "Search items" : undefined}
          describedBy={hint ? `${id}-hint` : undefined}
        />
        <button type="submit">Search</button>
      </div>
    </form>
  );
}
