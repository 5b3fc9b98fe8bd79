import type { ReactNode } from "react";
import { Actions, Button } from "@/app/_components/button.tsx";
import { Checkbox, RadioGroup } from "@/app/_components/choice-field.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { MeasureField } from "@/app/_components/measure-field.tsx";
import {
  type AmountsState,
  amountSources,
  amountUnits,
  arealUnits,
  areaUnits,
  contentUnits,
  type DimensionName,
  densitySources,
  dimensionNames,
  lengthUnits,
  loadingUnits,
  weightUnits,
} from "@/lib/amounts/amounts-form.ts";
import { geometries, geometryShapes } from "@/lib/amounts/geometry.ts";
import { metals } from "@/lib/amounts/materials-table.ts";
import { referenceLoadings } from "@/lib/limits/reference-loadings.ts";
import { materialDensities } from "@/lib/quantity/material-densities.ts";
import { amountFiguresIn } from "@/lib/wording/amount-figures.ts";
import { amountLabelsIn } from "@/lib/wording/amount-labels.ts";
import { amountRecord, referenceText } from "@/lib/wording/amounts.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import styles from "./amounts.module.css";

/** Elements offered; any symbol can be in the address. */
const elements = ["Pb", "Cd", "As", "Hg", "Sb", "Ni", "Cr", "Ba"];

/** Where the page goes once it is worked out: to the answer, or to what needs mending. */
export const answerId = "worked";

/** A field's id: its name alone may be that of a place on the page ("content" is where the skip link leads). */
export const amountFieldId = (field: string): string => `amounts-${field}`;

type Errors = ReadonlyMap<string, string>;
type Given = { state: AmountsState; errors: Errors; language: Language };

/**
 * The calculator's form. It sends its fields by GET, so that the answer has an address. Which fields show goes by the
 * choices made, in the style sheet alone: without scripts, and all of them where the browser cannot.
 */
export function AmountsForm({ state, errors, language }: Given) {
  const given = { state, errors, language };
  const { fields, sources, hint } = amountLabelsIn[language];
  const amountsPage = amountFiguresIn[language].page;
  const paths = pathsIn[language];
  return (
    <form action={`${paths.amounts()}#${answerId}`} method="get" className={styles.form}>
      <p className={styles.hint}>{hint}</p>
      <div className={styles.group}>
        <SelectField
          name="element"
          label={fields.element}
          defaultValue={state.element}
          width={16}
          choices={[...new Set([...elements, state.element])].map((symbol) => ({
            value: symbol,
            label: elementTitle(symbol, language),
          }))}
        />
        <RadioGroup
          name="from"
          legend={fields.from}
          defaultValue={state.from}
          choices={amountSources.map((value) => ({ value, label: sources[value] }))}
          inline
        />
      </div>
      <Sizes {...given} />
      <Density {...given} />
      <div className={styles.group} data-for="shape weight coat">
        <Measure {...given} name="content" unit="contentUnit" units={contentUnits} />
      </div>
      <div className={styles.group} data-for="amount">
        <Measure {...given} name="amount" unit="amountUnit" units={amountUnits} />
      </div>
      <div className={styles.group}>
        <Measure {...given} name="loading" unit="loadingUnit" units={loadingUnits} list="published-loadings" />
        <datalist id="published-loadings">
          {referenceLoadings()
            .filter((one, at, all) => all.findIndex((other) => other.value === one.value) === at)
            .map((one) => (
              <option key={one.value} value={one.value}>
                {referenceText(one, language)}
              </option>
            ))}
        </datalist>
        <Measure {...given} name="over" unit="overUnit" units={areaUnits} optional />
      </div>
      <More {...given} />
      <Actions>
        <Button type="submit">{amountsPage.submit}</Button>
        <a href={paths.amounts()}>{amountsPage.clear}</a>
      </Actions>
    </form>
  );
}

