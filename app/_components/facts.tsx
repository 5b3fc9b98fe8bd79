import type { ReactNode } from "react";
import styles from "./facts.module.css";

/** Names and their values, ruled, as at the head of a form. Entries without a value are left out. */
export function Facts({ facts }: { facts: { name: ReactNode; value: ReactNode | null | undefined }[] }) {
  return (
    <dl className={styles.facts}>
      {facts
        .filter((fact) => fact.value !== null && fact.value !== undefined && fact.value !== "")
        .map((fact, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a fixed list
          <div key={index} className={styles.fact}>
            <dt>{fact.name}</dt>
            <dd>{fact.value}</dd>
          </div>
        ))}
    </dl>
  );
}
