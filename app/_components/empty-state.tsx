import type { ReactNode } from "react";
import styles from "./empty-state.module.css";

/** Nothing here yet, why, and what to do about it. */
export function EmptyState({
  title,
  children,
  headingLevel = 2,
}: {
  title: ReactNode;
  children?: ReactNode;
  headingLevel?: 2 | 3;
}) {
  const Heading = `h${headingLevel}` as const;
  return (
    <div className={styles.empty}>
      <Heading>{title}</Heading>
      {children}
    </div>
  );
}
