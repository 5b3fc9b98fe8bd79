import { TextField } from "@/app/_components/field.tsx";
import { newPassword } from "@/lib/wording/account.ts";

/** A password that is chosen now: its rule beside it, `also` what else is to be known, and for password managers a new one. */
export function NewPasswordField({ label, also }: { label: string; also?: string }) {
  return (
    <TextField
      name="password"
      label={label}
      hint={also === undefined ? newPassword.hint : `${newPassword.hint} ${also}`}
      type="password"
      autoComplete="new-password"
      minLength={newPassword.least}
      required
      width={32}
    />
  );
}
