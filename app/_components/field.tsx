import type { ComponentProps, ReactNode } from "react";
import styles from "./field.module.css";

/** What every field has: a label, perhaps a hint and an error, and an id (the name unless told otherwise). */
export type FieldProps = {
  name: string;
  label: ReactNode;
  id?: string | undefined;
  hint?: ReactNode | undefined;
  error?: ReactNode | undefined;
  /** Said after the label. Leave out where most fields of the form are required. */
  optional?: boolean | string | undefined;
  hideLabel?: boolean | undefined;
  /** Characters the answer is likely to have; the box is made about that wide. */
  width?: number | undefined;
};

type Own = keyof FieldProps;

export const fieldId = (props: { id?: string | undefined; name: string }): string => props.id ?? props.name;

/** The ids of hint and error, for aria-describedby; undefined where there is neither. */
export const describedBy = (id: string, hint: ReactNode, error: ReactNode): string | undefined => {
  const ids = [hint ? `${id}-hint` : null, error ? `${id}-error` : null].filter((each) => each !== null);
  return ids.length === 0 ? undefined : ids.join(" ");
};

export const boxWidth = (width: number | undefined) =>
  width === undefined ? undefined : { inlineSize: `calc(${width}ch + 1.6rem)` };

/** Label, hint and error around any control; the control itself is the child. Use it for a control the set lacks. */
export function Field({
  id,
  label,
  hint,
  error,
  optional,
  hideLabel,
  children,
}: Omit<FieldProps, "name" | "width"> & { id: string; children: ReactNode }) {
  return (
    <div className={`${styles.field} ${error ? styles.wrong : ""}`}>
      <label className={hideLabel ? "visually-hidden" : styles.label} htmlFor={id}>
        {label}
        {optional ? <span className={styles.optional}> ({optional === true ? "optional" : optional})</span> : null}
      </label>
      <HintAndError id={id} hint={hint} error={error} />
      {children}
    </div>
  );
}

export function HintAndError({ id, hint, error }: { id: string; hint: ReactNode; error: ReactNode }) {
  return (
    <>
      {hint ? (
        <p className={styles.hint} id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      {error ? (
        <p className={styles.error} id={`${id}-error`}>
          <span className="visually-hidden">Error: </span>
          {error}
        </p>
      ) : null}
    </>
  );
}

/** A line of text; also e-mail, password, date, search by `type`. */
export function TextField(props: FieldProps & Omit<ComponentProps<"input">, Own>) {
  const { name, label, id: _id, hint, error, optional, hideLabel, width, ...input } = props;
  const id = fieldId(props);
  return (
    <Field id={id} label={label} hint={hint} error={error} optional={optional} hideLabel={hideLabel}>
      <input
        type="text"
        {...input}
        className={styles.box}
        style={boxWidth(width)}
        id={id}
        name={name}
        aria-describedby={describedBy(id, hint, error)}
        aria-invalid={error ? true : undefined}
      />
    </Field>
  );
}

/** Several lines of text. */
export function TextAreaField(props: FieldProps & Omit<ComponentProps<"textarea">, Own>) {
  const { name, label, id: _id, hint, error, optional, hideLabel, width: _width, ...input } = props;
  const id = fieldId(props);
  return (
    <Field id={id} label={label} hint={hint} error={error} optional={optional} hideLabel={hideLabel}>
      <textarea
        rows={4}
        {...input}
        className={styles.box}
        id={id}
        name={name}
        aria-describedby={describedBy(id, hint, error)}
        aria-invalid={error ? true : undefined}
      />
    </Field>
  );
}

/**
 * A number as a person writes it, with its unit beside it. It is a text box with a number keyboard, not `type=number`,
 * so that "0,05" and "1e3" arrive as written and the program, not the browser, judges them.
 */
export function NumberField(props: FieldProps & { unit?: ReactNode } & Omit<ComponentProps<"input">, Own>) {
  const { name, label, id: _id, hint, error, optional, hideLabel, width = 8, unit, ...input } = props;
  const id = fieldId(props);
  return (
    <Field id={id} label={label} hint={hint} error={error} optional={optional} hideLabel={hideLabel}>
      <span className={styles.withUnit}>
        <input
          inputMode="decimal"
          autoComplete="off"
          {...input}
          type="text"
          className={`${styles.box} ${styles.number}`}
          style={boxWidth(width)}
          id={id}
          name={name}
          aria-describedby={
            [unit ? `${id}-unit` : null, describedBy(id, hint, error)].filter(Boolean).join(" ") || undefined
          }
          aria-invalid={error ? true : undefined}
        />
        {unit ? (
          <span className={styles.unit} id={`${id}-unit`}>
            {unit}
          </span>
        ) : null}
      </span>
    </Field>
  );
}

export type Choice = { value: string; label: ReactNode; hint?: ReactNode; disabled?: boolean };

/** One of a longer list. `empty` is the first line, chosen until the person chooses. */
export function SelectField(
  props: FieldProps & {
    choices: { value: string; label: string; disabled?: boolean }[];
    empty?: string;
  } & Omit<ComponentProps<"select">, Own | "children">,
) {
  const { name, label, id: _id, hint, error, optional, hideLabel, width, choices, empty, ...input } = props;
  const id = fieldId(props);
  return (
    <Field id={id} label={label} hint={hint} error={error} optional={optional} hideLabel={hideLabel}>
      <select
        {...input}
        className={`${styles.box} ${styles.select}`}
        style={boxWidth(width)}
        id={id}
        name={name}
        aria-describedby={describedBy(id, hint, error)}
        aria-invalid={error ? true : undefined}
      >
        {empty === undefined ? null : <option value="">{empty}</option>}
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value} disabled={choice.disabled}>
            {choice.label}
          </option>
        ))}
      </select>
    </Field>
  );
}

/** A file, told beforehand what is taken and how large. The drop target of a bench screen wraps this same input. */
export function FileField(props: FieldProps & Omit<ComponentProps<"input">, Own | "type">) {
  const { name, label, id: _id, hint, error, optional, hideLabel, width: _width, ...input } = props;
  const id = fieldId(props);
  return (
    <Field id={id} label={label} hint={hint} error={error} optional={optional} hideLabel={hideLabel}>
      <input
        {...input}
        type="file"
        className={styles.file}
        id={id}
        name={name}
        aria-describedby={describedBy(id, hint, error)}
        aria-invalid={error ? true : undefined}
      />
    </Field>
  );
}
