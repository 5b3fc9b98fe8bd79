"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply } from "@/app/_components/form-reply.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { formText, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { decisionMissing } from "@/lib/wording/review.ts";
import { reviewInput, reviewItemWorkflow } from "@/lib/workflows/review-item.ts";

/** The reviewer's decision, bound to what was shown when the page was made. */
export async function reviewItem(
  itemId: string,
  shownDigest: string,
  _: FormState,
  data: FormData,
): Promise<FormState> {
  if (formText(data, "decision") === "") return { errors: [{ field: "decision", text: decisionMissing }] };
  const form = parseForm(reviewInput, {
    itemId,
    shownDigest,
    decision: formText(data, "decision"),
    note: formText(data, "note"),
  });
  const outcome = form.ok ? await reviewItemWorkflow(await requestContext(), form.value) : form;
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.review(), "layout");
  revalidatePath(paths.bench(), "layout");
  redirect(`${paths.reviewItem(itemId)}?done=${form.ok ? form.value.decision : ""}`);
}
