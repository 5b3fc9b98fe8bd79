"use server";

import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { z } from "zod";
import type { FormState } from "@/app/_components/action-form.tsx";
import { auth } from "@/lib/access/auth.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { signedIn, takeSignInTurn } from "@/lib/access/sign-in-turns.ts";
import { askingPlace } from "@/lib/platform/asking-place.ts";
import { environment } from "@/lib/platform/environment.ts";
import { formText, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { problemSentence } from "@/lib/wording/problems.ts";

const input = z.object({ email: z.email(), password: z.string().min(1) });

/** Only an address of ours: never a full URL that somebody put into the link. */
const safeTarget = (next: string): string => (/^\/(?![/\\])/.test(next) ? next : paths.bench());

export async function signIn(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(input, { email: formText(data, "email"), password: String(data.get("password") ?? "") });
  if (!form.ok) return { errors: form.problems.map((p) => ({ field: p.where?.field, text: problemSentence(p) })) };
  const { db, clock } = await requestContext();
  const place = askingPlace(await headers(), environment().dataDir, clock());
  const tooMany = await takeSignInTurn(db, form.value.email, place, clock());
  if (tooMany) return { errors: [{ field: "email", text: problemSentence(tooMany) }] };
  try {
    await auth().api.signInEmail({ body: form.value, headers: await headers() });
  } catch (error) {
    if ((error as { statusCode?: number }).statusCode === undefined) throw error;
    return { errors: [{ field: "email", text: problemSentence({ code: "wrong-sign-in" }) }] };
  }
  await signedIn(db, form.value.email, place);
  redirect(safeTarget(formText(data, "next")));
}

export async function signOut(): Promise<void> {
  await auth().api.signOut({ headers: await headers() });
  redirect(paths.home());
}
