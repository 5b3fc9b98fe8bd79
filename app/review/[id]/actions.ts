"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { interestsOf } from "@/app/_draft/interests-field.tsx";
import { requestContext } from "@/lib/access/request-context.ts";
import { formList, formText, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { decisionMissing } from "@/lib/wording/review.ts";
import { addMakerAnswerWorkflow, makerAnswerInput } from "@/lib/workflows/add-maker-answer.ts";
import { claimInput, claimItemWorkflow, releaseItemWorkflow } from "@/lib/workflows/claim-item.ts";
import { askRetestWorkflow, callOffRetestWorkflow, retestInput } from "@/lib/workflows/retest-item.ts";
import { reviewInput, reviewItemWorkflow } from "@/lib/workflows/review-item.ts";

function moved(): void {
  revalidatePath(paths.review(), "layout");
  revalidatePath(paths.bench(), "layout");
}

export async function claimItem(itemId: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(claimInput, { itemId, interests: interestsOf(data) });
  const outcome = form.ok ? await claimItemWorkflow(await requestContext(), form.value) : form;
  if (!outcome.ok) return errorReply(outcome.problems);
  moved();
  return noticeReply("You have it. Nobody else can decide on it meanwhile.");
}

export async function releaseItem(itemId: string, _: FormState, __: FormData): Promise<FormState> {
  const outcome = await releaseItemWorkflow(await requestContext(), itemId);
  if (!outcome.ok) return errorReply(outcome.problems);
  moved();
  return noticeReply("Given back. Anybody who may can take it up.");
}

/** The reviewer's decision, bound to what was shown when the page was made. */
export async function reviewItem(
  itemId: string,
  shownDigest: string,
  _: FormState,
  data: FormData,
): Promise<FormState> {
  if (formText(data, "decision") === "") return { errors: [{ field: "decision", text: decisionMissing }] };
  const form = parseForm(reviewInput, {
    itemId,
    shownDigest,
    decision: formText(data, "decision"),
    note: [formText(data, "note"), ...formList(data, "plan")].filter((text) => text !== "").join("\n"),
  });
  const outcome = form.ok ? await reviewItemWorkflow(await requestContext(), form.value) : form;
  if (!outcome.ok) return errorReply(outcome.problems);
  moved();
  const decision = form.ok ? form.value.decision : "";
  const half = decision === "approved" && outcome.value === "submitted";
  redirect(`${paths.reviewItem(itemId)}?done=${half ? "submitted" : decision}`);
}

export async function askRetest(itemId: string, _: FormState, data: FormData): Promise<FormState> {
  const [componentId = "", element = ""] = formText(data, "value").split(":");
  const form = parseForm(retestInput, {
    itemId,
    componentId,
    element,
    testerId: formText(data, "testerId"),
    note: formText(data, "retestNote"),
  });
  const outcome = form.ok ? await askRetestWorkflow(await requestContext(), form.value) : form;
  if (!outcome.ok) return errorReply(outcome.problems);
  moved();
  return noticeReply("Asked. Until they hand in, they see nothing of the first value.");
}

export async function callOffRetest(retestId: string, _: FormState, __: FormData): Promise<FormState> {
  const outcome = await callOffRetestWorkflow(await requestContext(), retestId);
  if (!outcome.ok) return errorReply(outcome.problems);
  moved();
  return noticeReply("Called off.");
}

export async function addMakerAnswer(itemId: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(makerAnswerInput, {
    itemId,
    receivedOn: formText(data, "receivedOn"),
    fromWhom: formText(data, "fromWhom"),
    text: formText(data, "answer"),
  });
  const outcome = form.ok ? await addMakerAnswerWorkflow(await requestContext(), form.value) : form;
  if (!outcome.ok) return errorReply(outcome.problems);
  moved();
  revalidatePath(paths.item(outcome.value));
  return noticeReply("The answer stands on the public page.");
}
