"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { requestContext } from "@/lib/access/request-context.ts";
import { paths } from "@/lib/platform/paths.ts";
import { problemSentences } from "@/lib/wording/problems.ts";
import {
  fromReadingsInput,
  itemsFromReadingsWorkflow,
  type MadeItems,
  undoItemsWorkflow,
} from "@/lib/workflows/items-from-readings.ts";

export type MakeReply = { problems: string[]; made?: MadeItems };

export async function makeItems(input: unknown): Promise<MakeReply> {
  const parsed = fromReadingsInput.safeParse(input);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    const row = typeof issue?.path[1] === "number" ? issue.path[1] + 1 : undefined;
    return {
      problems: problemSentences([
        { code: "items-form", ...(row ? { where: { row } } : {}), found: String(issue?.path.at(-1) ?? "") },
      ]),
    };
  }
  const outcome = await itemsFromReadingsWorkflow(await requestContext(), parsed.data);
  if (!outcome.ok) return { problems: problemSentences(outcome.problems) };
  revalidatePath(paths.bench(), "layout");
  return { problems: [], made: outcome.value };
}

export async function undoItems(ids: unknown): Promise<MakeReply> {
  const parsed = z.array(z.string().min(1)).min(1).max(200).safeParse(ids);
  if (!parsed.success) return { problems: problemSentences([{ code: "nothing-chosen" }]) };
  const outcome = await undoItemsWorkflow(await requestContext(), parsed.data);
  if (!outcome.ok) return { problems: problemSentences(outcome.problems) };
  revalidatePath(paths.bench(), "layout");
  return { problems: [] };
}
