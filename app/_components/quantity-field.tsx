"use client";

import { type ReactNode, useState } from "react";
import type { Unit } from "@/lib/quantity/units.ts";
import { parseWrittenQuantity } from "@/lib/quantity/written-quantity.ts";
import { typedSentence, understoodQuantity } from "@/lib/wording/typed-words.ts";
import styles from "./field.module.css";
import { boxWidth, describedBy, Field, type FieldProps, fieldId } from "./field.tsx";

/**
 * A number with its unit beside it, and its uncertainty where one is asked. "0,05 %" is taken as it is typed, and the line
 * below says what was understood before anything is sent. It sends `name` (the text as typed), `name-unit` (the unit
 * chosen) and, with `uncertainty`, `name-u`; `formQuantity` reads them by the same rules. Without scripts it is two
 * native controls.
 */
export function QuantityField({
  wanted,
  units = [wanted],
  uncertainty,
  defaultValue = "",
  defaultUncertainty = "",
  required,
  disabled,
  ...field
}: FieldProps & {
  /** The unit that the form is about; what is understood is also said in it. */
  wanted: Unit;
  /** Units that can be chosen beside the number; any unit of the same kind can be typed. */
  units?: readonly Unit[];
  /** The label of a second box for the uncertainty, such as "expanded uncertainty". */
  uncertainty?: string;
  defaultValue?: string | number;
  defaultUncertainty?: string | number;
  required?: boolean;
  disabled?: boolean;
}) {
  const { name, label, hint, error, optional, hideLabel, width = 10 } = field;
  const id = fieldId(field);
  const [text, setText] = useState(String(defaultValue));
  const [uText, setUText] = useState(String(defaultUncertainty));
  const [chosen, setChosen] = useState<Unit>(wanted);
  const said = whatIsSaid(text, uText, wanted, chosen);
  const box = `${styles.box} ${styles.number}`;
  return (
    <Field id={id} label={label} hint={hint} error={error} optional={optional} hideLabel={hideLabel}>
      <span className={styles.withUnit}>
        <input
          type="text"
          inputMode="decimal"
          autoComplete="off"
          className={box}
          style={boxWidth(width)}
          id={id}
          name={name}
          value={text}
          required={required}
          disabled={disabled}
          onChange={(event) => setText(event.currentTarget.value)}
          aria-invalid={error || said?.wrong ? true : undefined}
          aria-describedby={[describedBy(id, hint, error), `${id}-said`].filter(Boolean).join(" ")}
        />
        {uncertainty ? (
          <>
            <label htmlFor={`${id}-u`}>
              <span aria-hidden="true">±</span>
              <span className="visually-hidden">{uncertainty}</span>
            </label>
            <input
              type="text"
              inputMode="decimal"
              autoComplete="off"
              className={box}
              style={boxWidth(7)}
              id={`${id}-u`}
              name={`${name}-u`}
              value={uText}
              disabled={disabled}
              onChange={(event) => setUText(event.currentTarget.value)}
              aria-describedby={`${id}-said`}
            />
          </>
        ) : null}
        <UnitBox
          id={id}
          name={name}
          units={units}
          chosen={chosen}
          onChosen={setChosen}
          disabled={disabled}
          label={label}
        />
      </span>
      <p className={`${styles.said} ${said?.wrong ? styles.saidWrong : ""}`} id={`${id}-said`} aria-live="polite">
        {said?.wrong && error ? "" : (said?.text ?? "")}
      </p>
    </Field>
  );
}

function UnitBox({
  id,
  name,
  units,
  chosen,
  onChosen,
  disabled,
  label,
}: {
  id: string;
  name: string;
  units: readonly Unit[];
  chosen: Unit;
  onChosen: (unit: Unit) => void;
  disabled: boolean | undefined;
  label: ReactNode;
}) {
  if (units.length < 2) return <span className={styles.unit}>{chosen}</span>;
  return (
    <>
      <label className="visually-hidden" htmlFor={`${id}-unit`}>
        Unit of {label}
      </label>
      <select
        className={`${styles.box} ${styles.select} ${styles.unitBox}`}
        id={`${id}-unit`}
        name={`${name}-unit`}
        value={chosen}
        disabled={disabled}
        onChange={(event) => onChosen(event.currentTarget.value as Unit)}
      >
        {units.map((unit) => (
          <option key={unit} value={unit}>
            {unit}
          </option>
        ))}
      </select>
    </>
  );
}

/** Nothing while the box is empty; then what was understood, or why it cannot be. */
function whatIsSaid(text: string, uText: string, wanted: Unit, chosen: Unit): { wrong: boolean; text: string } | null {
  if (text.trim() === "") return null;
  const value = parseWrittenQuantity(text, { wanted, chosen });
  if (!value.ok) return { wrong: true, text: value.problems.map(typedSentence).join(" ") };
  if (uText.trim() === "") return { wrong: false, text: understoodQuantity(value.value, wanted) };
  const u = parseWrittenQuantity(uText, { wanted, chosen: value.value.unit });
  if (!u.ok) return { wrong: true, text: u.problems.map(typedSentence).join(" ") };
  return { wrong: false, text: understoodQuantity(value.value, wanted, u.value) };
}
