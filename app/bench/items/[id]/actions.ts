"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { signedHead } from "@/app/_log/signed-head.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { formQuantity, formText, formTextOrNull, formTicked, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { counted } from "@/lib/wording/formats.ts";
import { assignInput, assignReadingsWorkflow } from "@/lib/workflows/assign-readings.ts";
import { editItemWorkflow, itemInput } from "@/lib/workflows/create-item.ts";
import {
  addComponentWorkflow,
  addSpecimenWorkflow,
  componentInput,
  removeComponentWorkflow,
  specimenInput,
} from "@/lib/workflows/describe-specimen.ts";
import { publishItemWorkflow } from "@/lib/workflows/publish-item.ts";
import { restoreReadingWorkflow, setReadingAsideWorkflow } from "@/lib/workflows/set-reading-aside.ts";
import { itemFormValues, readingIdsOf } from "../item-form-values.ts";

/** One page holds many forms, so their fields carry the form's own prefix; an error leads to the field of its form. */
const inForm = (prefix: string, state: FormState): FormState => ({
  ...state,
  errors: state.errors.map((e) => (e.field ? { ...e, field: `${prefix}${e.field}` } : e)),
});

export async function editItem(id: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(itemInput, itemFormValues(data));
  const outcome = form.ok ? await editItemWorkflow(await requestContext(), id, form.value) : form;
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.bench(), "layout");
  return noticeReply("The words are saved.");
}

export async function addSpecimen(itemId: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(specimenInput, {
    label: formText(data, "label"),
    howGot: formText(data, "howGot"),
    whoPaid: formText(data, "whoPaid"),
    gotOn: formTextOrNull(data, "gotOn"),
    dateCode: formTextOrNull(data, "dateCode"),
    madeOn: formTextOrNull(data, "madeOn"),
    condition: formTextOrNull(data, "condition"),
  });
  const outcome = form.ok ? await addSpecimenWorkflow(await requestContext(), itemId, form.value) : form;
  if (!outcome.ok) return inForm("object-", errorReply(outcome.problems));
  revalidatePath(paths.benchItem(itemId));
  return noticeReply("The object is added. Now name its parts.");
}

export async function addPart(itemId: string, specimenId: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(componentInput, {
    name: formText(data, "name"),
    material: formText(data, "material"),
    form: formText(data, "form"),
    accessible: formTicked(data, "accessible"),
    thicknessMm: formQuantity(data, "thicknessMm", "mm"),
    smallestDimensionMm: formQuantity(data, "smallestDimensionMm", "mm"),
    areaCm2: formQuantity(data, "areaCm2", "cm²"),
    massG: formQuantity(data, "massG", "g"),
  });
  const outcome = form.ok ? await addComponentWorkflow(await requestContext(), specimenId, form.value) : form;
  if (!outcome.ok) return inForm(`part-${specimenId}-`, errorReply(outcome.problems));
  revalidatePath(paths.benchItem(itemId));
  return noticeReply(`“${outcome.value.name}” is added.`);
}

export async function removePart(partId: string, _: FormState, __: FormData): Promise<FormState> {
  const outcome = await removeComponentWorkflow(await requestContext(), partId);
  if (!outcome.ok) return errorReply(outcome.problems);
  revalidatePath(paths.bench(), "layout");
  return { errors: [] };
}

/** The ticked readings of a part: set aside with a reason, taken back into the result, or taken off the part. */
export async function handleReadings(partId: string, _: FormState, data: FormData): Promise<FormState> {
  const readingIds = readingIdsOf(data);
  if (readingIds.length === 0) return { errors: [{ text: "Tick at least one reading." }] };
  const context = await requestContext();
  const readings = counted(readingIds.length, "reading");
  const what = formText(data, "do");
  if (what === "restore") {
    const outcome = await restoreReadingWorkflow(context, readingIds);
    if (!outcome.ok) return errorReply(outcome.problems);
    revalidatePath(paths.bench(), "layout");
    return noticeReply(`${readings} back in the result.`);
  }
  if (what === "off") {
    const input = assignInput.parse({ readingIds, componentId: null, spot: { how: "as-written" } });
    const outcome = await assignReadingsWorkflow(context, input);
    if (!outcome.ok) return errorReply(outcome.problems);
    revalidatePath(paths.bench(), "layout");
    return noticeReply(`${readings} taken off this part, and back among the unassigned ones.`);
  }
  const outcome = await setReadingAsideWorkflow(context, { readingIds, reason: formText(data, "reason") });
  if (!outcome.ok) return inForm(`${partId}-`, errorReply(outcome.problems));
  revalidatePath(paths.bench(), "layout");
  return noticeReply(`${readings} set aside.`);
}

export async function publishItem(itemId: string, _: FormState, __: FormData): Promise<FormState> {
  const outcome = await publishItemWorkflow(await requestContext(), { itemId });
  if (!outcome.ok) return inForm("publish-", errorReply(outcome.problems));
  await signedHead();
  const { slug } = outcome.value;
  for (const path of [paths.item(slug), paths.home(), paths.items(), paths.corrections(), paths.log()])
    revalidatePath(path);
  revalidatePath(paths.bench(), "layout");
  revalidatePath(paths.review(), "layout");
  redirect(`${paths.benchItem(itemId)}?published=${outcome.value.revision}`);
}
