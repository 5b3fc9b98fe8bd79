"use server";

import { revalidatePath } from "next/cache";
import { requestContext } from "@/lib/access/request-context.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Assignment } from "@/lib/store/readings.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import {
  assignInput,
  assignReadingsWorkflow,
  restoreAssignmentsWorkflow,
  restoreInput,
} from "@/lib/workflows/assign-readings.ts";

export type AssignReply = { problems: string[]; before: Assignment[] };

export async function assignReadings(input: unknown): Promise<AssignReply> {
  const parsed = assignInput.safeParse(input);
  if (!parsed.success) return { problems: [problemSentence({ code: "nothing-chosen" })], before: [] };
  const outcome = await assignReadingsWorkflow(await requestContext(), parsed.data);
  if (!outcome.ok) return { problems: outcome.problems.map(problemSentence), before: [] };
  revalidatePath(paths.bench(), "layout");
  return { problems: [], before: outcome.value.before };
}

export async function undoAssignment(before: unknown): Promise<AssignReply> {
  const parsed = restoreInput.safeParse(before);
  if (!parsed.success) return { problems: [problemSentence({ code: "nothing-chosen" })], before: [] };
  const outcome = await restoreAssignmentsWorkflow(await requestContext(), parsed.data);
  if (!outcome.ok) return { problems: outcome.problems.map(problemSentence), before: [] };
  revalidatePath(paths.bench(), "layout");
  return { problems: [], before: [] };
}
