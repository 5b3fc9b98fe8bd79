import { may } from "@/lib/access/permissions.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { readPhoto } from "@/lib/files/photo-store.ts";
import { environment } from "@/lib/platform/environment.ts";
import { database } from "@/lib/store/database.ts";
import { standingOfPhotoFile } from "@/lib/store/photos.ts";

/**
 * A photo by its key. The key is made of the content, so the answer never changes. What no published revision names is
 * shown to those who work at the bench or review, and to nobody else.
 */
export async function GET(_: Request, { params }: { params: Promise<{ key: string }> }): Promise<Response> {
  const { key } = await params;
  const standing = await standingOfPhotoFile(database(), key);
  if (standing === "unknown" || (standing === "kept" && !(await mayWork()))) return missing();
  const bytes = await readPhoto(environment().dataDir, key);
  if (!bytes) return missing();
  return new Response(bytes, {
    headers: {
      "content-type": "image/webp",
      "cache-control": standing === "published" ? "public, max-age=31536000, immutable" : "private, max-age=3600",
    },
  });
}

async function mayWork(): Promise<boolean> {
  const { person } = await requestContext();
  return may(person, "see-bench").yes || may(person, "see-review").yes;
}

const missing = (): Response =>
  new Response("No such photo.\n", {
    status: 404,
    headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" },
  });
