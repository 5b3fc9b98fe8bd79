import { paths } from "@/lib/platform/paths.ts";
import { SearchForm } from "./search-form.tsx";
import styles from "./site-header.module.css";

/** One head for readers, testers and reviewers. It asks nobody's name, so that public pages can be kept and shared. */
export function SiteHeader() {
  return (
    <header className={styles.header}>
      <div className={styles.inner}>
        <p className={styles.name}>
          <a href={paths.home()}>Cupboard Assay</a>
        </p>
        <div className={styles.search}>
          <SearchForm id="site-search" label="Search tested items" />
        </div>
        <nav aria-label="Main" className={styles.nav}>
          <ul>
            <li>
              <a href={paths.items()}>Items</a>
            </li>
            <li>
              <a href={paths.limits()}>Limits</a>
            </li>
            <li>
              <a href={paths.amounts()}>Amounts</a>
            </li>
            <li>
              <a href={paths.methods()}>Methods</a>
            </li>
            <li>
              <a href={paths.corrections()}>Corrections</a>
            </li>
          </ul>
        </nav>
        <p className={styles.bench}>
          <a href={paths.bench()}>Sign in</a>
        </p>
      </div>
    </header>
  );
}
