"use server";

import { redirect } from "next/navigation";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply } from "@/app/_components/form-reply.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { createItemWorkflow, itemInput } from "@/lib/workflows/create-item.ts";
import { itemFormValues } from "../item-form-values.ts";

export async function createItem(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(itemInput, itemFormValues(data));
  const outcome = form.ok ? await createItemWorkflow(await requestContext(), form.value) : form;
  if (!outcome.ok) return errorReply(outcome.problems);
  redirect(paths.benchItem(outcome.value.id));
}
