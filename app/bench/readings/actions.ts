"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { requestContext } from "@/lib/access/request-context.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Problem } from "@/lib/quantity/problem.ts";
import { problemSentences } from "@/lib/wording/problems.ts";
import {
  assignInput,
  assignReadingsWorkflow,
  restoreAssignmentsWorkflow,
  restoreInput,
} from "@/lib/workflows/assign-readings.ts";
import {
  type AsideBefore,
  asideBefore,
  putAsideBackWorkflow,
  restoreReadingWorkflow,
  setReadingAsideWorkflow,
} from "@/lib/workflows/set-reading-aside.ts";

/** What undoes the last thing done to readings: where they were, or what was said of them. */
const undoing = z.union([z.object({ assignments: restoreInput }), z.object({ aside: asideBefore })]);
export type Undoing = z.infer<typeof undoing>;
export type ListReply = { problems: string[]; undoing?: Undoing };

const refusal = (...problems: Problem[]): ListReply => ({ problems: problemSentences(problems) });

export async function assignReadings(input: unknown): Promise<ListReply> {
  const parsed = assignInput.safeParse(input);
  if (!parsed.success) return refusal({ code: "nothing-chosen" });
  const outcome = await assignReadingsWorkflow(await requestContext(), parsed.data);
  if (!outcome.ok) return refusal(...outcome.problems);
  revalidatePath(paths.bench(), "layout");
  return { problems: [], undoing: { assignments: outcome.value.before } };
}

const asideForm = z.object({ readingIds: z.array(z.string().min(1)).min(1).max(2_000), reason: z.string().nullable() });

/** Sets readings aside; a reason of null takes them back. */
export async function setAside(input: unknown): Promise<ListReply> {
  const parsed = asideForm.safeParse(input);
  if (!parsed.success) return refusal({ code: "nothing-chosen" });
  const { readingIds, reason } = parsed.data;
  const context = await requestContext();
  const outcome =
    reason === null
      ? await restoreReadingWorkflow(context, readingIds)
      : await setReadingAsideWorkflow(context, { readingIds, reason });
  if (!outcome.ok) return refusal(...outcome.problems);
  revalidatePath(paths.bench(), "layout");
  return { problems: [], undoing: { aside: outcome.value.before } };
}

export async function undo(input: unknown): Promise<ListReply> {
  const parsed = undoing.safeParse(input);
  if (!parsed.success) return refusal({ code: "nothing-chosen" });
  const context = await requestContext();
  const outcome =
    "assignments" in parsed.data
      ? await restoreAssignmentsWorkflow(context, parsed.data.assignments)
      : await putAsideBackWorkflow(context, parsed.data.aside as AsideBefore);
  if (!outcome.ok) return refusal(...outcome.problems);
  revalidatePath(paths.bench(), "layout");
  return { problems: [] };
}
