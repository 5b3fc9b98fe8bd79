"use server";

import { revalidatePath } from "next/cache";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { formText, formTextOrNull, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { setTermsWorkflow, termsInput } from "@/lib/workflows/set-terms.ts";

export async function setTerms(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(termsInput, {
    licence: formText(data, "licence"),
    contact: formTextOrNull(data, "contact"),
    rightOfReply: formText(data, "rightOfReply"),
    approvalsNeeded: Number(formText(data, "approvalsNeeded") || Number.NaN),
  });
  const outcome = form.ok ? await setTermsWorkflow(await requestContext(), form.value) : form;
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.terms());
  revalidatePath(paths.corrections());
  return noticeReply("The terms are set. Pages keep those they were published under; new revisions take these.");
}
