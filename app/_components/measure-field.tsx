import type { ComponentProps } from "react";
import styles from "./field.module.css";
import { boxWidth, describedBy, Field, type FieldProps, fieldId } from "./field.tsx";

/**
 * A quantity as a person writes it ("12", "10 to 14"), with its unit to choose beside it. Plain HTML, for forms that must work
 * without scripts; where scripts may be had, `QuantityField` also says what it understood. Hint and error have the whole width.
 */
export function MeasureField(
  props: FieldProps & {
    /** The field that holds the unit: its name, its name for people, what can be chosen. */
    unit: { name: string; label: string; value: string; choices: readonly string[] };
  } & Omit<ComponentProps<"input">, keyof FieldProps>,
) {
  const { name, label, id: _id, hint, error, optional, hideLabel, width = 16, unit, ...input } = props;
  const id = fieldId(props);
  return (
    <Field id={id} label={label} hint={hint} error={error} optional={optional} hideLabel={hideLabel}>
      <span className={styles.withUnit}>
        <input
          type="text"
          autoComplete="off"
          {...input}
          className={styles.box}
          style={boxWidth(width)}
          id={id}
          name={name}
          aria-describedby={describedBy(id, hint, error)}
          aria-invalid={error ? true : undefined}
        />
        <label className="visually-hidden" htmlFor={`${id}-unit`}>
          {unit.label}
        </label>
        <select
          className={`${styles.box} ${styles.select} ${styles.unitBox}`}
          id={`${id}-unit`}
          name={unit.name}
          defaultValue={unit.value}
        >
          {unit.choices.map((choice) => (
            <option key={choice} value={choice}>
              {choice}
            </option>
          ))}
        </select>
      </span>
    </Field>
  );
}
