import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { findPhoto, type PhotoScaleRecord, setPhotoScale } from "../store/photos.ts";

const share = z.number().min(0).max(1);
export const scaleInput = z.object({
  photoId: z.string().min(1),
  /** the ends as shares of width and height, and the length between them in mm; null takes the scale away */
  scale: z
    .object({ x1: share, y1: share, x2: share, y2: share, lengthMm: z.number().positive().max(10_000) })
    .nullable(),
});

/** Marked shorter than this on the photo, an end off by a pixel or two changes the scale by a fifth (our own choice). */
const shortestPixels = 12;

/** Marks a known length on a photo, by which spots are drawn at the size of the analyser's window. */
export async function markScaleWorkflow(
  context: Context,
  input: z.input<typeof scaleInput>,
): Promise<Outcome<{ before: PhotoScaleRecord | null }>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const { photoId, scale } = scaleInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    const photo = await findPhoto(tx, photoId);
    if (!photo) return refused({ code: "unknown-photo", found: photoId });
    const pixels = scale
      ? Math.hypot((scale.x2 - scale.x1) * photo.width, (scale.y2 - scale.y1) * photo.height)
      : Number.POSITIVE_INFINITY;
    if (pixels < shortestPixels) return refused({ code: "scale-too-short", where: { field: "scale" } });
    await setPhotoScale(tx, photoId, scale);
    const of = { record: "photo", recordId: photoId, itemId: photo.itemId };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "mark-scale", ...of });
    return done({ before: photo.scale });
  });
}
