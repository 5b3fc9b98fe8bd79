"use server";

import { redirect } from "next/navigation";
import type { FormState } from "@/app/_components/action-form.tsx";
import { authIn } from "@/lib/access/auth.ts";
import { formText, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { ownerInput, setUpOwner } from "@/lib/workflows/set-up-owner.ts";

export async function makeOwner(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(ownerInput, {
    token: formText(data, "token"),
    name: formText(data, "name"),
    email: formText(data, "email"),
    password: String(data.get("password") ?? ""),
  });
  const outcome = form.ok ? await setUpOwner({ db: database(), authIn }, form.value) : form;
  if (!outcome.ok)
    return { errors: outcome.problems.map((p) => ({ field: p.where?.field, text: problemSentence(p) })) };
  redirect(paths.signIn());
}
