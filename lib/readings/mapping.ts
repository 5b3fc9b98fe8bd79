import * as z from "zod";
import { quantityKinds } from "../quantity/kinds.ts";
import { roles } from "./header-words.ts";

/**
 * What each column of a file is, and what the file itself does not say. Null stands for "not said yet": open-questions.ts
 * lists what must still be answered, answer-questions.ts fills it in. Columns are named as in Table.columns. A plain
 * value that can be stored, remembered by headerFingerprint, shown and changed.
 */
const column = z.string().min(1);
const coverage = z.union([z.literal(1), z.literal(2), z.literal(3)]);
const quantity = z.enum(Object.keys(quantityKinds) as [keyof typeof quantityKinds, ...(keyof typeof quantityKinds)[]]);

/** A figure with its companions. In the wide shape one for each element; in the long shape one for the whole table. */
const figure = z.object({
  value: column,
  error: column.nullable(),
  limit: column.nullable(),
  /** A column that says "<", "ND", "detected" … beside the value. */
  flag: column.nullable(),
  /** Canonical spelling of the unit ("mg/kg"); null: asked, unless every cell or a unit column says it. */
  unit: z.string().nullable(),
  unitText: z.string().nullable(),
  quantity: quantity.nullable(),
  /** How many standard uncertainties an error figure covers; null where there are no error figures or it is not known yet. */
  k: coverage.nullable(),
});

export const mappingSchema = z.object({
  version: z.literal(1),
  /** Of a workbook: the sheet that the columns are of. Null for a text. */
  sheet: z.string().nullable().default(null),
  /** wide: a row is a reading, elements side by side. long: a row is one element of a reading. */
  shape: z.enum(["wide", "long"]),
  roles: z.object(
    Object.fromEntries(roles.filter((role) => role !== "sample").map((role) => [role, column.nullable()])) as Record<
      Exclude<(typeof roles)[number], "sample">,
      z.ZodNullable<z.ZodString>
    >,
  ),
  /** The columns that name the sample, in order; their texts are joined with " / ". */
  sample: z.array(column),
  /** In the wide shape: a column that gives the row's unit, for figures whose header gives none. */
  unitColumn: column.nullable().default(null),
  elements: z.array(
    figure.extend({
      element: z.string().min(1),
      /** "PbO" where the figures are of the oxide; they are turned into the element's. */
      oxide: z.string().nullable(),
      /** The limit to take, in the column's unit and the file's decimal mark, where a non-detect states none. */
      defaultLimit: z.string().nullable(),
    }),
  ),
  /** Default limits by element symbol in the long shape, where no column belongs to an element. */
  longLimits: z.record(z.string(), z.string()),
  long: figure.extend({ element: column, unitColumn: column.nullable() }).nullable(),
  decimal: z.enum(["comma", "point"]).nullable(),
  /** Whether "1.234" beside a decimal comma (or "1,234" beside a point) is one thousand two hundred thirty-four. */
  thousands: z.enum(["yes", "no"]).nullable(),
  /** IANA name ("Europe/Lisbon") or fixed offset ("+01:00") for times without one. */
  timeZone: z.string().nullable(),
  dateOrder: z.enum(["day-first", "month-first"]).nullable(),
  /** What a bare 0 without an error means. */
  zero: z.enum(["number", "not-detected", "not-measured"]).nullable(),
  /** What "-" means, and what "n/a" means. */
  dash: z.enum(["not-detected", "not-measured"]).nullable(),
  notAvailable: z.enum(["not-detected", "not-measured"]).nullable(),
  /** A number in the error column beside a non-detect: its detection limit (the usual reading), or of no use. */
  errorOfNonDetect: z.enum(["limit", "ignore"]),
  /** A non-detect for which no limit is stated anywhere: set the row aside, or keep it without a limit. */
  noLimit: z.enum(["set-aside", "keep"]),
  /** Quantity kind by the text of the mode column, where one file holds bulk and coating modes. */
  quantityByMode: z.record(z.string(), quantity),
});

export type Mapping = z.infer<typeof mappingSchema>;
export type ElementColumns = Mapping["elements"][number];
export type LongColumns = NonNullable<Mapping["long"]>;
export type Figure = z.infer<typeof figure>;

/** The figures that a mapping reads: one for each element in the wide shape, the one of the long shape. */
export const figuresOf = (mapping: Mapping): Figure[] =>
  mapping.shape === "long" ? [mapping.long].filter((long) => long !== null) : mapping.elements;
