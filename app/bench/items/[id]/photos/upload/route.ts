import { orMachineProblem } from "@/app/bench/or-machine-problem.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { requirePermission } from "@/lib/access/require-permission.ts";
import { takeUploadTurn } from "@/lib/access/upload-turns.ts";
import { boundedForm } from "@/lib/platform/bounded-form.ts";
import { environment } from "@/lib/platform/environment.ts";
import { formText, formTextOrNull, parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Problem } from "@/lib/quantity/problem.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { addPhotoWorkflow, largestPhoto, photoInput } from "@/lib/workflows/add-photo.ts";

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(0)} MB`;
/** What goes with the photo in a form: its words, names of fields, boundaries. */
const around = 10_000;

/** Takes one photo of an item. Answers with where to go on, or with what is wrong; a form without scripts is sent on. */
export async function POST(request: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> {
  const { id } = await params;
  const reply = replyTo(request, id);
  return orMachineProblem(() => take(request, id, reply), reply);
}

async function take(request: Request, id: string, reply: ReturnType<typeof replyTo>): Promise<Response> {
  const context = await requestContext();
  // Asked before the body is read: nobody unknown gets to send twenty megabytes.
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return reply(403, permitted.problems);
  const tooMany = await takeUploadTurn(context);
  if (tooMany) return reply(429, [tooMany]);
  const data = await boundedForm(request, largestPhoto + around);
  if (!data)
    return reply(413, [
      { code: "too-large", found: `over ${megabytes(largestPhoto)}`, allowed: `up to ${megabytes(largestPhoto)}` },
    ]);
  const file = data.get("photo");
  if (!(file instanceof File) || file.name === "") return reply(400, [{ code: "file-missing" }]);
  const form = parseForm(photoInput, {
    itemId: id,
    alt: formText(data, "alt"),
    sendId: formTextOrNull(data, "sendId"),
  });
  if (!form.ok) return reply(400, form.problems);
  const bytes = new Uint8Array(await file.arrayBuffer());
  const outcome = await addPhotoWorkflow(context, form.value, { name: file.name, bytes }, environment().dataDir);
  return outcome.ok ? reply(200, outcome.value) : reply(422, outcome.problems);
}

/** A photo's id, or what is wrong with it: as JSON to a script, as a page to a form. */
const replyTo =
  (request: Request, itemId: string) =>
  (status: number, answer: string | Problem[]): Response => {
    const page = paths.benchPhotos(itemId);
    const scripted = request.headers.get("accept")?.includes("application/json") ?? false;
    if (typeof answer === "string") {
      const next = paths.benchPhoto(itemId, answer);
      return scripted
        ? Response.json({ next, id: answer })
        : new Response(null, { status: 303, headers: { location: page } });
    }
    const sentences = answer.map(problemSentence);
    if (scripted) return Response.json({ problems: sentences }, { status });
    const location = `${page}?problem=${encodeURIComponent(sentences.join(" "))}`;
    return new Response(null, { status: 303, headers: { location } });
  };
