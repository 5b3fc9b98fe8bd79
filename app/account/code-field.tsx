import { TextField } from "@/app/_components/field.tsx";

/** A one-time code: keys for digits on a phone, and whatever holds codes may offer one. */
export function CodeField({ label, hint }: { label: string; hint: string }) {
  return (
    <TextField
      name="code"
      label={label}
      hint={hint}
      inputMode="numeric"
      autoComplete="one-time-code"
      maxLength={20}
      required
      width={12}
    />
  );
}
