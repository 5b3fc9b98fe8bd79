import { orMachineProblem } from "@/app/bench/or-machine-problem.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { requirePermission } from "@/lib/access/require-permission.ts";
import { takeUploadTurn } from "@/lib/access/upload-turns.ts";
import { boundedForm } from "@/lib/platform/bounded-form.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Problem } from "@/lib/quantity/problem.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { largestFile, receiveFileWorkflow } from "@/lib/workflows/receive-file.ts";

/** What goes with the file in a form: names of fields, boundaries. */
const around = 10_000;
const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;

/** Takes one instrument file. Answers with where to go next, or with what is wrong; a form without scripts is sent on. */
export async function POST(request: Request): Promise<Response> {
  const scripted = request.headers.get("accept")?.includes("application/json") ?? false;
  return orMachineProblem(
    () => take(request, scripted),
    (status, problems) => refusal(problems, scripted, status),
  );
}

async function take(request: Request, scripted: boolean): Promise<Response> {
  const context = await requestContext();
  // Asked before the body is read: nobody unknown gets to send fifty megabytes.
  const permitted = requirePermission(context.person, "import-readings");
  if (!permitted.ok) return refusal(permitted.problems, scripted, 403);
  const tooMany = await takeUploadTurn(context);
  if (tooMany) return refusal([tooMany], scripted, 429);
  const data = await boundedForm(request, largestFile + around);
  if (!data)
    return refusal(
      [{ code: "too-large", found: `over ${megabytes(largestFile)}`, allowed: megabytes(largestFile) }],
      scripted,
      413,
    );
  const file = data.get("file");
  if (!(file instanceof File) || file.name === "")
    return refusal([{ code: "file-missing", where: { field: "file" } }], scripted, 400);
  const bytes = new Uint8Array(await file.arrayBuffer());
  const outcome = await receiveFileWorkflow(context, { name: file.name, bytes });
  if (!outcome.ok) return refusal(outcome.problems, scripted, 422);
  const { batch, known } = outcome.value;
  const next = `${paths.benchImportBatch(batch.id)}${known ? "?known=1" : ""}`;
  return scripted ? Response.json({ next }) : new Response(null, { status: 303, headers: { location: next } });
}

function refusal(problems: Problem[], scripted: boolean, status: number): Response {
  const sentences = problems.map(problemSentence);
  if (scripted) return Response.json({ problems: sentences }, { status });
  const location = `${paths.benchImport()}?problem=${encodeURIComponent(sentences.join(" "))}`;
  return new Response(null, { status: 303, headers: { location } });
}
