import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import { keepPhoto } from "../files/photo-store.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { findItem } from "../store/items.ts";
import { addPhoto } from "../store/photos.ts";
import { answerGiven, keepAnswer } from "../store/sent-once.ts";

/** The largest photo taken, in bytes, as a phone sends it; what is shown is re-encoded and much smaller. */
export const largestPhoto = 20_000_000;

export const photoInput = z.object({
  itemId: z.string().min(1),
  /** What somebody who does not see the picture needs to know of it. Empty: said later, before it can be published. */
  alt: z.union([z.literal(""), z.string().trim().min(8).max(300)]).default(""),
  /** Made by whoever sends, so that the same photo sent twice is kept once. */
  sendId: z.uuid().nullable().default(null),
});

/**
 * Adds a photo to an item: checked, turned upright, freed of metadata, kept in the data folder. The files are on the
 * disk before the record that names them. Sent again under the same `sendId`, it answers as the first time.
 *
 * Refused: `unknown-item`, `too-large`, `sent-by-another`, and what `keepPhoto` refuses.
 */
export async function addPhotoWorkflow(
  context: Context,
  input: z.input<typeof photoInput>,
  photo: { name: string; bytes: Uint8Array },
  dataDir: string,
): Promise<Outcome<string>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const { itemId, alt, sendId } = photoInput.parse(input);
  const { id: userId } = permitted.value;
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
    const answered = sendId ? await answerGiven(tx, sendId, userId, "add-photo") : null;
    if (answered === "foreign") return refused({ code: "sent-by-another" });
    if (answered) return done(answered);
    if (!(await findItem(tx, itemId))) return refused({ code: "unknown-item", found: itemId });
    const createdAt = context.clock();
    const record = { ...kept.value, alt, originalName: photo.name.slice(0, 200), createdById: userId, createdAt };
    const photoId = await addPhoto(tx, itemId, record);
    const of = { record: "photo", recordId: photoId, itemId, detail: { shows: alt } };
    await recordAct(tx, { at: createdAt, actor: permitted.value, action: "add-photo", ...of });
    if (sendId) await keepAnswer(tx, { id: sendId, userId, action: "add-photo", answer: photoId, createdAt });
    return done(photoId);
  });
}

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;
