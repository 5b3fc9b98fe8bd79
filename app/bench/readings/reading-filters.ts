import { z } from "zod";
import type { Database } from "@/lib/store/database.ts";
import { type ElementColumns, elementsMeasured, type ReadingFilter, readingStates } from "@/lib/store/readings.ts";

/** What a list of readings is narrowed to, as its address says it. Anything unreadable is as if it were not there. */
const text = z.string().trim().max(200).min(1).optional().catch(undefined);
export const readingQuery = z.object({
  file: text,
  session: text,
  find: text,
  element: text,
  note: z.string().max(400).optional().catch(undefined),
  sample: z.string().max(400).optional().catch(undefined),
  state: z
    .enum([...readingStates, "all"])
    .default("unassigned")
    .catch("unassigned"),
  from: z.iso.date().optional().catch(undefined),
  to: z.iso.date().optional().catch(undefined),
  /** Which items' parts are offered; narrows no list of readings. */
  partsOf: text,
});
export type ReadingQuery = z.infer<typeof readingQuery>;

/** The elements that can be asked for, and the filter. An element that nothing was measured of finds nothing. */
export async function filterOf(
  db: Database,
  query: ReadingQuery,
): Promise<{ filter: ReadingFilter; elements: string[] }> {
  const measured = await elementsMeasured(db);
  const { file, session, find, element, note, sample, state, from, to } = query;
  const nowhere: ElementColumns = [{ batchId: "", columns: [0] }];
  const filter: ReadingFilter = {
    ...(state === "all" ? {} : { state }),
    ...(file ? { batchId: file } : {}),
    ...(session ? { sessionId: session } : {}),
    ...(find ? { text: find } : {}),
    ...(element ? { inColumns: measured.get(element) ?? nowhere } : {}),
    ...(note === undefined ? {} : { note: note === "" ? null : note }),
    ...(sample === undefined ? {} : { sample }),
    ...(from ? { from } : {}),
    ...(to ? { to } : {}),
  };
  return { filter, elements: [...measured.keys()].sort() };
}

/** How many things beside the state the list of readings is narrowed by. */
export const narrowings = (query: ReadingQuery): number =>
  Object.entries(query).filter(([key, value]) => key !== "state" && key !== "partsOf" && value !== undefined).length;
