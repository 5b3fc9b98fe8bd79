import { Disclosure } from "@/app/_components/disclosure.tsx";
import { PageLink } from "@/app/_components/page-link.tsx";
import { absoluteUrl } from "@/lib/exports/published-revision.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { cardAlt, shareIn } from "@/lib/wording/share.ts";
import styles from "./recompute-panel.module.css";

/** The report, the labels and the card of this revision. */
export function ShareLinks({
  snapshot,
  baseUrl,
  language,
}: {
  snapshot: Snapshot;
  baseUrl: string;
  language: Language;
}) {
  const [paths, shareWords] = [pathsIn[language], shareIn[language]];
  const { slug, revision } = snapshot;
  const page = absoluteUrl(baseUrl, paths.item(slug));
  const alt = cardAlt(snapshot, language).replaceAll("&", "&amp;").replaceAll('"', "&quot;");
  const embed = `<a href="${page}"><img src="${absoluteUrl(baseUrl, paths.cardSvg(slug))}" alt="${alt}" width="480"></a>`;
  return (
    <div className="flow no-print">
      <h3>{shareWords.title}</h3>
      <ul>
        <li>
          <PageLink href={paths.report(slug, revision)} language={language}>
            {shareWords.report}
          </PageLink>
        </li>
        <li>
          <PageLink href={paths.labels(slug)} language={language}>
            {shareWords.labels}
          </PageLink>
        </li>
        <li>
          <PageLink href={paths.cardSvg(slug, revision)} language={language}>
            {shareWords.card}
          </PageLink>
        </li>
      </ul>
      <Disclosure summary={shareWords.embed}>
        <pre className={styles.command}>
          <code>{embed}</code>
        </pre>
      </Disclosure>
    </div>
  );
}
