import { database } from "@/lib/store/database.ts";
import { findItem } from "@/lib/store/items.ts";
import { latestPublished, type PublishedItem } from "@/lib/store/published.ts";
import { findTestRequest, type TestRequestRecord } from "@/lib/store/test-requests.ts";

/** A request, and what is published of the item it is tied to: nothing else of that item is anybody's business yet. */
export async function loadRequest(
  id: string,
): Promise<{ request: TestRequestRecord; published: PublishedItem | null } | null> {
  const db = database();
  const request = await findTestRequest(db, id);
  if (!request) return null;
  const item = request.itemId === null ? null : await findItem(db, request.itemId);
  return { request, published: item ? await latestPublished(item.slug, db) : null };
}
