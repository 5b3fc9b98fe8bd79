import { catalogueIn } from "@/lib/wording/catalogue.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { LanguageLink } from "./language-link.tsx";
import { PageLink } from "./page-link.tsx";
import { SearchForm } from "./search-form.tsx";
import styles from "./site-header.module.css";

/** One head for readers, testers and reviewers. It asks nobody's name, so that public pages can be kept and shared. */
export function SiteHeader({ language }: { language: Language }) {
  const [paths, words] = [pathsIn[language], catalogueIn[language].site];
  return (
    <header className={styles.header}>
      <div className={styles.inner}>
        <p className={styles.name}>
          <a href={paths.home()}>{words.name}</a>
        </p>
        <div className={styles.search}>
          <SearchForm id="site-search" label={words.search} language={language} />
        </div>
        <nav aria-label={words.main} className={styles.nav}>
          <ul>
            <li>
              <a href={paths.items()}>{words.items}</a>
            </li>
            <li>
              <PageLink href={paths.limits()} language={language}>
                {words.limits}
              </PageLink>
            </li>
            <li>
              <PageLink href={paths.amounts()} language={language}>
                {words.amounts}
              </PageLink>
            </li>
            <li>
              <PageLink href={paths.methods()} language={language}>
                {words.methods}
              </PageLink>
            </li>
            <li>
              <a href={paths.corrections()}>{words.corrections}</a>
            </li>
          </ul>
        </nav>
        <ul className={styles.aside}>
          <LanguageLink />
          <li>
            <PageLink href={paths.bench()} language={language}>
              {words.signIn}
            </PageLink>
          </li>
        </ul>
      </div>
    </header>
  );
}
