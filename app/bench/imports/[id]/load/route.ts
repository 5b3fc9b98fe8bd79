import { requestContext } from "@/lib/access/request-context.ts";
import { requirePermission } from "@/lib/access/require-permission.ts";
import { formTextOrNull } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Outcome, Problem } from "@/lib/quantity/problem.ts";
import { batchFile } from "@/lib/store/batch-table.ts";
import { findBatch } from "@/lib/store/imports.ts";
import { problemSentences } from "@/lib/wording/problems.ts";
import { type ImportDone, type ImportProgress, importReadingsWorkflow } from "@/lib/workflows/import-readings.ts";
import { saveMappingWorkflow } from "@/lib/workflows/save-mapping.ts";
import { mappingOfForm } from "../mapping-form-values.ts";
import { startingMapping } from "../mapping-view.ts";

type Params = { params: Promise<{ id: string }> };

/**
 * Keeps what the form says of the columns and loads the readings. Scripted callers get a line of JSON for each step of
 * progress and a last one with the answer; a plain form is sent on to the import's page.
 */
export async function POST(request: Request, { params }: Params): Promise<Response> {
  const { id } = await params;
  const scripted = request.headers.get("accept")?.includes("application/x-ndjson") ?? false;
  const data = await request.formData();
  const work = (onProgress: (p: ImportProgress) => void) => load(id, data, onProgress);
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
        console.error("loading an import failed", error);
        line({ problems: problemSentences([{ code: "import-broke" }]) });
      }
      controller.close();
    },
  });
  return new Response(stream, { headers: { "content-type": "application/x-ndjson", "cache-control": "no-store" } });
}

async function load(
  id: string,
  data: FormData,
  onProgress: (p: ImportProgress) => void,
): Promise<Outcome<ImportDone | null>> {
  const context = await requestContext();
  const permitted = requirePermission(context.person, "import-readings");
  if (!permitted.ok) return permitted;
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
