import { parseArgs } from "node:util";
import { UsageError } from "./usage-error.ts";

/** What the person says about the file beside what it says itself. Null: not said. */
export type ReconcileOptions = {
  file: string;
  json: boolean;
  k: 1 | 2 | 3 | null;
  decimal: "comma" | "point" | null;
  thousands: "yes" | "no" | null;
  zero: "number" | "not-detected" | "not-measured" | null;
  dash: "not-detected" | "not-measured" | null;
  notAvailable: "not-detected" | "not-measured" | null;
  noLimit: "keep" | "set-aside" | null;
  sheet: string | null;
  sample: string[];
  spot: string | null;
  unit: string | null;
  kind: "bulk" | "coating" | null;
  calibration: number | null;
};

export const usage = `npm run assay -- reconcile FILE [options]
  --json                       the whole answer as JSON
  --k 1|2|3                    how many standard uncertainties the file's error figures cover
  --decimal comma|point        the decimal mark
  --thousands yes|no           whether the other mark groups thousands
  --sheet NAME                 the sheet of a workbook (XLSX or ODS) that holds several
  --sample COLUMN              the column that names the sample (several: joined)
  --spot COLUMN                the column that names the spot
  --unit UNIT                  the unit of result columns that state none: ppm, mg/kg, %, µg/cm², mg/cm²
  --kind bulk|coating          what a mass fraction is of; bulk unless said otherwise
  --calibration REL            relative standard uncertainty of the calibration: 0.05 is 5 %
  --zero number|not-detected|not-measured      what a bare 0 means
  --dash not-detected|not-measured             what "-" means
  --not-available not-detected|not-measured    what "n/a" means
  --no-limit keep|set-aside    what to do with a non-detect that states no limit (set aside)`;

const choices = {
  k: ["1", "2", "3"],
  decimal: ["comma", "point"],
  thousands: ["yes", "no"],
  kind: ["bulk", "coating"],
  zero: ["number", "not-detected", "not-measured"],
  dash: ["not-detected", "not-measured"],
  "not-available": ["not-detected", "not-measured"],
  "no-limit": ["keep", "set-aside"],
} as const;

/** Reads the arguments after `reconcile`; each mistake is one sentence (UsageError). */
export function readOptions(args: string[]): ReconcileOptions {
  const { values, positionals } = parse(args);
  const [file, ...others] = positionals;
  if (file === undefined) throw new UsageError("Name the file to read: npm run assay -- reconcile FILE.csv.");
  if (others.length > 0) throw new UsageError(`One file at a time: "${others[0]}" came after "${file}".`);
  const chosen = <Name extends keyof typeof choices>(name: Name): (typeof choices)[Name][number] | null => {
    const given = values[name];
    if (given === undefined) return null;
    const found = choices[name].find((choice) => choice === given);
    if (found === undefined) throw new UsageError(`--${name} can be ${choices[name].join(" or ")}, not "${given}".`);
    return found;
  };
  const k = chosen("k");
  return {
    file,
    json: values.json ?? false,
    k: k === null ? null : (Number(k) as 1 | 2 | 3),
    decimal: chosen("decimal"),
    thousands: chosen("thousands"),
    zero: chosen("zero"),
    dash: chosen("dash"),
    notAvailable: chosen("not-available"),
    noLimit: chosen("no-limit"),
    sheet: values.sheet ?? null,
    sample: values.sample ?? [],
    spot: values.spot ?? null,
    unit: values.unit ?? null,
    kind: chosen("kind"),
    calibration: relative(values.calibration),
  };
}

function parse(args: string[]) {
  const text = { type: "string" } as const;
  try {
    return parseArgs({
      args,
      allowPositionals: true,
      options: {
        ...{ json: { type: "boolean" as const }, sample: { type: "string" as const, multiple: true as const } },
        ...{ k: text, decimal: text, thousands: text, zero: text, dash: text, "not-available": text, "no-limit": text },
        ...{ sheet: text, spot: text, unit: text, kind: text, calibration: text },
      },
    });
  } catch (error) {
    throw new UsageError(`${(error as Error).message.split(". ")[0]?.replace(/\.$/, "")}.\n\n${usage}`);
  }
}

function relative(text: string | undefined): number | null {
  if (text === undefined) return null;
  const number = /^\d*\.?\d+$/.test(text) ? Number(text) : Number.NaN;
  if (!(number >= 0 && number < 1))
    throw new UsageError(
      `--calibration is a relative standard uncertainty from 0 to below 1, such as 0.05, not "${text}".`,
    );
  return number;
}