/** Shape and sizes, weight, or the coat: whichever the amount is worked out from. */
function Sizes({ state, errors, language }: Given) {
  const given = { state, errors, language };
  const { fields, shapes } = amountLabelsIn[language];
  return (
    <div className={styles.group} data-for="shape weight coat">
      <div data-for="shape">
        <SelectField
          name="shape"
          label={fields.shape}
          defaultValue={state.shape}
          width={22}
          choices={geometryShapes.map((value) => ({ value, label: shapes[value] }))}
        />
      </div>
      <div data-for="shape">
        <SelectField
          name="lengthUnit"
          label={fields.lengthUnit}
          defaultValue={state.lengthUnit}
          width={8}
          choices={lengthUnits.map((value) => ({ value, label: value }))}
        />
      </div>
      {dimensionNames.map((name) => (
        <div key={name} data-for={usedBy(name)}>
          {name === "area" ? (
            <Measure {...given} name="area" unit="areaUnit" units={areaUnits} />
          ) : (
            <Measure {...given} name={name} />
          )}
        </div>
      ))}
      <div data-for="weight">
        <Measure {...given} name="weight" unit="weightUnit" units={weightUnits} />
      </div>
      <p className={styles.hint} data-for="coat">
        {amountFiguresIn[language].page.coatHint}
      </p>
      <div data-for="coat">
        <Measure {...given} name="coatLoading" unit="coatLoadingUnit" units={arealUnits} />
      </div>
      <div data-for="coat">
        <Measure {...given} name="coatThickness" optional />
      </div>
    </div>
  );
}

/** The choices that show a size: the shapes that have it, and the coat for its area. */
export const usedBy = (name: DimensionName): string =>
  [
    ...geometryShapes.filter((shape) => Object.hasOwn(geometries[shape].dimensions, name)),
    ...(name === "area" ? ["coat"] : []),
  ].join(" ");

function Density({ state, errors, language }: Given) {
  const { fields, densitySources: sources } = amountLabelsIn[language];
  const { choose } = catalogueIn[language].site;
  return (
    <div className={styles.group} data-for="shape coat">
      <RadioGroup
        name="densityFrom"
        legend={fields.densityFrom}
        defaultValue={state.densityFrom}
        choices={densitySources.map((value) => ({ value, label: sources[value] }))}
        inline
      />
      <div data-for="material">
        <SelectField
          name="material"
          id={amountFieldId("material")}
          label={fields.material}
          defaultValue={state.material}
          empty={choose}
          error={errors.get("material")}
          choices={materialDensities.map(({ id, name }) => ({ value: id, label: amountRecord(name, language) }))}
        />
      </div>
      <div data-for="alloy">
        <SelectField
          name="rest"
          id={amountFieldId("rest")}
          label={fields.rest}
          defaultValue={state.rest}
          empty={choose}
          width={16}
          error={errors.get("rest")}
          choices={metals.map((symbol) => ({ value: symbol, label: elementTitle(symbol, language) }))}
        />
      </div>
      <div data-for="entered">
        <Measure state={state} errors={errors} language={language} name="density" />
      </div>
    </div>
  );
}

function More({ state, errors, language }: Given) {
  const { fields, dayHint } = amountLabelsIn[language];
  const { optional, moreFields } = catalogueIn[language].site;
  const open = ["itemWeight", "sealed", "day", "leached", "volume"].some(
    (name) => state[name as keyof AmountsState] !== "" || errors.has(name),
  );
  return (
    <Disclosure summary={moreFields} open={open}>
      <div className={styles.group}>
        <Measure state={state} errors={errors} language={language} name="itemWeight" optional />
        <Measure state={state} errors={errors} language={language} name="leached" optional />
        <Measure state={state} errors={errors} language={language} name="volume" optional />
        <TextField
          name="day"
          id={amountFieldId("day")}
          label={fields.day}
          hint={dayHint}
          defaultValue={state.day}
          width={12}
          error={errors.get("day")}
          optional={optional}
        />
        <Checkbox name="sealed" id="sealed" value="yes" label={fields.sealed} defaultChecked={state.sealed === "yes"} />
      </div>
    </Disclosure>
  );
}

/** A quantity as a person writes it, with its unit to choose beside it where it has one of its own. */
function Measure({
  state,
  errors,
  language,
  name,
  unit,
  units,
  optional = false,
  list,
}: Given & {
  name: keyof AmountsState;
  unit?: keyof AmountsState;
  units?: readonly string[];
  optional?: boolean;
  list?: string;
}): ReactNode {
  const { fields } = amountLabelsIn[language];
  const common = {
    name,
    id: amountFieldId(name),
    label: fields[name],
    defaultValue: state[name],
    width: 16,
    autoComplete: "off",
    maxLength: 60,
    error: errors.get(name),
    optional: optional && catalogueIn[language].site.optional,
    ...(list === undefined ? {} : { list }),
  };
  if (unit === undefined || units === undefined) return <TextField {...common} />;
  return <MeasureField {...common} unit={{ name: unit, label: fields[unit], value: state[unit], choices: units }} />;
}
