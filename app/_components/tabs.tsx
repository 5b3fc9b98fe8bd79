import type { ReactNode } from "react";
import styles from "./tabs.module.css";

/** Tabs that are links: each has its own address, works without scripts and keeps the back button true. */
export function Tabs({
  label,
  tabs,
  current,
}: {
  label: string;
  tabs: { href: string; text: ReactNode; count?: number }[];
  /** The href of the tab in view. */
  current: string;
}) {
  return (
    <nav aria-label={label} className={styles.tabs}>
      <ul>
        {tabs.map((tab) => (
          <li key={tab.href}>
            <a href={tab.href} aria-current={tab.href === current ? "page" : undefined}>
              {tab.text}
              {tab.count === undefined ? null : <span className={styles.count}> ({tab.count})</span>}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
