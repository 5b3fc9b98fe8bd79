"use server";

import { revalidatePath } from "next/cache";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { environment } from "@/lib/platform/environment.ts";
import { formText, formTextOrNull, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { requestQueue } from "@/lib/wording/test-requests.ts";
import { tieRequestInput, tieRequestWorkflow } from "@/lib/workflows/tie-request.ts";

export async function tieRequest(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(tieRequestInput, {
    requestId: formText(data, "requestId"),
    itemId: formTextOrNull(data, "itemId"),
    closed: formText(data, "closed") === "yes",
  });
  const outcome = form.ok ? await tieRequestWorkflow(await requestContext(), form.value, environment().dataDir) : form;
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.benchRequests());
  return noticeReply(requestQueue.kept);
}
