"use client";

import { type ReactNode, startTransition, useActionState, useEffect, useRef } from "react";
import { Actions, Button } from "./button.tsx";
import { ErrorSummary } from "./error-summary.tsx";

/** What a form's action answers with: sentences, each with the field it is about, or a notice that it is done. */
export type FormState = { errors: { field?: string | undefined; text: string }[]; notice?: string | undefined };
export type FormAction = (state: FormState, data: FormData) => Promise<FormState>;

/**
 * A form over a server action. Works without JavaScript; with it, what was typed stays in the fields when something
 * needs mending, and the summary takes the focus.
 */
export function ActionForm({
  action,
  submit,
  submitKind = "primary",
  children,
  after,
  compact = false,
}: {
  action: FormAction;
  submit: string;
  submitKind?: "primary" | "secondary" | "quiet";
  children?: ReactNode;
  after?: ReactNode;
  compact?: boolean;
}) {
  const [state, run, pending] = useActionState(action, { errors: [] });
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (state.errors.length > 0) form.current?.querySelector<HTMLElement>("#errors")?.focus();
    else if (state.notice) form.current?.reset();
  }, [state]);
  const button = (
    <Button type="submit" kind={submitKind} disabled={pending}>
      {pending ? "Working …" : submit}
    </Button>
  );
  return (
    <form
      ref={form}
      action={run}
      onSubmit={(event) => {
        // React empties a form after its action; run by hand, it keeps what was typed.
        event.preventDefault();
        const data = new FormData(event.currentTarget, (event.nativeEvent as SubmitEvent).submitter);
        startTransition(() => run(data));
      }}
    >
      <ErrorSummary errors={state.errors} />
      <p role="status">{state.notice ?? ""}</p>
      {children}
      {compact ? (
        button
      ) : (
        <Actions>
          {button}
          {after}
        </Actions>
      )}
    </form>
  );
}
