import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { connection } from "next/server";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { exampleGroups } from "@/app/_components/examples/all-examples.ts";
import styles from "./style.module.css";

export const metadata: Metadata = { title: "Style", robots: { index: false } };

/** Every component in every state. For whoever builds: not served in production unless STYLE_PAGE=1. */
export default async function StylePage() {
  await connection();
  if (process.env.NODE_ENV === "production" && process.env["STYLE_PAGE"] !== "1") notFound();
  return (
    <>
      <PageHead title="Style" kicker="For builders">
        <p>Every component of the product in every state it can have.</p>
      </PageHead>
      <Ledger>
        <Entry title="Colours" id="colours">
          <ul className={styles.swatches}>
            {["paper", "paper-shade", "ink", "ink-soft", "rule", "rule-faint", "accent", "accent-strong"].map(
              (token) => (
                <li key={token}>
                  <span className={styles.swatch} style={{ background: `var(--${token})` }} />
                  {token}
                </li>
              ),
            )}
          </ul>
        </Entry>
        {exampleGroups.map((group) => (
          <Entry key={group.title} title={group.title}>
            {group.examples.map((example) => (
              <section key={example.id} id={`example-${example.id}`} className={styles.example}>
                <h3 className={styles.title}>{example.title}</h3>
                {example.show}
              </section>
            ))}
          </Entry>
        ))}
      </Ledger>
    </>
  );
}
