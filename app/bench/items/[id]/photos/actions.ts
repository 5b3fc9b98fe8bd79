"use server";

import { revalidatePath } from "next/cache";
import type { FormState } from "@/app/_components/action-form.tsx";
import { errorReply, noticeReply } from "@/app/_components/form-reply.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { formText, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Outcome } from "@/lib/quantity/problem.ts";
import type { PhotoScaleRecord } from "@/lib/store/photos.ts";
import type { Assignment } from "@/lib/store/readings.ts";
import { problemSentences } from "@/lib/wording/problems.ts";
import { restoreAssignmentsWorkflow, restoreInput } from "@/lib/workflows/assign-readings.ts";
import { describePhotoInput, describePhotoWorkflow } from "@/lib/workflows/describe-photo.ts";
import { joinInput, joinSpotsWorkflow } from "@/lib/workflows/join-spots.ts";
import { markScaleWorkflow, scaleInput } from "@/lib/workflows/mark-scale.ts";
import {
  markSpotsInput,
  markSpotsWorkflow,
  type UnmarkedSpot,
  unmarkSpotWorkflow,
} from "@/lib/workflows/mark-spots.ts";
import { movePhotoInput, movePhotoWorkflow } from "@/lib/workflows/order-photos.ts";
import { putPhotoBackWorkflow, takePhotoAwayWorkflow } from "@/lib/workflows/take-photo-away.ts";

/** What a board on the screen is told: done, with the value it needs to go on, or the sentences of what is wrong. */
export type Reply<T = null> = { problems: string[]; value: T | null };

function reply<T>(itemId: string, outcome: Outcome<T>): Reply<T> {
  if (!outcome.ok) return { problems: problemSentences(outcome.problems), value: null };
  revalidatePath(paths.benchItem(itemId), "layout");
  return { problems: [], value: outcome.value };
}

export async function describePhoto(itemId: string, photoId: string, _: FormState, data: FormData): Promise<FormState> {
  const form = parseForm(describePhotoInput, { photoId, alt: formText(data, "alt") });
  const outcome = form.ok ? await describePhotoWorkflow(await requestContext(), form.value) : form;
  if (!outcome.ok)
    return {
      errors: errorReply(outcome.problems).errors.map((e) => (e.field ? { ...e, field: `alt-${photoId}` } : e)),
    };
  revalidatePath(paths.benchItem(itemId), "layout");
  return noticeReply("The words are saved.");
}

export async function movePhoto(itemId: string, photoId: string, by: number): Promise<Reply<string[]>> {
  const form = parseForm(movePhotoInput, { itemId, photoId, by });
  return reply(itemId, form.ok ? await movePhotoWorkflow(await requestContext(), form.value) : form);
}

export const takePhotoAway = async (itemId: string, photoId: string): Promise<Reply> =>
  reply(itemId, await takePhotoAwayWorkflow(await requestContext(), photoId));

export const putPhotoBack = async (itemId: string, photoId: string): Promise<Reply> =>
  reply(itemId, await putPhotoBackWorkflow(await requestContext(), photoId));

export async function markSpot(
  itemId: string,
  photoId: string,
  spot: { componentId: string; label: string; x: number; y: number },
): Promise<Reply<string[]>> {
  const form = parseForm(markSpotsInput, { photoId, spots: [spot] });
  return reply(itemId, form.ok ? await markSpotsWorkflow(await requestContext(), form.value) : form);
}

export const unmarkSpot = async (itemId: string, spotId: string): Promise<Reply<UnmarkedSpot>> =>
  reply(itemId, await unmarkSpotWorkflow(await requestContext(), spotId));

export async function markScale(
  itemId: string,
  photoId: string,
  scale: PhotoScaleRecord | null,
): Promise<Reply<{ before: PhotoScaleRecord | null }>> {
  const form = parseForm(scaleInput, { photoId, scale });
  return reply(itemId, form.ok ? await markScaleWorkflow(await requestContext(), form.value) : form);
}

export async function joinSpots(itemId: string, input: unknown): Promise<Reply<{ before: Assignment[] }>> {
  const form = parseForm(joinInput, input);
  return reply(itemId, form.ok ? await joinSpotsWorkflow(await requestContext(), form.value) : form);
}

export async function unjoinSpots(itemId: string, before: unknown): Promise<Reply<number>> {
  const form = parseForm(restoreInput, before);
  return reply(itemId, form.ok ? await restoreAssignmentsWorkflow(await requestContext(), form.value) : form);
}
