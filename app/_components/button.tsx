import type { ComponentProps, ReactNode } from "react";
import styles from "./button.module.css";

type Kind = "primary" | "secondary" | "quiet";

const classOf = (kind: Kind): string => `${styles.button} ${styles[kind] ?? ""}`;

/** A control that does something on this page. One primary to a screen. */
export function Button({ kind = "secondary", type = "button", ...rest }: ComponentProps<"button"> & { kind?: Kind }) {
  return <button {...rest} type={type} className={classOf(kind)} />;
}

/** A link that looks like a button: goes somewhere, changes nothing. */
export function ButtonLink({ kind = "secondary", ...rest }: ComponentProps<"a"> & { kind?: Kind; href: string }) {
  return <a {...rest} className={classOf(kind)} />;
}

/**
 * The row of controls at the end of a form or part; on a phone they take the whole width, the main one first. With `thumb` they stay at
 * the foot of a phone's window while their form is in view: for the long forms.
 */
export function Actions({ children, thumb = false }: { children: ReactNode; thumb?: boolean }) {
  return <div className={`${styles.actions} ${thumb ? styles.thumb : ""}`}>{children}</div>;
}
