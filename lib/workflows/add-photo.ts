import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import { keepPhoto } from "../files/photo-store.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { inTransaction } from "../store/database.ts";
import { addPhoto, findItem } from "../store/items.ts";

/** The largest photo taken, in bytes, as a phone sends it; what is kept is re-encoded and much smaller. */
export const largestPhoto = 20_000_000;

export const photoInput = z.object({
  itemId: z.string().min(1),
  /** What somebody who does not see the picture needs to know of it. */
  alt: z.string().trim().min(8).max(300),
});

/**
 * Adds a photo to an item: checked, turned upright, freed of metadata, kept in the data folder. Its bytes are named
 * by their content, so a picture kept for an item that then fails to be stored does no harm.
 *
 * Refused: `unknown-item`, `too-large`, `photo-unreadable`.
 */
export async function addPhotoWorkflow(
  context: Context,
  input: z.input<typeof photoInput>,
  photo: { name: string; bytes: Uint8Array },
  dataDir: string,
): Promise<Outcome<string>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const { itemId, alt } = photoInput.parse(input);
  const where = { file: photo.name };
  if (photo.bytes.length > largestPhoto)
    return refused({
      code: "too-large",
      where,
      found: megabytes(photo.bytes.length),
      allowed: megabytes(largestPhoto),
    });
  if (!(await findItem(context.db, itemId))) return refused({ code: "unknown-item", found: itemId });
  const kept = await keepPhoto(dataDir, photo.bytes);
  if (!kept.ok) return refused(...kept.problems.map((p) => ({ ...p, where })));
  return inTransaction(context.db, async (tx) => {
    if (!(await findItem(tx, itemId))) return refused({ code: "unknown-item", found: itemId });
    return done(await addPhoto(tx, itemId, { ...kept.value, alt }));
  });
}

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;
