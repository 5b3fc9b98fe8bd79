"use server";

import { revalidatePath } from "next/cache";
import { headers } from "next/headers";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { type QrPath, qrPath } from "@/app/_share/qr-path.ts";
import { auth, authIn } from "@/lib/access/auth.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { makeKey } from "@/lib/access/second-step.ts";
import { signedIn, takeSignInTurn } from "@/lib/access/sign-in-turns.ts";
import { askingPlace } from "@/lib/platform/asking-place.ts";
import type { Context } from "@/lib/platform/context.ts";
import { environment } from "@/lib/platform/environment.ts";
import { formText } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { type Outcome, refused } from "@/lib/quantity/problem.ts";
import { secondStepWords } from "@/lib/wording/account.ts";
import { renewRecoveryCodesWorkflow } from "@/lib/workflows/renew-recovery-codes.ts";
import { turnOffSecondStepWorkflow } from "@/lib/workflows/turn-off-second-step.ts";
import { turnOnSecondStepWorkflow } from "@/lib/workflows/turn-on-second-step.ts";

export type KeyState = FormState & { key?: { picture: QrPath; spelt: string } };
export type CodesState = FormState & { codes?: string[] };

/** Asking for the password or a code is counted as a try to sign in is. */
async function counted<T>(work: (context: Context & { headers: Headers }) => Promise<Outcome<T>>): Promise<Outcome<T>> {
  const context = { ...(await requestContext()), headers: await headers() };
  const { db, person, clock } = context;
  if (!person) return refused({ code: "not-signed-in" });
  const place = askingPlace(context.headers, environment().dataDir, clock());
  const tooMany = await takeSignInTurn(db, person.email, place, clock());
  if (tooMany) return refused(tooMany);
  const outcome = await work(context);
  if (outcome.ok) await signedIn(db, person.email, place);
  return outcome;
}

/** The page has a form for each thing to do, and each asks for the password in a field of its own name. */
const replyFor = (field: string, outcome: { problems: Parameters<typeof errorReply>[0] }): FormState => ({
  errors: errorReply(outcome.problems).errors.map((e) => (e.field === "current" ? { ...e, field } : e)),
});

export async function makeSecondStepKey(_: FormState, data: FormData): Promise<KeyState> {
  const password = String(data.get("key-password") ?? "");
  const made = await counted(({ headers: asked }) => makeKey(auth(), asked, password));
  if (!made.ok) return replyFor("key-password", made);
  return { errors: [], key: { picture: qrPath(made.value.uri), spelt: made.value.spelt } };
}

export async function turnOnSecondStep(_: FormState, data: FormData): Promise<CodesState> {
  const input = { code: formText(data, "code").slice(0, 40) };
  const outcome = await counted((context) => turnOnSecondStepWorkflow({ ...context, authIn }, input));
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.secondStep());
  return { errors: [], codes: outcome.value };
}

export async function renewRecoveryCodes(_: FormState, data: FormData): Promise<CodesState> {
  const current = String(data.get("renew-password") ?? "");
  const outcome = await counted((context) => renewRecoveryCodesWorkflow({ ...context, authIn }, { current }));
  if (!outcome.ok) return replyFor("renew-password", outcome);
  revalidatePath(paths.secondStep());
  return { errors: [], codes: outcome.value };
}

export async function turnOffSecondStep(_: FormState, data: FormData): Promise<FormState> {
  const current = String(data.get("off-password") ?? "");
  const outcome = await counted((context) => turnOffSecondStepWorkflow({ ...context, authIn }, { current }));
  if (!outcome.ok) return replyFor("off-password", outcome);
  revalidatePath(paths.secondStep());
  return noticeReply(secondStepWords.isOff);
}
