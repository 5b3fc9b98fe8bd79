import { z } from "zod";
import { paths } from "@/lib/platform/paths.ts";
import { itemStates } from "@/lib/store/items.ts";

/** Rows of one page of a list of the bench. */
export const rowsShown = 50;

const from = z.coerce.number().int().min(0).max(1_000_000).catch(0);
const shape = z.object({
  find: z.string().trim().max(200).min(1).optional().catch(undefined),
  state: z.enum(itemStates).optional().catch(undefined),
  start: from,
  files: from,
});

/** What the bench's lists are narrowed to and where they begin, as its address says it. Anything unreadable is as if it were not there. */
export type BenchQuery = z.infer<typeof shape>;
export const benchQuery = (params: Record<string, string | string[] | undefined>): BenchQuery =>
  shape.parse({ start: 0, files: 0, ...params });

/** The bench with another page of one of its lists. */
export function benchHref(query: BenchQuery, change: Partial<BenchQuery>): string {
  const asked = Object.entries({ ...query, ...change }).filter(([, value]) => value !== undefined && value !== 0);
  return asked.length === 0 ? paths.bench() : `${paths.bench()}?${new URLSearchParams(asked as [string, string][])}`;
}
