import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { findPhoto, setPhotoRemoved } from "../store/photos.ts";

/** Takes a photo off its item. Files, words and spots stay, so that it can be put back; published pages keep it. */
export const takePhotoAwayWorkflow = (context: Context, photoId: string): Promise<Outcome<null>> =>
  setRemoved(context, photoId, context.clock());

/** Puts a photo back that was taken away: the undo. */
export const putPhotoBackWorkflow = (context: Context, photoId: string): Promise<Outcome<null>> =>
  setRemoved(context, photoId, null);

async function setRemoved(context: Context, photoId: string, at: Date | null): Promise<Outcome<null>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const photo = await findPhoto(tx, photoId);
    if (!photo) return refused({ code: "unknown-photo", found: photoId });
    await setPhotoRemoved(tx, photoId, at);
    const of = { record: "photo", recordId: photoId, itemId: photo.itemId };
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: at ? "take-photo-away" : "put-photo-back",
      ...of,
    });
    return done(null);
  });
}
