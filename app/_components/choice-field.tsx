import type { ComponentProps, ReactNode } from "react";
import styles from "./field.module.css";
import { type Choice, describedBy, fieldId, HintAndError } from "./field.tsx";

/** A group of fields under one question. */
export function Fieldset({
  legend,
  id,
  hint,
  error,
  children,
}: {
  legend: ReactNode;
  id?: string;
  hint?: ReactNode;
  error?: ReactNode;
  children: ReactNode;
}) {
  return (
    <fieldset
      className={`${styles.fieldset} ${error ? styles.wrong : ""}`}
      id={id}
      aria-describedby={id ? describedBy(id, hint, error) : undefined}
    >
      <legend className={styles.legend}>{legend}</legend>
      {id ? <HintAndError id={id} hint={hint} error={error} /> : null}
      {children}
    </fieldset>
  );
}

type BoxProps = Omit<ComponentProps<"input">, "type"> & { name: string; label: ReactNode; hint?: ReactNode };

/** One box to tick. */
export function Checkbox({ label, hint, ...input }: BoxProps) {
  const id = input.id ?? (input.value === undefined ? input.name : `${input.name}-${input.value}`);
  return <Tick kind="checkbox" input={{ ...input, id }} label={label} hint={hint} />;
}

/** One of a few, all in view. The first choice takes the name as id, so that an error summary lands on it. */
export function RadioGroup({
  name,
  legend,
  choices,
  defaultValue,
  hint,
  error,
  inline = false,
  onChange,
}: {
  name: string;
  legend: ReactNode;
  choices: Choice[];
  defaultValue?: string | undefined;
  hint?: ReactNode;
  error?: ReactNode;
  inline?: boolean;
  onChange?: ComponentProps<"input">["onChange"];
}) {
  return (
    <Fieldset legend={legend} id={`${name}-group`} hint={hint} error={error}>
      <div className={inline ? styles.inline : undefined}>
        {choices.map((choice, index) => (
          <Tick
            key={choice.value}
            kind="radio"
            label={choice.label}
            hint={choice.hint}
            input={{
              name,
              id: index === 0 ? fieldId({ name }) : `${name}-${choice.value}`,
              value: choice.value,
              defaultChecked: defaultValue === choice.value,
              disabled: choice.disabled,
              ...(onChange ? { onChange } : {}),
            }}
          />
        ))}
      </div>
    </Fieldset>
  );
}

function Tick({
  kind,
  input,
  label,
  hint,
}: {
  kind: "checkbox" | "radio";
  input: ComponentProps<"input"> & { id: string };
  label: ReactNode;
  hint?: ReactNode;
}) {
  return (
    <div className={styles.tick}>
      <input {...input} type={kind} aria-describedby={hint ? `${input.id}-hint` : undefined} />
      <label htmlFor={input.id}>{label}</label>
      {hint ? (
        <p className={styles.tickHint} id={`${input.id}-hint`}>
          {hint}
        </p>
      ) : null}
    </div>
  );
}
