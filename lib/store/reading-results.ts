import { randomUUID } from "node:crypto";
import { z } from "zod";
import { sha256 } from "../platform/sha256.ts";
import type { QuantityKind } from "../quantity/kinds.ts";
import { quantityKinds } from "../quantity/kinds.ts";
import type { ElementResult, Reading } from "../readings/reading.ts";
import { readingFingerprint } from "../readings/reading-fingerprint.ts";
import type { NewReading } from "./imports.ts";

/**
 * A reading's element results as stored: short tuples that point into the batch's dictionary of columns, so that
 * 100,000 rows of 20 elements stay tens of megabytes, and the text as written is kept beside the number.
 */
const storedColumn = z.object({
  element: z.string(),
  quantity: z.enum(Object.keys(quantityKinds) as [QuantityKind, ...QuantityKind[]]),
  unit: z.string(),
  unitText: z.string(),
  k: z.union([z.literal(1), z.literal(2), z.literal(3)]).nullable(),
  column: z.string(),
  oxide: z.string().optional(),
});
export type StoredColumn = z.infer<typeof storedColumn>;

const written = z.tuple([z.string(), z.number(), z.number()]).nullable(); // text, value, decimals
// column, below detection, value, error, limit, line of the result's own row where the file has one
const storedResult = z.tuple([z.number().int(), z.boolean(), written, written, written, z.number().int().nullable()]);
const storedResults = z.array(storedResult);
type StoredResult = z.infer<typeof storedResult>;

export const parseColumns = (json: string): StoredColumn[] => z.array(storedColumn).parse(JSON.parse(json));

const isColumnOf = (column: StoredColumn, result: ElementResult): boolean =>
  column.column === result.column &&
  column.element === result.element &&
  column.quantity === result.quantity &&
  column.unit === result.unit &&
  column.unitText === result.unitText &&
  column.k === result.k &&
  (column.oxide ?? "") === (result.oxide ?? "");

const columnOf = ({ element, quantity, unit, unitText, k, column, oxide }: ElementResult): StoredColumn => ({
  ...{ element, quantity, unit, unitText, k, column },
  ...(oxide ? { oxide } : {}),
});

/** Collects the dictionary while readings are packed; `columns()` is what the batch stores. */
export function resultPacker(known: StoredColumn[] = []) {
  const columns: StoredColumn[] = [];
  // By the file's own column, which only a few of them share: looked up a million times for a long file.
  const places = new Map<string, number[]>();
  const add = (column: StoredColumn): number => {
    const at = columns.push(column) - 1;
    places.set(column.column, [...(places.get(column.column) ?? []), at]);
    return at;
  };
  for (const column of known) add(column);
  const pack = (results: ElementResult[]): string => {
    const packed: StoredResult[] = results.map((r) => {
      const at = places.get(r.column)?.find((place) => isColumnOf(columns[place]!, r)) ?? add(columnOf(r));
      return [at, r.belowDetection, tuple(r.value), tuple(r.error), tuple(r.detectionLimit), r.row ?? null];
    });
    return JSON.stringify(packed);
  };
  return { pack, columns: () => columns };
}

export function unpackResults(json: string, columns: StoredColumn[]): ElementResult[] {
  return storedResults.parse(JSON.parse(json)).map(([at, belowDetection, value, error, detectionLimit, row]) => {
    const stored = columns[at];
    if (!stored)
      throw new Error(`A stored reading points at result column ${at}, and its batch has ${columns.length}.`);
    const { oxide, ...column } = stored;
    const figures = { value: object(value), error: object(error), detectionLimit: object(detectionLimit) };
    return { ...column, belowDetection, ...figures, ...(oxide ? { oxide } : {}), ...(row === null ? {} : { row }) };
  });
}

type Written = z.infer<typeof written>;
const tuple = (w: ElementResult["value"]): Written => (w ? [w.text, w.value, w.decimals] : null);
const object = (w: Written): ElementResult["value"] => (w ? { text: w[0], value: w[1], decimals: w[2] } : null);

/** A reading as it goes into the table: its results packed, and a fingerprint to know it by in a second file. */
export function packReading(reading: Reading, pack: (results: ElementResult[]) => string): NewReading {
  const { results, spot, ...rest } = reading;
  const fingerprint = sha256(readingFingerprint(reading));
  return {
    ...rest,
    takenOn: reading.takenOn ?? null,
    id: randomUUID(),
    spotText: spot,
    results: pack(results),
    fingerprint,
    asideReason: null,
  };
}
