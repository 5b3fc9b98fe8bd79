"use server";

import { revalidatePath } from "next/cache";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { readRangeLines } from "@/lib/consistency/certified-lines.ts";
import { formNumber, formText, formTextOrNull, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { instrumentInput, saveInstrumentWorkflow } from "@/lib/workflows/save-instrument.ts";

export async function saveInstrument(_: FormState, data: FormData): Promise<FormState> {
  const percent = formNumber(data, "calibrationRel");
  const modes = formText(data, "modes")
    .split("\n")
    .map((m) => m.trim())
    .filter(Boolean);
  const ranges = readRangeLines(formText(data, "calibratedRanges"));
  if (!ranges.ok) return errorReply(ranges.problems);
  const form = parseForm(instrumentInput, {
    name: formText(data, "name"),
    kind: formText(data, "kind"),
    serial: formText(data, "serial"),
    modes,
    errorKByMode: Object.fromEntries(
      modes.flatMap((mode) => {
        const k = formNumber(data, `errorK ${mode}`);
        return k === null ? [] : [[mode, k]];
      }),
    ),
    calibratedRanges: ranges.value,
    windowMm: formNumber(data, "windowMm"),
    errorK: formNumber(data, "errorK"),
    calibrationRel: percent === null ? null : percent / 100,
    timeZone: formTextOrNull(data, "timeZone"),
    minimumSeconds: formNumber(data, "minimumSeconds"),
  });
  if (!form.ok) return errorReply(form.problems);
  const outcome = await saveInstrumentWorkflow(
    await requestContext(),
    form.value,
    formTextOrNull(data, "id") ?? undefined,
  );
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.benchInstruments());
  return noticeReply(`${outcome.value.name} is saved.`);
}
