"use client";

import type { ReactNode } from "react";
import { Button } from "./button.tsx";
import styles from "./undo-notice.module.css";

/**
 * What was just done, and the way back. It stays until something else is done or it is put away: nobody has to be quick.
 * The region is there from the start, so that its words are read out when they come; it keeps no room while empty.
 */
export function UndoNotice({
  children,
  onUndo,
  onDismiss,
  pending = false,
  undoText = "Undo",
}: {
  children: ReactNode | null;
  onUndo: () => void;
  onDismiss?: () => void;
  pending?: boolean;
  undoText?: string;
}) {
  return (
    <div role="status" className={styles.region}>
      {children ? (
        <div className={styles.notice}>
          <p>{children}</p>
          <Button disabled={pending} onClick={onUndo}>
            {pending ? "Working …" : undoText}
          </Button>
          {onDismiss ? (
            <Button kind="quiet" onClick={onDismiss}>
              Put this notice away
            </Button>
          ) : null}
        </div>
      ) : null}
    </div>
  );
}
