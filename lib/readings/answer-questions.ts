import * as z from "zod";
import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import type { Figure, Mapping } from "./mapping.ts";
import { mappingSchema } from "./mapping.ts";
import { readUnit } from "./unit-words.ts";
import { isTimeZone } from "./zone-offset.ts";

const shape = mappingSchema.shape;
const filled = <T extends z.ZodType>(schema: z.ZodNullable<T>) => schema.unwrap().optional();
const coverage = z.union([z.literal(1), z.literal(2), z.literal(3)]);
const quantity = shape.elements.element.shape.quantity.unwrap();

/** Answers to questions. For k, unit and quantity: one for all columns that lack it, or by column (value or error column). */
export const answersSchema = z.object({
  decimal: filled(shape.decimal),
  thousands: filled(shape.thousands),
  timeZone: z.string().optional(),
  dateOrder: filled(shape.dateOrder),
  zero: filled(shape.zero),
  dash: filled(shape.dash),
  notAvailable: filled(shape.notAvailable),
  noLimit: shape.noLimit.optional(),
  errorOfNonDetect: shape.errorOfNonDetect.optional(),
  k: z.union([coverage, z.record(z.string(), coverage)]).optional(),
  unit: z.union([z.string(), z.record(z.string(), z.string())]).optional(),
  quantity: z.union([quantity, z.record(z.string(), quantity)]).optional(),
  quantityByMode: z.record(z.string(), quantity).optional(),
  /** Limits for non-detects that state none, by element symbol, in the column's unit and the file's decimal mark. */
  defaultLimits: z.record(z.string(), z.string()).optional(),
});
export type Answers = z.infer<typeof answersSchema>;

const pick = <T>(answer: T | Record<string, T> | undefined, ...columns: (string | null)[]): T | undefined => {
  if (typeof answer !== "object" || answer === null) return answer as T | undefined;
  const byColumn = answer as Record<string, T>;
  return columns.map((name) => (name === null ? undefined : byColumn[name])).find((found) => found !== undefined);
};

/** An answer for a named column replaces what stands there; an answer for all columns fills only what is missing. */
const fill = <T>(
  present: T | null,
  answer: T | Record<string, T> | undefined,
  ...columns: (string | null)[]
): T | null => {
  const given = pick(answer, ...columns);
  if (given === undefined) return present;
  return typeof answer === "object" || present === null ? given : present;
};

function answerFigure<F extends Figure>(
  figure: F,
  answers: Answers,
  unitColumn: string | null,
  problems: Problem[],
): F {
  const text = fill<string>(null, answers.unit, figure.value);
  const replaces = typeof answers.unit === "object" || (figure.unit === null && unitColumn === null);
  const word = text !== null && replaces ? readUnit(text) : null;
  if (text !== null && replaces && !word)
    problems.push({ code: "unit-unknown", where: { column: figure.value }, found: text });
  const unit = word ? { unit: word.unit, unitText: text } : { unit: figure.unit, unitText: figure.unitText };
  const present = word && figure.quantity !== null && !word.kinds.includes(figure.quantity) ? null : figure.quantity;
  const onlyKind = word?.kinds.length === 1 ? word.kinds[0]! : present;
  return {
    ...{ ...figure, ...unit, k: fill(figure.k, answers.k, figure.error, figure.value) },
    quantity: fill(onlyKind, answers.quantity, figure.value),
  };
}

/** Puts answers into a mapping. A unit for all columns leaves alone those whose unit stands in a column of the file. Refused: a time zone or a unit that does not exist. Everything not answered stays as it was. */
export function answerQuestions(mapping: Mapping, answers: Answers): Outcome<Mapping> {
  const problems: Problem[] = [];
  if (answers.timeZone !== undefined && !isTimeZone(answers.timeZone))
    problems.push({ code: "time-zone-unknown", where: { field: "timeZone" }, found: answers.timeZone });
  const elements = mapping.elements.map((entry) => ({
    ...answerFigure(entry, answers, mapping.unitColumn, problems),
    defaultLimit: answers.defaultLimits?.[entry.element] ?? entry.defaultLimit,
  }));
  const long = mapping.long ? answerFigure(mapping.long, answers, mapping.long.unitColumn, problems) : null;
  if (problems.length > 0) return refused(...problems);
  return done({
    ...{ ...mapping, elements, long },
    longLimits: mapping.shape === "long" ? { ...mapping.longLimits, ...answers.defaultLimits } : mapping.longLimits,
    ...{ decimal: answers.decimal ?? mapping.decimal, timeZone: answers.timeZone ?? mapping.timeZone },
    // Whoever says what "1,234" means has been shown both meanings: a point as decimal mark makes the comma a separator.
    thousands: answers.thousands ?? (answers.decimal !== undefined ? "yes" : mapping.thousands),
    ...{
      dateOrder: answers.dateOrder ?? mapping.dateOrder,
      zero: answers.zero ?? mapping.zero,
      dash: answers.dash ?? mapping.dash,
    },
    ...{ notAvailable: answers.notAvailable ?? mapping.notAvailable, noLimit: answers.noLimit ?? mapping.noLimit },
    errorOfNonDetect: answers.errorOfNonDetect ?? mapping.errorOfNonDetect,
    quantityByMode: { ...mapping.quantityByMode, ...answers.quantityByMode },
  });
}
