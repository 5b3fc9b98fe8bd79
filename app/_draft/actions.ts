"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { formText, formTextOrNull, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { commentInput, commentItemWorkflow, settleCommentWorkflow } from "@/lib/workflows/comment-item.ts";
import { handInRetestWorkflow } from "@/lib/workflows/retest-item.ts";
import { submitInput, submitItemWorkflow } from "@/lib/workflows/review-item.ts";
import { dropRevisionWorkflow, revisionInput, startRevisionWorkflow } from "@/lib/workflows/start-revision.ts";
import { interestsOf } from "./interests-field.tsx";

/** What bench and review desk do alike: hand in, start and drop a revision, remark and answer. */
function moved(): void {
  revalidatePath(paths.bench(), "layout");
  revalidatePath(paths.review(), "layout");
}

export async function submitItem(itemId: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(submitInput, { itemId, interests: interestsOf(data) });
  const outcome = form.ok ? await submitItemWorkflow(await requestContext(), form.value) : form;
  if (!outcome.ok) return errorReply(outcome.problems);
  moved();
  return noticeReply("Handed to the reviewers.");
}

export async function startRevision(itemId: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(revisionInput, { itemId, kind: formText(data, "kind"), reason: formText(data, "reason") });
  const outcome = form.ok ? await startRevisionWorkflow(await requestContext(), form.value) : form;
  if (!outcome.ok) return errorReply(outcome.problems);
  moved();
  return noticeReply("The new revision is started. Ask for a review when it is as it should be.");
}

export async function dropRevision(itemId: string, _: FormState, __: FormData): Promise<FormState> {
  const outcome = await dropRevisionWorkflow(await requestContext(), itemId);
  if (!outcome.ok) return errorReply(outcome.problems);
  moved();
  return noticeReply("Dropped. The public page stays as it is.");
}

export async function commentItem(itemId: string, replyToId: string | null, _: FormState, data: FormData) {
  const form = parseForm(commentInput, {
    itemId,
    about: formTextOrNull(data, "about") ?? "item",
    text: formText(data, "text"),
    replyToId,
  });
  const outcome = form.ok ? await commentItemWorkflow(await requestContext(), form.value) : form;
  if (!outcome.ok) return errorReply(outcome.problems);
  moved();
  return noticeReply(
    replyToId === null ? "Your remark stands with the others." : "Your answer stands under the remark.",
  );
}

export async function settleComment(commentId: string, _: FormState, __: FormData): Promise<FormState> {
  const outcome = await settleCommentWorkflow(await requestContext(), commentId);
  if (!outcome.ok) return errorReply(outcome.problems);
  moved();
  return noticeReply("Settled.");
}

export async function handInRetest(retestId: string, _: FormState, __: FormData): Promise<FormState> {
  const outcome = await handInRetestWorkflow(await requestContext(), retestId);
  if (!outcome.ok) return errorReply(outcome.problems);
  moved();
  redirect(`${paths.reviewItem(outcome.value)}?done=handed-in#retests`);
}
