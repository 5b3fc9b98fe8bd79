import { requestContext } from "@/lib/access/request-context.ts";
import { requirePermission } from "@/lib/access/require-permission.ts";
import { boundedForm } from "@/lib/platform/bounded-form.ts";
import type { Context } from "@/lib/platform/context.ts";
import { formTextOrNull } from "@/lib/platform/form-values.ts";
import { errorFacts, log } from "@/lib/platform/log.ts";
import { machineProblem } from "@/lib/platform/machine-problem.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Outcome, Problem } from "@/lib/quantity/problem.ts";
import { batchFile } from "@/lib/store/batch-table.ts";
import { findBatch } from "@/lib/store/imports.ts";
import { problemSentences } from "@/lib/wording/problems.ts";
import { type ImportDone, type ImportProgress, importReadingsWorkflow } from "@/lib/workflows/import-readings.ts";
import { saveMappingWorkflow } from "@/lib/workflows/save-mapping.ts";
import { mappingOfForm } from "../mapping-form-values.ts";
import { startingMapping } from "../mapping-view.ts";

/** A mapping of some hundred columns is a few kilobytes. */
const longestForm = 2_000_000;
const formTooLong: Problem = { code: "too-large", found: "over 2 MB", allowed: "up to 2 MB" };
const lines = { "content-type": "application/x-ndjson", "cache-control": "no-store" };

type Params = { params: Promise<{ id: string }> };

/**
 * Keeps what the form says of the columns and loads the readings. Scripted callers get a line of JSON for each step of
 * progress and a last one with the answer; a plain form is sent on to the import's page.
 */
export async function POST(request: Request, { params }: Params): Promise<Response> {
  const { id } = await params;
  const scripted = request.headers.get("accept")?.includes("application/x-ndjson") ?? false;
  const context = await requestContext();
  // Asked before the body is read, like every upload.
  const permitted = requirePermission(context.person, "import-readings");
  const data = permitted.ok ? await boundedForm(request, longestForm) : null;
  const refused = permitted.ok ? (data ? [] : [formTooLong]) : permitted.problems;
  if (!data && scripted)
    return new Response(`${JSON.stringify({ problems: problemSentences(refused) })}\n`, {
      status: permitted.ok ? 413 : 403,
      headers: lines,
    });
  const work = async (onProgress: (p: ImportProgress) => void) =>
    data ? load(context, id, data, onProgress) : refuse(...refused);
  if (!scripted) {
    const outcome = await work(() => {});
    const query = outcome.ok ? "" : `?problem=${encodeURIComponent(problemSentences(outcome.problems).join(" "))}`;
    return new Response(null, { status: 303, headers: { location: paths.benchImportBatch(id) + query } });
  }
  const encoder = new TextEncoder();
  const stream = new ReadableStream<Uint8Array>({
    async start(controller) {
      const line = (value: unknown) => controller.enqueue(encoder.encode(`${JSON.stringify(value)}\n`));
      try {
        const outcome = await work(line);
        line(outcome.ok ? { next: paths.benchImportBatch(id) } : { problems: problemSentences(outcome.problems) });
      } catch (error) {
        log().error(
          { requestId: request.headers.get("x-request-id"), ...errorFacts(error) },
          "loading an import failed",
        );
        line({ problems: problemSentences([machineProblem(error) ?? { code: "import-broke" }]) });
      }
      controller.close();
    },
  });
  return new Response(stream, { headers: lines });
}

async function load(
  context: Context,
  id: string,
  data: FormData,
  onProgress: (p: ImportProgress) => void,
): Promise<Outcome<ImportDone | null>> {
  const batch = await findBatch(context.db, id);
  if (!batch) return refuse({ code: "unknown-import", found: id });
  const opened = await batchFile(context.db, batch, formTextOrNull(data, "sheet"));
  if (!opened.ok) return opened;
  const { table } = opened.value;
  const instrumentId = formTextOrNull(data, "instrumentId");
  const { mapping: base } = await startingMapping(context.db, batch, opened.value);
  const mapping = mappingOfForm(data, table, base);
  if (!mapping.ok) return mapping;
  const saved = await saveMappingWorkflow(context, { batchId: id, mapping: mapping.value, instrumentId });
  if (!saved.ok || data.get("intent") === "look") return saved;
  return importReadingsWorkflow(context, { batchId: id, mapping: mapping.value, instrumentId }, onProgress);
}

const refuse = (...problems: Problem[]): { ok: false; problems: Problem[] } => ({ ok: false, problems });
