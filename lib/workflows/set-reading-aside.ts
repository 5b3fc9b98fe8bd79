import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { inTransaction } from "../store/database.ts";
import { readingsByIds, setReadingAside } from "../store/readings.ts";

export const asideInput = z.object({
  readingIds: z.array(z.string().min(1)).min(1).max(2_000),
  reason: z.string().trim().min(8).max(400),
});

/** Sets readings aside with a written reason. They stay visible, and the page shows the value with them too. */
export async function setReadingAsideWorkflow(
  context: Context,
  input: z.input<typeof asideInput>,
): Promise<Outcome<number>> {
  const permitted = requirePermission(context.person, "set-aside-reading");
  if (!permitted.ok) return permitted;
  const parsed = asideInput.safeParse(input);
  if (!parsed.success)
    return refused({
      code: "reason-too-short",
      where: { field: "reason" },
      found: input.reason,
      allowed: "8 to 400 characters",
    });
  const { readingIds, reason } = parsed.data;
  return inTransaction(context.db, async (tx) => {
    const readings = await readingsByIds(tx, readingIds);
    if (readings.length === 0) return refused({ code: "unknown-reading", found: readingIds.join(", ") });
    await setReadingAside(tx, readingIds, { reason, byId: permitted.value.id, at: context.clock() });
    return done(readings.length);
  });
}

/** Takes set-aside readings back into the result. */
export async function restoreReadingWorkflow(context: Context, readingIds: string[]): Promise<Outcome<number>> {
  const permitted = requirePermission(context.person, "set-aside-reading");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    await setReadingAside(tx, readingIds, null);
    return done(readingIds.length);
  });
}
