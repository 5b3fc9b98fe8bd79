import { readPhoto } from "@/lib/files/photo-store.ts";
import { environment } from "@/lib/platform/environment.ts";

/** A photo by its key. The key is made of the content, so the answer never changes. */
export async function GET(_: Request, { params }: { params: Promise<{ key: string }> }): Promise<Response> {
  const { key } = await params;
  const bytes = await readPhoto(environment().dataDir, key);
  if (!bytes)
    return new Response("No such photo.\n", { status: 404, headers: { "content-type": "text/plain; charset=utf-8" } });
  return new Response(bytes, {
    headers: { "content-type": "image/webp", "cache-control": "public, max-age=31536000, immutable" },
  });
}
