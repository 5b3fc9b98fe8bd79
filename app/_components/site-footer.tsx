import { paths } from "@/lib/platform/paths.ts";
import { inventedNotice } from "@/lib/wording/catalogue.ts";
import { cautions, radiationCaution } from "@/lib/wording/cautions.ts";
import styles from "./site-footer.module.css";

const always = [cautions["total-content"], cautions["no-known-level"], cautions["blood-test"], radiationCaution];

/** The cautions that hold for every page, and the ways into the whole record. `invented`: the registry says that it is a scenario. */
export function SiteFooter({ invented }: { invented: boolean }) {
  return (
    <footer className={styles.footer}>
      <div className={styles.inner}>
        <div className={styles.cautions}>
          {invented ? (
            <p>
              <strong>{inventedNotice}</strong>
            </p>
          ) : null}
          {always.map((caution) => (
            <p key={caution.code}>{caution.text}</p>
          ))}
        </div>
        <nav aria-label="The whole record" className={styles.nav}>
          <ul>
            <li>
              <a href={paths.log()}>Publication log</a>
            </li>
            <li>
              <a href={paths.corrections()}>Corrections</a>
            </li>
            <li>
              <a href={paths.methods()}>How results are made</a>
            </li>
            <li>
              <a href={paths.api.openapi()}>Data interface</a>
            </li>
            <li>
              <a href={paths.feedXml()}>Feed</a>
            </li>
          </ul>
        </nav>
      </div>
    </footer>
  );
}
