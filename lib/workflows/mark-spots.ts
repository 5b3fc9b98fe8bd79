import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { itemIdOfComponent } from "../store/items.ts";
import { findPhoto } from "../store/photos.ts";
import { findSpot, markSpot, type SpotPlace, unmarkSpot } from "../store/spots.ts";

const share = z.number().min(0).max(1);
export const markSpotsInput = z.object({
  photoId: z.string().min(1),
  spots: z
    .array(
      z.object({
        componentId: z.string().min(1),
        /** the spot's name on its part; one of that name is moved, not made twice */
        label: z.string().trim().min(1).max(60),
        x: share,
        y: share,
      }),
    )
    .min(1)
    .max(200),
});

/** Marks spots on a photo: new ones are made, known ones moved there. Answers with their ids, in the order given. */
export async function markSpotsWorkflow(
  context: Context,
  input: z.input<typeof markSpotsInput>,
): Promise<Outcome<string[]>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const { photoId, spots } = markSpotsInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    const photo = await findPhoto(tx, photoId);
    if (!photo || photo.removed) return refused({ code: "unknown-photo", found: photoId });
    // All parts are looked at before anything is written: a refusal leaves nothing half done.
    for (const componentId of new Set(spots.map((spot) => spot.componentId)))
      if ((await itemIdOfComponent(tx, componentId)) !== photo.itemId)
        return refused({ code: "unknown-part", found: componentId });
    const ids: string[] = [];
    for (const { componentId, label, x, y } of spots)
      ids.push(await markSpot(tx, componentId, label, { photoId, x, y }));
    const of = { record: "photo", recordId: photoId, itemId: photo.itemId, detail: { spots: spots.length } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "mark-spots", ...of });
    return done(ids);
  });
}

/** What a spot was before its mark was taken off: enough to mark it again. */
export type UnmarkedSpot = { componentId: string; label: string; place: SpotPlace | null };

/** Takes a spot's mark off its photo; its readings stay on it, and a spot without any is forgotten. */
export async function unmarkSpotWorkflow(context: Context, spotId: string): Promise<Outcome<UnmarkedSpot>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const spot = await findSpot(tx, spotId);
    if (!spot) return refused({ code: "unknown-spot", found: spotId });
    const { componentId, label, photoId, x, y } = spot;
    const of = {
      record: "spot",
      recordId: spotId,
      itemId: await itemIdOfComponent(tx, componentId),
      detail: { label },
    };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "unmark-spot", ...of });
    await unmarkSpot(tx, spotId);
    return done({ componentId, label, place: photoId === null || x === null || y === null ? null : { photoId, x, y } });
  });
}
