import { paths } from "@/lib/platform/paths.ts";
import styles from "./site-footer.module.css";

/** The cautions that hold for every page, and the ways into the whole record. */
export function SiteFooter({ invented = process.env["REGISTRY_REAL"] !== "1" }: { invented?: boolean }) {
  return (
    <footer className={styles.footer}>
      <div className={styles.inner}>
        <div className={styles.cautions}>
          {invented ? (
            <p>
              <strong>All of it is invented.</strong> The items, people and readings shown here were made up to show how
              the registry works. No real product was tested.
            </p>
          ) : null}
          <p>
            An X-ray reading tells how much of a metal is in a material. It does not tell how much comes out, or how
            much gets into a body.
          </p>
          <p>
            No level of lead is known to be without harm for a child. If you are worried about a child, ask a doctor
            about a blood test.
          </p>
          <p>
            The analyser makes X-rays. Only trained people may use it, under the rules of the place they are in; it is
            never pointed at a person or at food in the hand.
          </p>
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
