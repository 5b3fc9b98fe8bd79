import { type PlacedResult, resultsByWeight, verdictOf } from "../publication/leading-decision.ts";
import type { Snapshot } from "../publication/snapshot.ts";
import { resultText } from "../wording/formats.ts";
import { type Column, csvTable } from "./csv-table.ts";
import { pageColumns, partColumns } from "./place-columns.ts";

export type ResultRow = PlacedResult & { snapshot: Snapshot };

/** Every column of results.csv: one row for each part and element of an item's newest revision, numbers unrounded. */
export const resultColumns: readonly Column<ResultRow>[] = [
  ...pageColumns,
  { name: "name", type: "string", description: "Name of the item", cell: (r) => r.snapshot.item.name },
  { name: "category", type: "string", description: "Category of the item", cell: (r) => r.snapshot.item.category },
  {
    name: "published_at",
    type: "datetime",
    description: "Time of publication, with its offset",
    cell: (r) => r.snapshot.publishedAt,
  },
  { name: "tested_on", type: "date", description: "Day of the test", cell: (r) => r.snapshot.testedOn },
  ...partColumns,
  { name: "unit", type: "string", description: "Unit of every amount in this row", cell: (r) => r.result.unit },
  {
    name: "state",
    type: "string",
    description: "quantified, range-only, not-quantified, not-detected or no-readings",
    cell: (r) => r.result.state,
  },
  {
    name: "stated",
    type: "string",
    description: "The result as the page prints it",
    cell: (r) => resultText(r.result),
  },
  { name: "value", type: "number", description: "Best value, in unit", cell: (r) => r.result.value },
  {
    name: "standard_uncertainty",
    type: "number",
    description: "Combined standard uncertainty, in unit",
    cell: (r) => r.result.u,
  },
  {
    name: "expanded_uncertainty",
    type: "number",
    description: "Expanded uncertainty for 95 %, in unit",
    cell: (r) => r.result.U,
  },
  {
    name: "interval_low",
    type: "number",
    description: "Lower end of the 95 % interval, in unit",
    cell: (r) => r.result.interval?.[0] ?? null,
  },
  {
    name: "interval_high",
    type: "number",
    description: "Upper end of the 95 % interval, in unit",
    cell: (r) => r.result.interval?.[1] ?? null,
  },
  {
    name: "below",
    type: "number",
    description: "Not detected: the content is below this, in unit",
    cell: (r) => r.result.below,
  },
  {
    name: "upper_bound",
    type: "number",
    description: "Detected in too few spots: one-sided 95 % bound, in unit",
    cell: (r) => r.result.upperBound,
  },
  {
    name: "highest_spot",
    type: "number",
    description: "Value at the highest spot, in unit",
    cell: (r) => r.result.highestSpot?.value ?? null,
  },
  {
    name: "readings_used",
    type: "integer",
    description: "Readings the result rests on",
    cell: (r) => r.result.counts.used,
  },
  {
    name: "readings_set_aside",
    type: "integer",
    description: "Readings a person left out, with a reason",
    cell: (r) => r.result.counts.setAside,
  },
  { name: "spots", type: "integer", description: "Spots measured", cell: (r) => r.result.counts.spots },
  {
    name: "spots_detected",
    type: "integer",
    description: "Spots where it was found",
    cell: (r) => r.result.counts.spotsDetected,
  },
  { name: "verdict", type: "string", description: "Verdict against the limit below", cell: (r) => verdictOf(r) },
  {
    name: "probability_above",
    type: "number",
    description: "Probability that the content is above that limit",
    cell: (r) => r.decision?.probabilityAbove ?? null,
  },
  {
    name: "limit",
    type: "string",
    description: "The limit led with, by its identifier",
    cell: (r) => r.decision?.limitId ?? null,
  },
  { name: "limit_value", type: "number", description: "Value of that limit", cell: (r) => r.decision?.value ?? null },
  { name: "limit_unit", type: "string", description: "Unit of that limit", cell: (r) => r.decision?.unit ?? null },
  {
    name: "limit_applies",
    type: "string",
    description: "applies, or for-reference",
    cell: (r) => r.decision?.applies ?? null,
  },
  {
    name: "method",
    type: "string",
    description: "Method, version and policy",
    cell: (r) => `${r.result.method.name} ${r.result.method.version}, policy ${r.result.method.policy}`,
  },
  {
    name: "inputs_digest",
    type: "string",
    description: "SHA-256 of the result's inputs",
    cell: (r) => r.result.inputsDigest,
  },
];

export const resultKey = ["item", "revision", "specimen", "part", "element", "quantity"] as const;

export const resultRows = (snapshot: Snapshot): ResultRow[] =>
  resultsByWeight(snapshot).map((placed) => ({ ...placed, snapshot }));

/** results.csv of the given snapshots (the newest of each item, as the data package holds them). */
export const resultsCsv = (snapshots: readonly Snapshot[]): string =>
  csvTable(resultColumns, snapshots.flatMap(resultRows));
