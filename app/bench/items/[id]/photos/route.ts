import { requestContext } from "@/lib/access/request-context.ts";
import { requirePermission } from "@/lib/access/require-permission.ts";
import { environment } from "@/lib/platform/environment.ts";
import { formText, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Problem } from "@/lib/quantity/problem.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { addPhotoWorkflow, largestPhoto, photoInput } from "@/lib/workflows/add-photo.ts";

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;

/** Takes one photo of an item, with what it shows in words. A plain form: it answers with the item's page again. */
export async function POST(request: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await params;
  const context = await requestContext();
  // Asked before the body is read: nobody unknown gets to send twenty megabytes.
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return back(id, permitted.problems);
  const announced = Number(request.headers.get("content-length") ?? 0);
  if (announced > largestPhoto + 10_000)
    return back(id, [{ code: "too-large", found: megabytes(announced), allowed: megabytes(largestPhoto) }]);
  const data = await request.formData();
  const file = data.get("photo");
  if (!(file instanceof File) || file.name === "") return back(id, [{ code: "file-missing" }]);
  const form = parseForm(photoInput, { itemId: id, alt: formText(data, "alt") });
  if (!form.ok) return back(id, form.problems);
  const bytes = new Uint8Array(await file.arrayBuffer());
  const outcome = await addPhotoWorkflow(context, form.value, { name: file.name, bytes }, environment().dataDir);
  return back(id, outcome.ok ? [] : outcome.problems);
}

function back(id: string, problems: Problem[]): Response {
  const wrong = problems.map(problemSentence).join(" ");
  const query = wrong === "" ? "" : `?photo=${encodeURIComponent(wrong)}`;
  return new Response(null, { status: 303, headers: { location: `${paths.benchItem(id)}${query}#photos` } });
}
