"use client";

import { type ReactNode, useId, useRef } from "react";
import { Actions, Button } from "./button.tsx";
import styles from "./confirm-dialog.module.css";

/**
 * A button that asks once more before something that cannot be undone. The browser's own dialog: it keeps the focus, closes
 * with Escape and gives the focus back. What can be undone needs no question; it takes an UndoNotice.
 * `children` say what will happen; the answer "yes" is the caller's, a button with `onConfirm` or a form in `form`.
 */
export function ConfirmDialog({
  ask,
  askKind = "quiet",
  title,
  children,
  confirm,
  onConfirm,
  form,
  keep = "Leave it as it is",
}: {
  /** The words on the button that opens it. */
  ask: ReactNode;
  askKind?: "primary" | "secondary" | "quiet";
  title: ReactNode;
  children: ReactNode;
  confirm?: ReactNode;
  onConfirm?: () => void;
  /** A whole form in place of the button, for a server action. */
  form?: ReactNode;
  keep?: ReactNode;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  const close = () => dialog.current?.close();
  return (
    <>
      <Button kind={askKind} aria-haspopup="dialog" onClick={() => dialog.current?.showModal()}>
        {ask}
      </Button>
      <dialog ref={dialog} className={styles.dialog} aria-labelledby={titleId}>
        <h2 id={titleId} className={styles.title}>
          {title}
        </h2>
        <div className="flow">{children}</div>
        <Actions>
          {form ?? (
            <Button
              kind="primary"
              onClick={() => {
                close();
                onConfirm?.();
              }}
            >
              {confirm}
            </Button>
          )}
          <Button onClick={close}>{keep}</Button>
        </Actions>
      </dialog>
    </>
  );
}
