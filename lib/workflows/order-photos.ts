import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { findItem } from "../store/items.ts";
import { orderPhotos } from "../store/photos.ts";

export const movePhotoInput = z.object({
  itemId: z.string().min(1),
  photoId: z.string().min(1),
  /** how many places: −1 is one further to the front */
  by: z.number().int().min(-200).max(200),
});

/** Moves a photo among its item's; the first is the one that readers see beside the answer. */
export async function movePhotoWorkflow(
  context: Context,
  input: z.input<typeof movePhotoInput>,
): Promise<Outcome<string[]>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const { itemId, photoId, by } = movePhotoInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    const item = await findItem(tx, itemId);
    if (!item) return refused({ code: "unknown-item", found: itemId });
    const ids = item.photos.map((photo) => photo.id);
    const from = ids.indexOf(photoId);
    if (from < 0) return refused({ code: "unknown-photo", found: photoId });
    const others = ids.filter((id) => id !== photoId);
    const to = Math.min(Math.max(from + by, 0), others.length);
    const order = [...others.slice(0, to), photoId, ...others.slice(to)];
    await orderPhotos(tx, order);
    const of = { record: "photo", recordId: photoId, itemId };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "move-photo", ...of });
    return done(order);
  });
}
