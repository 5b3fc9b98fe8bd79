"use client";

import { Actions, Button } from "@/app/_components/button.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { TextField } from "@/app/_components/field.tsx";

/** Sets the ticked readings aside with a written reason, or takes them back. */
export function AsideForm({
  pending,
  restorable,
  onAside,
  onRestore,
}: {
  pending: boolean;
  restorable: boolean;
  onAside: (reason: string) => void;
  onRestore: () => void;
}) {
  return (
    <Disclosure summary="Set the ticked readings aside, or take them back">
      <form action={(data) => onAside(String(data.get("reason") ?? "").trim())}>
        <TextField
          name="reason"
          label="Why they are set aside"
          hint="At least 8 characters. The reason is published, and so are the readings, with the value they would have made."
          maxLength={400}
          width={44}
        />
        <Actions>
          <Button type="submit" disabled={pending}>
            Set them aside
          </Button>
          {restorable ? (
            <Button disabled={pending} onClick={onRestore}>
              Take them back
            </Button>
          ) : null}
        </Actions>
      </form>
    </Disclosure>
  );
}
