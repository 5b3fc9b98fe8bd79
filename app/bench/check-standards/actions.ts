"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { readCertifiedLines } from "@/lib/consistency/certified-lines.ts";
import { formList, formNumber, formText, formTextOrNull, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { parseUnit } from "@/lib/quantity/units.ts";
import { database } from "@/lib/store/database.ts";
import { listReadings } from "@/lib/store/readings.ts";
import { counted } from "@/lib/wording/formats.ts";
import { markCheckReadingsWorkflow, markInput } from "@/lib/workflows/mark-check-readings.ts";
import {
  checkStandardInput,
  retireCheckStandardWorkflow,
  saveCheckStandardWorkflow,
} from "@/lib/workflows/save-check-standard.ts";

const linesOf = (data: FormData, name: string): string[] =>
  formText(data, name)
    .split("\n")
    .map((line) => line.trim())
    .filter(Boolean);

export async function saveCheckStandard(_: FormState, data: FormData): Promise<FormState> {
  const k = formNumber(data, "k");
  const certified = readCertifiedLines(formText(data, "certified"), {
    unit: parseUnit(formText(data, "unit")) ?? "mg/kg",
    k: k === 1 || k === 3 ? k : 2,
  });
  if (!certified.ok) return errorReply(certified.problems);
  const form = parseForm(checkStandardInput, {
    name: formText(data, "name"),
    matrix: formText(data, "matrix"),
    material: formText(data, "material"),
    modes: linesOf(data, "modes"),
    otherNames: linesOf(data, "otherNames"),
    certified: certified.value,
    certificate: formTextOrNull(data, "certificate"),
    expiresOn: formTextOrNull(data, "expiresOn"),
  });
  if (!form.ok) return errorReply(form.problems);
  const outcome = await saveCheckStandardWorkflow(
    await requestContext(),
    form.value,
    formTextOrNull(data, "id") ?? undefined,
  );
  if (!outcome.ok) return errorReply(outcome.problems);
  redirect(paths.benchCheckStandard(outcome.value.id));
}

export async function retireCheckStandard(_: FormState, data: FormData): Promise<FormState> {
  const retired = formText(data, "retired") === "yes";
  const outcome = await retireCheckStandardWorkflow(await requestContext(), formText(data, "id"), retired);
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.benchCheckStandards(), "layout");
  return noticeReply(retired ? "It is out of use." : "It is in use again.");
}

/** Readings chosen one by one, or a whole sample of a file at once ("file\nsample"). */
export async function markCheckReadings(_: FormState, data: FormData): Promise<FormState> {
  const samples = await Promise.all(
    formList(data, "samples").map((chosen) => {
      const [batchId = "", sample = ""] = chosen.split("\n");
      return listReadings(database(), { batchId, sample, unassigned: true }, 20_000);
    }),
  );
  const form = parseForm(markInput, {
    readingIds: [...formList(data, "readingIds"), ...samples.flat().map((r) => r.id)],
    checkStandardId: formTextOrNull(data, "checkStandardId"),
  });
  if (!form.ok) return errorReply(form.problems);
  const outcome = await markCheckReadingsWorkflow(await requestContext(), form.value);
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.benchCheckStandards(), "layout");
  const { readings } = outcome.value;
  return noticeReply(
    form.value.checkStandardId === null
      ? `${counted(readings, "reading is", "readings are")} no check any more, and ${readings === 1 ? "waits" : "wait"} among the unassigned.`
      : `${counted(readings, "reading is", "readings are")} a check now. It can be undone in the list of its readings.`,
  );
}
