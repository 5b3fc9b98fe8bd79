import type { Person } from "@/lib/access/permissions.ts";
import { may } from "@/lib/access/permissions.ts";
import { paths } from "@/lib/platform/paths.ts";
import styles from "./workplace-bar.module.css";

/**
 * Under the head of every bench and review screen: who is signed in and the ways to their workplaces. Public pages have none, so
 * that they ask for no session and can be kept and shared.
 */
export function WorkplaceBar({ person, current }: { person: Person; current: "bench" | "review" | "account" }) {
  const places = [
    { key: "bench", href: paths.bench(), text: "Bench", shown: may(person, "see-bench").yes },
    { key: "review", href: paths.review(), text: "Review", shown: may(person, "see-review").yes },
    { key: "people", href: paths.people(), text: "People", shown: may(person, "manage-people").yes },
    { key: "terms", href: paths.terms(), text: "Terms", shown: may(person, "set-terms").yes },
    { key: "account", href: paths.account(), text: person.name, shown: true },
  ];
  return (
    <nav aria-label="Your workplaces" className={styles.bar} data-workplace>
      <ul>
        {places
          .filter((place) => place.shown)
          .map((place) => (
            <li key={place.key} className={place.key === "account" ? styles.who : undefined}>
              <a href={place.href} aria-current={place.key === current ? "true" : undefined}>
                {place.text}
              </a>
              {place.key === "account" ? <span className={styles.role}>, {person.role}</span> : null}
            </li>
          ))}
      </ul>
    </nav>
  );
}
