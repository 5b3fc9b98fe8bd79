import * as z from "zod";
import { logHeadSchema } from "../publication/log-head.ts";
import { logEntrySchema } from "../publication/snapshot.ts";
import { quantityKinds } from "../quantity/kinds.ts";
import { itemSummarySchema } from "./item-summary.ts";

const isoDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);

const precision = z.enum(["day", "month", "year", "unknown"]);

/** One page of /api/v1/items. `nextCursor` is opaque and belongs to its own query. */
export const itemsPageSchema = z.object({
  items: z.array(itemSummarySchema),
  total: z.number().int().nonnegative(),
  nextCursor: z.string().nullable(),
});
export type ItemsPage = z.infer<typeof itemsPageSchema>;

/** An entry of /api/v1/limits: the fourteen stable keys, and what only adds to them. */
export const apiLimitSchema = z.object({
  id: z.string(),
  jurisdiction: z.string(),
  title: z.string(),
  citation: z.string(),
  substances: z.array(z.string()),
  quantity: z.enum(Object.keys(quantityKinds) as [keyof typeof quantityKinds]),
  value: z.number().nullable().describe("null where the rule is not a number"),
  unit: z.string(),
  failsAt: z.enum([">", ">="]).describe('">=": the limit itself fails'),
  scope: z.string(),
  from: isoDate,
  until: isoDate.nullable().describe("null while in force"),
  nature: z.enum(["binding", "guidance", "settlement", "advisory"]),
  checked: z.enum(["verified", "second-hand", "from memory"]),
  checkedNote: z.string().describe("how far `checked` reaches"),
  sum: z.boolean().describe("the limit is on the sum of the substances"),
  rule: z.string().nullable().describe("the rule in words, where value is null"),
  family: z.string().describe("limits that follow one another for the same thing share a family"),
  fromKnown: precision.describe("how sure `from` is"),
  complianceFrom: isoDate.nullable(),
  neverTookEffect: z.boolean(),
  statistic: z.string().nullable(),
  note: z.string().nullable(),
});
export type ApiLimit = z.infer<typeof apiLimitSchema>;

export const limitsSchema = z.object({ limits: z.array(apiLimitSchema) });
export const logSchema = z.object({
  entries: z.array(logEntrySchema),
  head: logHeadSchema.nullable().optional().describe("the newest entry, signed; null where none is signed"),
});
