"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { signedHead } from "@/app/_log/signed-head.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { formQuantity, formText, formTextOrNull, formTicked, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { type Removed, removedSchema } from "@/lib/store/removed.ts";
import { counted } from "@/lib/wording/formats.ts";
import { problemSentence, problemSentences } from "@/lib/wording/problems.ts";
import { assignInput, assignReadingsWorkflow } from "@/lib/workflows/assign-readings.ts";
import { editItemWorkflow, itemInput } from "@/lib/workflows/create-item.ts";
import {
  addComponentWorkflow,
  addSpecimenWorkflow,
  componentInput,
  editComponentWorkflow,
  editSpecimenWorkflow,
  moveWorkflow,
  specimenInput,
} from "@/lib/workflows/describe-specimen.ts";
import { publishItemWorkflow } from "@/lib/workflows/publish-item.ts";
import { putBackWorkflow, removeObjectWorkflow, removePartWorkflow } from "@/lib/workflows/remove-from-item.ts";
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

const specimenValues = (data: FormData) => ({
  label: formText(data, "label"),
  howGot: formText(data, "howGot"),
  whoPaid: formText(data, "whoPaid"),
  gotOn: formTextOrNull(data, "gotOn"),
  dateCode: formTextOrNull(data, "dateCode"),
  madeOn: formTextOrNull(data, "madeOn"),
  condition: formTextOrNull(data, "condition"),
});

export async function addSpecimen(itemId: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(specimenInput, specimenValues(data));
  const outcome = form.ok ? await addSpecimenWorkflow(await requestContext(), itemId, form.value) : form;
  if (!outcome.ok) return inForm("object-", errorReply(outcome.problems));
  revalidatePath(paths.benchItem(itemId));
  return noticeReply("The object is added. Now name its parts.");
}

export async function editSpecimen(itemId: string, id: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(specimenInput, specimenValues(data));
  const outcome = form.ok ? await editSpecimenWorkflow(await requestContext(), id, form.value) : form;
  if (!outcome.ok) return inForm(`object-${id}-`, errorReply(outcome.problems));
  revalidatePath(paths.benchItem(itemId));
  return noticeReply(`“${outcome.value}” is saved.`);
}

const partValues = (data: FormData) => ({
  name: formText(data, "name"),
  material: formText(data, "material"),
  form: formText(data, "form"),
  accessible: formTicked(data, "accessible"),
  thicknessMm: formQuantity(data, "thicknessMm", "mm"),
  smallestDimensionMm: formQuantity(data, "smallestDimensionMm", "mm"),
  areaCm2: formQuantity(data, "areaCm2", "cm²"),
  massG: formQuantity(data, "massG", "g"),
});

export async function addPart(itemId: string, specimenId: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(componentInput, partValues(data));
  const outcome = form.ok ? await addComponentWorkflow(await requestContext(), specimenId, form.value) : form;
  if (!outcome.ok) return inForm(`part-${specimenId}-`, errorReply(outcome.problems));
  revalidatePath(paths.benchItem(itemId));
  return noticeReply(`“${outcome.value.name}” is added.`);
}

export async function editPart(itemId: string, id: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(componentInput, partValues(data));
  const outcome = form.ok ? await editComponentWorkflow(await requestContext(), id, form.value) : form;
  if (!outcome.ok) return inForm(`part-${id}-`, errorReply(outcome.problems));
  revalidatePath(paths.benchItem(itemId));
  return noticeReply(`“${outcome.value.name}” is saved.`);
}

type Handled = { problems: string[]; removed?: Removed };

/** Takes an object or a part away; answers with what is needed to put it back. */
export async function takeAway(itemId: string, kind: "object" | "part", id: string): Promise<Handled> {
  const context = await requestContext();
  const outcome = kind === "object" ? await removeObjectWorkflow(context, id) : await removePartWorkflow(context, id);
  if (!outcome.ok) return { problems: problemSentences(outcome.problems) };
  revalidatePath(paths.bench(), "layout");
  revalidatePath(paths.benchItem(itemId));
  return { problems: [], removed: outcome.value };
}

export async function putBack(itemId: string, removed: unknown): Promise<Handled> {
  const parsed = removedSchema.safeParse(removed);
  if (!parsed.success) return { problems: [problemSentence({ code: "nothing-chosen" })] };
  const outcome = await putBackWorkflow(await requestContext(), parsed.data);
  if (!outcome.ok) return { problems: problemSentences(outcome.problems) };
  revalidatePath(paths.bench(), "layout");
  revalidatePath(paths.benchItem(itemId));
  return { problems: [] };
}

export async function move(itemId: string, kind: "object" | "part", id: string, by: "up" | "down"): Promise<Handled> {
  const what = kind === "object" ? { specimenId: id } : { componentId: id };
  const outcome = await moveWorkflow(await requestContext(), what, by === "up" ? "up" : "down");
  if (!outcome.ok) return { problems: problemSentences(outcome.problems) };
  revalidatePath(paths.benchItem(itemId));
  return { problems: [] };
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
