"use server";

import { revalidatePath } from "next/cache";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { formQuantity, formText, formTextOrNull, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { addOtherTestWorkflow, otherTestInput, removeOtherTestWorkflow } from "@/lib/workflows/add-other-test.ts";

export async function addTest(itemId: string, specimenId: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(otherTestInput, {
    componentId: formTextOrNull(data, "componentId"),
    kind: formText(data, "kind"),
    element: formText(data, "element"),
    valueText: formText(data, "valueText"),
    limitText: formText(data, "limitText"),
    unit: formText(data, "unit"),
    uText: formText(data, "uText"),
    uCovers: Number(formText(data, "uCovers") || "2"),
    sampleAreaCm2: formQuantity(data, "sampleAreaCm2", "cm²"),
    blankText: formTextOrNull(data, "blankText"),
    laboratory: formText(data, "laboratory"),
    method: formText(data, "method"),
    reportedOn: formTextOrNull(data, "reportedOn"),
    note: formText(data, "note"),
  });
  const outcome = form.ok ? await addOtherTestWorkflow(await requestContext(), specimenId, form.value) : form;
  if (!outcome.ok) {
    const { errors } = errorReply(outcome.problems);
    return { errors: errors.map((e) => (e.field ? { ...e, field: `test-${specimenId}-${e.field}` } : e)) };
  }
  revalidatePath(paths.benchItem(itemId));
  return noticeReply("The test is written down.");
}

export async function removeTest(
  itemId: string,
  testId: string,
  removed: boolean,
  _: FormState,
  __: FormData,
): Promise<FormState> {
  const outcome = await removeOtherTestWorkflow(await requestContext(), testId, removed);
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.benchItem(itemId));
  return noticeReply(removed ? "The test is taken away." : "The test is back.");
}
