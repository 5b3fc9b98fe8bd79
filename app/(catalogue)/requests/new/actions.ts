"use server";

import { headers } from "next/headers";
import { redirect } from "next/navigation";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply } from "@/app/_components/form-reply.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { askingPlace } from "@/lib/platform/asking-place.ts";
import { environment } from "@/lib/platform/environment.ts";
import { formText, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { requestTestWorkflow, testRequestInput } from "@/lib/workflows/request-test.ts";

export async function requestTest(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(testRequestInput, { description: formText(data, "description") });
  if (!form.ok) return errorReply(form.problems);
  const context = await requestContext();
  const place = askingPlace(await headers(), environment().dataDir, context.clock());
  const outcome = await requestTestWorkflow(context, form.value, place);
  if (!outcome.ok) return errorReply(outcome.problems);
  redirect(paths.request(outcome.value.id));
}
