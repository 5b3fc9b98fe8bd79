"use server";

import { revalidatePath } from "next/cache";
import type { FormState } from "@/app/_components/action-form.tsx";
import { auth } from "@/lib/access/auth.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { formText, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { addMemberWorkflow, memberInput } from "@/lib/workflows/add-member.ts";

export async function addMember(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(memberInput, {
    name: formText(data, "name"),
    email: formText(data, "email"),
    password: String(data.get("password") ?? ""),
    role: formText(data, "role"),
  });
  const outcome = form.ok ? await addMemberWorkflow({ ...(await requestContext()), auth: auth() }, form.value) : form;
  if (!outcome.ok)
    return { errors: outcome.problems.map((p) => ({ field: p.where?.field, text: problemSentence(p) })) };
  revalidatePath(paths.people());
  return { errors: [], notice: `${outcome.value.name} can now sign in.` };
}
