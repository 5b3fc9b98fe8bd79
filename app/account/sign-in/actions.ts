"use server";

import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { z } from "zod";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply } from "@/app/_components/form-reply.ts";
import { auth } from "@/lib/access/auth.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { safeTarget } from "@/lib/access/safe-target.ts";
import { enterCode } from "@/lib/access/second-step.ts";
import { halfSignedIn, signedIn, takeSignInTurn } from "@/lib/access/sign-in-turns.ts";
import { askingPlace } from "@/lib/platform/asking-place.ts";
import { environment } from "@/lib/platform/environment.ts";
import { formText, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { problemSentence } from "@/lib/wording/problems.ts";

const input = z.object({ email: z.email(), password: z.string().min(1) });

export async function signIn(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(input, { email: formText(data, "email"), password: String(data.get("password") ?? "") });
  if (!form.ok) return { errors: form.problems.map((p) => ({ field: p.where?.field, text: problemSentence(p) })) };
  const { db, clock } = await requestContext();
  const place = askingPlace(await headers(), environment().dataDir, clock());
  const tooMany = await takeSignInTurn(db, form.value.email, place, clock());
  if (tooMany) return { errors: [{ field: "email", text: problemSentence(tooMany) }] };
  const before = await auth().api.getSession({ headers: await headers() });
  let codeIsAsked: boolean;
  try {
    codeIsAsked = "twoFactorRedirect" in (await auth().api.signInEmail({ body: form.value, headers: await headers() }));
  } catch (error) {
    if ((error as { statusCode?: number }).statusCode === undefined) throw error;
    return { errors: [{ field: "email", text: problemSentence({ code: "wrong-sign-in" }) }] };
  }
  // The session that the browser came with ends: nobody goes on under a token that was there before the sign-in.
  if (before) await (await auth().$context).internalAdapter.deleteSession(before.session.token);
  const next = safeTarget(formText(data, "next"), paths.bench());
  if (codeIsAsked) {
    await halfSignedIn(db, place);
    redirect(paths.signInCode(next));
  }
  await signedIn(db, form.value.email, place);
  redirect(next);
}

/** The second step, counted as the first is. */
export async function enterSignInCode(_: FormState, data: FormData): Promise<FormState> {
  const { db, clock } = await requestContext();
  const asked = await headers();
  const waiting = await auth().api.whoWaitsForCode({ headers: asked });
  if (!waiting) return errorReply([{ code: "code-wait-over", where: { field: "code" } }]);
  const place = askingPlace(asked, environment().dataDir, clock());
  const tooMany = await takeSignInTurn(db, waiting.email, place, clock());
  if (tooMany) return errorReply([{ ...tooMany, where: { field: "code" } }]);
  const asking = { db, userId: waiting.id, typed: formText(data, "code"), now: clock() };
  const entered = await enterCode(auth(), asked, asking);
  if (!entered.ok) return errorReply(entered.problems);
  await signedIn(db, waiting.email, place);
  redirect(safeTarget(formText(data, "next"), paths.bench()));
}

export async function signOut(): Promise<void> {
  await auth().api.signOut({ headers: await headers() });
  redirect(paths.home());
}
