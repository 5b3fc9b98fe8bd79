"use server";

import { revalidatePath } from "next/cache";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { formText } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { mendRowWorkflow } from "@/lib/workflows/mend-row.ts";
import { redoImportWorkflow, undoImportWorkflow } from "@/lib/workflows/undo-import.ts";

export async function undoImport(_: FormState, data: FormData): Promise<FormState> {
  const outcome = await undoImportWorkflow(await requestContext(), formText(data, "batchId"));
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.bench(), "layout");
  return noticeReply("The import is taken back. Its file and all assignments are kept.");
}

export async function redoImport(_: FormState, data: FormData): Promise<FormState> {
  const outcome = await redoImportWorkflow(await requestContext(), formText(data, "batchId"));
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.bench(), "layout");
  return noticeReply("The import is back, with everything as it was.");
}

export async function mendRow(_: FormState, data: FormData): Promise<FormState> {
  const cells: string[] = [];
  for (let at = 0; data.has(`cell-${at}`); at += 1) cells.push(String(data.get(`cell-${at}`)));
  const input = { batchId: formText(data, "batchId"), rowId: formText(data, "rowId"), cells };
  const outcome = await mendRowWorkflow(await requestContext(), input);
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.bench(), "layout");
  return noticeReply(`Row ${outcome.value} is a reading now.`);
}
