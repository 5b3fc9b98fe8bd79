import { Disclosure } from "@/app/_components/disclosure.tsx";
import { absoluteUrl } from "@/lib/exports/published-revision.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { cardAlt, shareWords } from "@/lib/wording/share.ts";
import styles from "./recompute-panel.module.css";

/** The report, the labels and the card of this revision. */
export function ShareLinks({ snapshot, baseUrl }: { snapshot: Snapshot; baseUrl: string }) {
  const { slug, revision } = snapshot;
  const page = absoluteUrl(baseUrl, paths.item(slug));
  const alt = cardAlt(snapshot).replaceAll("&", "&amp;").replaceAll('"', "&quot;");
  const embed = `<a href="${page}"><img src="${absoluteUrl(baseUrl, paths.cardSvg(slug))}" alt="${alt}" width="480"></a>`;
  return (
    <div className="flow no-print">
      <h3>{shareWords.title}</h3>
      <ul>
        <li>
          <a href={paths.report(slug, revision)}>{shareWords.report}</a>
        </li>
        <li>
          <a href={paths.labels(slug)}>{shareWords.labels}</a>
        </li>
        <li>
          <a href={paths.cardSvg(slug, revision)}>{shareWords.card}</a>
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
