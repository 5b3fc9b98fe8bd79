import type { ReactNode } from "react";
import { Button } from "@/app/_components/button.tsx";
import { TextField } from "@/app/_components/field.tsx";
import { benchList } from "@/lib/wording/bench.ts";
import styles from "./find-items-form.module.css";

/** Narrows a list of items down by their names. A plain form: its answer is an address. */
export function FindItemsForm({
  action,
  find,
  hint,
  children,
}: {
  action: string;
  find: string | undefined;
  hint?: string;
  children?: ReactNode;
}) {
  return (
    <form method="get" action={action} className={styles.line}>
      <TextField
        name="find"
        label={benchList.find}
        {...(hint === undefined ? {} : { hint })}
        type="search"
        maxLength={200}
        width={18}
        defaultValue={find ?? ""}
      />
      {children}
      <Button type="submit">{benchList.show}</Button>
    </form>
  );
}
