"use server";

import { revalidatePath } from "next/cache";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { authIn } from "@/lib/access/auth.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { environment } from "@/lib/platform/environment.ts";
import { formText, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { inviteWords, passwordLinkWords, secondStepWords } from "@/lib/wording/account.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { addMemberWorkflow, memberInput } from "@/lib/workflows/add-member.ts";
import { inviteInput, inviteMemberWorkflow, withdrawInvitationWorkflow } from "@/lib/workflows/invite-member.ts";
import { makePasswordLinkWorkflow } from "@/lib/workflows/make-password-link.ts";
import { removeSecondStepWorkflow } from "@/lib/workflows/remove-second-step.ts";

export async function addMember(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(memberInput, {
    name: formText(data, "name"),
    email: formText(data, "email"),
    password: String(data.get("password") ?? ""),
    role: formText(data, "role"),
  });
  const outcome = form.ok ? await addMemberWorkflow({ ...(await requestContext()), authIn }, form.value) : form;
  if (!outcome.ok)
    return { errors: outcome.problems.map((p) => ({ field: p.where?.field, text: problemSentence(p) })) };
  revalidatePath(paths.people());
  return { errors: [], notice: `${outcome.value.name} can now sign in.` };
}

/** Makes a one-time link. It is told in the answer and nowhere kept. */
export async function inviteMember(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(inviteInput, { email: formText(data, "email"), role: formText(data, "role") });
  const outcome = form.ok ? await inviteMemberWorkflow(await requestContext(), form.value) : form;
  if (!outcome.ok) {
    // Two forms of this page ask for an address.
    const { errors } = errorReply(outcome.problems);
    return { errors: errors.map((e) => (e.field ? { ...e, field: `invite-${e.field}` } : e)) };
  }
  revalidatePath(paths.people());
  const { email, token } = outcome.value;
  return noticeReply(inviteWords.made(email, `${environment().baseUrl}${paths.join(token)}`));
}

export async function withdrawInvitation(id: string, _: FormState, __: FormData): Promise<FormState> {
  const outcome = await withdrawInvitationWorkflow(await requestContext(), id);
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.people());
  return noticeReply(inviteWords.withdrawn);
}

export async function removeSecondStep(personId: string, _: FormState, __: FormData): Promise<FormState> {
  const outcome = await removeSecondStepWorkflow(await requestContext(), personId);
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.people());
  return noticeReply(secondStepWords.removed(outcome.value.name));
}

/** Makes a link for a new password. It is told in the answer and nowhere kept. */
export async function makePasswordLink(personId: string, _: FormState, __: FormData): Promise<FormState> {
  const outcome = await makePasswordLinkWorkflow(await requestContext(), personId);
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.people());
  const { name, token } = outcome.value;
  return noticeReply(passwordLinkWords.made(name, `${environment().baseUrl}${paths.join(token)}`));
}
