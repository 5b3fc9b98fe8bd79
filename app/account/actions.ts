"use server";

import { headers } from "next/headers";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { authIn } from "@/lib/access/auth.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { signedIn, takeSignInTurn } from "@/lib/access/sign-in-turns.ts";
import { askingPlace } from "@/lib/platform/asking-place.ts";
import { environment } from "@/lib/platform/environment.ts";
import { parseForm } from "@/lib/platform/form-values.ts";
import { passwordWords } from "@/lib/wording/account.ts";
import { changePasswordInput, changePasswordWorkflow } from "@/lib/workflows/change-password.ts";

/** A new password for whoever is signed in. Asking for the old one is counted as a try to sign in is. */
export async function changePassword(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(changePasswordInput, {
    current: String(data.get("current") ?? ""),
    password: String(data.get("password") ?? ""),
  });
  if (!form.ok) return errorReply(form.problems);
  const context = await requestContext();
  const place = askingPlace(await headers(), environment().dataDir, context.clock());
  const email = context.person?.email ?? "";
  const tooMany = context.person ? await takeSignInTurn(context.db, email, place, context.clock()) : null;
  if (tooMany) return errorReply([tooMany]);
  const outcome = await changePasswordWorkflow(context, form.value, async (tx, { current, password }) => {
    try {
      const body = { currentPassword: current, newPassword: password, revokeOtherSessions: true };
      await authIn(tx).api.changePassword({ body, headers: await headers() });
      return true;
    } catch (error) {
      if ((error as { statusCode?: number }).statusCode === undefined) throw error;
      return false;
    }
  });
  if (!outcome.ok) return errorReply(outcome.problems);
  await signedIn(context.db, email, place);
  return noticeReply(passwordWords.changed);
}
