import type { ReactNode } from "react";
import styles from "./error-summary.module.css";

/** One thing to mend: the sentence, and the id of the field it is about. */
export type FieldError = { field?: string | undefined; text: ReactNode };

/**
 * All that is wrong, at the top of the form, each line a link to its field. `role="alert"` has it read out when it
 * appears; the screen moves focus to it (id "errors") after a submission. Renders nothing without errors.
 */
export function ErrorSummary({
  errors,
  title = errors.length === 1 ? "One thing needs mending" : `${errors.length} things need mending`,
}: {
  errors: FieldError[];
  title?: string;
}) {
  if (errors.length === 0) return null;
  return (
    <div className={styles.summary} role="alert" id="errors" tabIndex={-1} aria-labelledby="errors-title">
      <h2 className={styles.title} id="errors-title">
        {title}
      </h2>
      <ul className={styles.list}>
        {errors.map((error, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the list is made anew on every submission
          <li key={index}>{error.field ? <a href={`#${error.field}`}>{error.text}</a> : error.text}</li>
        ))}
      </ul>
    </div>
  );
}
