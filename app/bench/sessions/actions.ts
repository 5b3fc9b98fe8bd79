"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { formList, formNumber, formText, formTextOrNull, formTicked, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Outcome, Problem } from "@/lib/quantity/problem.ts";
import { localMoment } from "@/lib/readings/local-moment.ts";
import { counted } from "@/lib/wording/formats.ts";
import { pickInput, pickSessionWorkflow } from "@/lib/workflows/pick-session.ts";
import {
  adjustSessionWorkflow,
  removeSessionWorkflow,
  type SavedSession,
  saveSessionWorkflow,
  sessionInput,
} from "@/lib/workflows/save-session.ts";

const momentOf = (data: FormData, name: string): Outcome<string> => {
  const [date, time, zone] = ["date", "time", "zone"].map((part) => formText(data, `${name}-${part}`));
  return localMoment({ date: date ?? "", time: time ?? "", zone: zone ?? "" });
};
const inField = (outcome: Outcome<unknown>, field: string): Problem[] =>
  outcome.ok ? [] : outcome.problems.map((p) => ({ ...p, where: { ...p.where, field } }));

export async function saveSession(_: FormState, data: FormData): Promise<FormState> {
  const started = momentOf(data, "startedAt");
  const ended = formText(data, "endedAt-date") === "" ? null : momentOf(data, "endedAt");
  const wrong = [...inField(started, "startedAt"), ...(ended ? inField(ended, "endedAt") : [])];
  if (wrong.length > 0 || !started.ok) return errorReply(wrong);
  const form = parseForm(sessionInput, {
    instrumentId: formText(data, "instrumentId"),
    operatorId: formTextOrNull(data, "operatorId"),
    operatorName: formTextOrNull(data, "operatorName"),
    place: formTextOrNull(data, "place"),
    timeZone: formText(data, "startedAt-zone"),
    startedAt: started.value,
    endedAt: ended?.ok ? ended.value : null,
    conditions: formTextOrNull(data, "conditions"),
    trained: formTicked(data, "trained"),
    clockShiftMinutes: formNumber(data, "clockShiftMinutes") ?? 0,
    corrections: formList(data, "corrections"),
    inDoubtReason: formTextOrNull(data, "inDoubtReason"),
    note: formText(data, "note"),
  });
  if (!form.ok) return errorReply(form.problems);
  const outcome = await saveSessionWorkflow(
    await requestContext(),
    form.value,
    formTextOrNull(data, "id") ?? undefined,
  );
  if (!outcome.ok) return errorReply(outcome.problems);
  redirect(paths.benchSession(outcome.value.id));
}

/** One thing of a session at a time: the clock, the corrections, why doubtful readings are used. */
async function adjusted(
  data: FormData,
  change: Parameters<typeof adjustSessionWorkflow>[2],
  said: (saved: SavedSession) => string,
): Promise<FormState> {
  const outcome = await adjustSessionWorkflow(await requestContext(), formText(data, "id"), change);
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.benchSessions(), "layout");
  return noticeReply(said(outcome.value));
}

export async function shiftClock(_: FormState, data: FormData): Promise<FormState> {
  return adjusted(data, { clockShiftMinutes: formNumber(data, "minutes") ?? 0 }, ({ joined }) =>
    joined.moves.length === 0
      ? "The clock is put right."
      : `The clock is put right; ${counted(joined.moves.length, "reading")} changed place.`,
  );
}

export async function confirmTraining(_: FormState, data: FormData): Promise<FormState> {
  return adjusted(data, { trained: true }, () => "Recorded.");
}

export async function askCorrections(_: FormState, data: FormData): Promise<FormState> {
  return adjusted(data, { corrections: formList(data, "corrections") }, () => "Saved.");
}

export async function allowDoubtful(_: FormState, data: FormData): Promise<FormState> {
  const inDoubtReason = formTicked(data, "leaveOut") ? null : formText(data, "inDoubtReason");
  return adjusted(data, { inDoubtReason }, () => (inDoubtReason === null ? "They are left out again." : "Saved."));
}

export async function pickSession(_: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(pickInput, {
    readingIds: formList(data, "readingIds"),
    sessionId: formTextOrNull(data, "sessionId"),
  });
  if (!form.ok) return errorReply(form.problems);
  const outcome = await pickSessionWorkflow(await requestContext(), form.value);
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.benchSessions(), "layout");
  return noticeReply(`${counted(outcome.value.readings, "reading is", "readings are")} in that session now.`);
}

export async function removeSession(_: FormState, data: FormData): Promise<FormState> {
  const outcome = await removeSessionWorkflow(await requestContext(), formText(data, "id"));
  if (!outcome.ok) return errorReply(outcome.problems);
  redirect(paths.benchSessions());
}
