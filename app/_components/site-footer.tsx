import { catalogueIn } from "@/lib/wording/catalogue.ts";
import { cautionsIn } from "@/lib/wording/cautions.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { LanguageLink } from "./language-link.tsx";
import { PageLink } from "./page-link.tsx";
import styles from "./site-footer.module.css";

/** The cautions that hold for every page, and the ways into the whole record. `invented`: the registry says that it is a scenario. */
export function SiteFooter({ invented, language }: { invented: boolean; language: Language }) {
  const [paths, words] = [pathsIn[language], catalogueIn[language].site];
  const { always: cautions, radiation } = cautionsIn[language];
  const always = [cautions["total-content"], cautions["no-known-level"], cautions["blood-test"], radiation];
  return (
    <footer className={styles.footer}>
      <div className={styles.inner}>
        <div className={styles.cautions}>
          {invented ? (
            <p>
              <strong>{catalogueIn[language].invented}</strong>
            </p>
          ) : null}
          {always.map((caution) => (
            <p key={caution.code}>{caution.text}</p>
          ))}
        </div>
        <nav aria-label={words.record} className={styles.nav}>
          <ul>
            <li>
              <a href={paths.log()}>{words.log}</a>
            </li>
            <li>
              <a href={paths.corrections()}>{words.corrections}</a>
            </li>
            <li>
              <PageLink href={paths.methods()} language={language}>
                {words.howMade}
              </PageLink>
            </li>
            <li>
              <a href={paths.api.openapi()}>{words.dataInterface}</a>
            </li>
            <li>
              <PageLink href={paths.feedXml()} language={language}>
                {words.feed}
              </PageLink>
            </li>
            <LanguageLink />
          </ul>
        </nav>
      </div>
    </footer>
  );
}
