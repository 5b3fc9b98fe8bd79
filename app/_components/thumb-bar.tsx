import type { ReactNode } from "react";
import styles from "./thumb-bar.module.css";

/**
 * On a phone, the way to the one thing this screen is for stays at the foot of the window, under the thumb. The last child of its
 * page. On a wider screen it is not there: the thing itself is in view.
 */
export function ThumbBar({ children }: { children: ReactNode }) {
  return <div className={styles.thumb}>{children}</div>;
}
