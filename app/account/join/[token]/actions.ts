"use server";

import { headers } from "next/headers";
import { redirect } from "next/navigation";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply } from "@/app/_components/form-reply.ts";
import { authIn } from "@/lib/access/auth.ts";
import { signedIn, takeSignInTurn } from "@/lib/access/sign-in-turns.ts";
import { askingPlace } from "@/lib/platform/asking-place.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { environment } from "@/lib/platform/environment.ts";
import { formText, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { acceptInput, acceptInvitationWorkflow } from "@/lib/workflows/accept-invitation.ts";
import { newPasswordInput, setNewPasswordWorkflow } from "@/lib/workflows/set-new-password.ts";

const here = async (): Promise<string> => askingPlace(await headers(), environment().dataDir, systemClock());

/** Guessing a link is counted as a try to sign in is. */
const takeLinkTurn = (place: string) => takeSignInTurn(database(), `invitation from ${place}`, place, systemClock());

/** An invitation's link becomes an account; then its owner signs in with it. */
export async function join(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(acceptInput, {
    token: formText(data, "token"),
    name: formText(data, "name"),
    password: String(data.get("password") ?? ""),
  });
  if (!form.ok) return errorReply(form.problems);
  const place = await here();
  const tooMany = await takeLinkTurn(place);
  if (tooMany) return errorReply([tooMany]);
  const outcome = await acceptInvitationWorkflow({ db: database(), authIn }, form.value);
  if (!outcome.ok) return errorReply(outcome.problems);
  redirect(paths.signIn());
}

/** A link for a new password sets it; then its owner signs in with it, tries with forgotten ones no longer counted. */
export async function setNewPassword(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(newPasswordInput, {
    token: formText(data, "token"),
    password: String(data.get("password") ?? ""),
  });
  if (!form.ok) return errorReply(form.problems);
  const place = await here();
  const tooMany = await takeLinkTurn(place);
  if (tooMany) return errorReply([tooMany]);
  const outcome = await setNewPasswordWorkflow({ db: database(), authIn }, form.value);
  if (!outcome.ok) return errorReply(outcome.problems);
  await signedIn(database(), outcome.value.email, place);
  redirect(paths.signIn());
}
