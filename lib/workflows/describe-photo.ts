import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { findPhoto, setPhotoAlt } from "../store/photos.ts";

export const describePhotoInput = z.object({
  photoId: z.string().min(1),
  alt: z.string().trim().min(8).max(300),
});

/** Says what a photo shows, for whoever cannot see it. Answers with what was said before. */
export async function describePhotoWorkflow(
  context: Context,
  input: z.input<typeof describePhotoInput>,
): Promise<Outcome<{ before: string }>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const { photoId, alt } = describePhotoInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    const photo = await findPhoto(tx, photoId);
    if (!photo) return refused({ code: "unknown-photo", found: photoId });
    await setPhotoAlt(tx, photoId, alt);
    const of = { record: "photo", recordId: photoId, itemId: photo.itemId, detail: { shows: alt } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "describe-photo", ...of });
    return done({ before: photo.alt });
  });
}
