import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import { dropPhoto } from "../files/photo-store.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { findItem } from "../store/items.ts";
import { standingOfPhotoFile } from "../store/photos.ts";
import { findTestRequest, requestsWithPhoto, setTestRequestState } from "../store/test-requests.ts";

/**
 * Ties a request to the item that answers it, closes it, or opens it again (`itemId` null and `closed` false). A photo that
 * came with it has then done its work and is deleted.
 */
export const tieRequestInput = z.object({
  requestId: z.string().min(1).max(40),
  itemId: z.string().min(1).max(40).nullable(),
  closed: z.boolean().default(false),
});

export async function tieRequestWorkflow(
  context: Context,
  input: z.input<typeof tieRequestInput>,
  dataDir: string,
): Promise<Outcome<null>> {
  const { requestId, itemId, closed } = tieRequestInput.parse(input);
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const outcome = await inTransaction(context.db, async (tx) => {
    const request = await findTestRequest(tx, requestId);
    if (!request) return refused({ code: "not-found", found: requestId });
    if (itemId !== null && !(await findItem(tx, itemId))) return refused({ code: "unknown-item", found: itemId });
    const state = itemId !== null ? "tied" : closed ? "closed" : "open";
    await setTestRequestState(tx, requestId, {
      state,
      itemId,
      answeredAt: state === "open" ? null : context.clock(),
      photoKey: state === "open" ? request.photoKey : null,
    });
    const of = { record: "test-request", recordId: requestId, itemId, detail: { state } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "tie-request", ...of });
    return done(state === "open" ? null : request.photoKey);
  });
  if (!outcome.ok) return outcome;
  const key = outcome.value;
  const unused =
    key !== null &&
    (await requestsWithPhoto(context.db, key)) === 0 &&
    (await standingOfPhotoFile(context.db, key)) === "unknown";
  if (unused) await dropPhoto(dataDir, key);
  return done(null);
}
