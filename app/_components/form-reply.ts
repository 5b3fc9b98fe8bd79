import type { Problem } from "@/lib/quantity/problem.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import type { FormState } from "./action-form.tsx";

/** Problems as a form shows them: a sentence each, with the field it is about. */
export const errorReply = (problems: readonly Problem[]): FormState => ({
  errors: problems.map((p) => ({ field: p.where?.field, text: problemSentence(p) })),
});

export const noticeReply = (notice: string): FormState => ({ errors: [], notice });
