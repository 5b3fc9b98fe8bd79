"use client";

import { useState } from "react";
import { Button } from "react-aria-components/Button";
import { ComboBox } from "react-aria-components/ComboBox";
import { Input } from "react-aria-components/Input";
import { Label } from "react-aria-components/Label";
import { ListBox, ListBoxItem } from "react-aria-components/ListBox";
import { Popover } from "react-aria-components/Popover";
import styles from "./combobox-field.module.css";
import fieldStyles from "./field.module.css";
import { boxWidth, describedBy, type FieldProps, fieldId, HintAndError, SelectField } from "./field.tsx";
import { useScripted } from "./use-scripted.ts";

export type ComboChoice = { value: string; label: string };

/**
 * One of a list too long to scroll: type a few letters, then choose. On react-aria, since no browser has one that reads
 * out well and sends a value of its own. Without scripts it is a native select with the same name and values.
 */
export function ComboboxField({
  choices,
  empty = "Not said",
  defaultValue = "",
  required = false,
  disabled = false,
  onChosen,
  ...field
}: FieldProps & {
  choices: readonly ComboChoice[];
  /** The first line of the native select, and what an empty box means. */
  empty?: string;
  defaultValue?: string;
  required?: boolean;
  disabled?: boolean;
  onChosen?: (value: string) => void;
}) {
  const scripted = useScripted();
  const { name, label, hint, error, optional, hideLabel, width = 28 } = field;
  const id = fieldId(field);
  const [value, setValue] = useState(defaultValue);
  const choose = (next: string) => {
    setValue(next);
    onChosen?.(next);
  };
  if (!scripted)
    return (
      <SelectField
        {...field}
        width={width}
        choices={[...choices]}
        empty={empty}
        defaultValue={defaultValue}
        required={required}
        disabled={disabled}
      />
    );
  return (
    <div className={`${fieldStyles.field} ${error ? fieldStyles.wrong : ""}`}>
      <ComboBox
        defaultItems={choices}
        selectedKey={value === "" ? null : value}
        onSelectionChange={(key) => choose(key === null ? "" : String(key))}
        onInputChange={(text) => text === "" && choose("")}
        isRequired={required}
        isDisabled={disabled}
        isInvalid={Boolean(error)}
        validationBehavior="aria"
        allowsEmptyCollection
      >
        <Label className={hideLabel ? "visually-hidden" : (fieldStyles.label ?? "")}>
          {label}
          {optional ? <span className={fieldStyles.optional}> (optional)</span> : null}
        </Label>
        <HintAndError id={id} hint={hint} error={error} />
        <span className={styles.combo} style={boxWidth(width)}>
          <Input
            className={`${fieldStyles.box} ${styles.input}`}
            id={id}
            placeholder={empty}
            aria-describedby={describedBy(id, hint, error)}
          />
          <Button className={styles.open ?? ""}>
            <span aria-hidden="true">▾</span>
          </Button>
        </span>
        <input type="hidden" name={name} value={value} />
        <Popover className={styles.popover ?? ""} offset={2}>
          <ListBox<ComboChoice>
            className={styles.list ?? ""}
            renderEmptyState={() => <p className={styles.none}>Nothing with these letters.</p>}
          >
            {(choice) => (
              <ListBoxItem id={choice.value} textValue={choice.label} className={styles.choice ?? ""}>
                {choice.label}
              </ListBoxItem>
            )}
          </ListBox>
        </Popover>
      </ComboBox>
    </div>
  );
}
