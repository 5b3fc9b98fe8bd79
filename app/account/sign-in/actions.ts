"use server";

import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { z } from "zod";
import type { FormState } from "@/app/_components/action-form.tsx";
import { auth } from "@/lib/access/auth.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { safeTarget } from "@/lib/access/safe-target.ts";
import { signedIn, takeSignInTurn } from "@/lib/access/sign-in-turns.ts";
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
  try {
    await auth().api.signInEmail({ body: form.value, headers: await headers() });
  } catch (error) {
    if ((error as { statusCode?: number }).statusCode === undefined) throw error;
    return { errors: [{ field: "email", text: problemSentence({ code: "wrong-sign-in" }) }] };
  }
  await signedIn(db, form.value.email, place);
  // The session that the browser came with ends: nobody goes on under a token that was there before the sign-in.
  if (before) await (await auth().$context).internalAdapter.deleteSession(before.session.token);
  redirect(safeTarget(formText(data, "next"), paths.bench()));
}

export async function signOut(): Promise<void> {
  await auth().api.signOut({ headers: await headers() });
  redirect(paths.home());
}
