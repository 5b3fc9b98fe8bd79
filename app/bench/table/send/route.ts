import { revalidatePath } from "next/cache";
import { z } from "zod";
import { orMachineProblem } from "@/app/bench/or-machine-problem.ts";
import { requestContext } from "@/lib/access/request-context.ts";
import { requirePermission } from "@/lib/access/require-permission.ts";
import { takeUploadTurn } from "@/lib/access/upload-turns.ts";
import type { Context } from "@/lib/platform/context.ts";
import { parseForm } from "@/lib/platform/form-values.ts";
import { paths } from "@/lib/platform/paths.ts";
import { done, type Outcome, type Problem, refused } from "@/lib/quantity/problem.ts";
import { handColumns, handSettings, readHandEntry } from "@/lib/readings/hand-entry.ts";
import { listReadings } from "@/lib/store/readings.ts";
import { handFileName } from "@/lib/wording/bench.ts";
import { problemSentences } from "@/lib/wording/problems.ts";
import { assignReadingsWorkflow } from "@/lib/workflows/assign-readings.ts";
import { importReadingsWorkflow } from "@/lib/workflows/import-readings.ts";
import { markSpotsWorkflow } from "@/lib/workflows/mark-spots.ts";
import { receiveFileWorkflow } from "@/lib/workflows/receive-file.ts";
import { startAtTableWorkflow, tableStartInput } from "@/lib/workflows/start-at-table.ts";

const share = z.number().min(0).max(1);
const stepInput = z.discriminatedUnion("step", [
  tableStartInput.extend({ step: z.literal("item") }),
  z.object({
    step: z.literal("spots"),
    partId: z.string().min(1),
    spots: z
      .array(z.object({ photoId: z.string().min(1), label: z.string().trim().min(1).max(60), x: share, y: share }))
      .min(1)
      .max(200),
  }),
  z.object({
    step: z.literal("readings"),
    partId: z.string().min(1),
    instrumentId: z.string().min(1).nullable(),
    settings: handSettings,
    elements: z.array(z.string().max(3)).min(1).max(40),
    show: z.object({ error: z.boolean(), limit: z.boolean() }),
    rows: z
      .array(z.record(z.string().max(40), z.string().max(200)))
      .min(1)
      .max(500),
  }),
]);
type Step = z.infer<typeof stepInput>;
type StepOf<S extends Step["step"]> = Extract<Step, { step: S }>;

/** Takes one step of a sheet written at the table. Any step may come twice: it answers the same and makes nothing twice. */
export const POST = (request: Request): Promise<Response> => orMachineProblem(() => take(request), refusal);

async function take(request: Request): Promise<Response> {
  const context = await requestContext();
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return refusal(403, permitted.problems);
  const tooMany = await takeUploadTurn(context);
  if (tooMany) return refusal(429, [tooMany]);
  const form = parseForm(stepInput, await request.json().catch(() => null));
  if (!form.ok) return refusal(400, form.problems);
  const outcome = await run(context, form.value);
  if (!outcome.ok) return refusal(422, outcome.problems);
  revalidatePath(paths.bench(), "layout");
  return Response.json(outcome.value);
}

const refusal = (status: number, problems: Problem[]): Response =>
  Response.json({ problems: problemSentences(problems) }, { status });

function run(context: Context, step: Step): Promise<Outcome<Record<string, string>>> {
  if (step.step === "item") return startAtTableWorkflow(context, step);
  return step.step === "spots" ? markAll(context, step) : takeReadings(context, step);
}

/** Spots are known by their names on the part, so marking them twice moves them to where they are. */
async function markAll(context: Context, { partId, spots }: StepOf<"spots">): Promise<Outcome<Record<string, string>>> {
  for (const photoId of new Set(spots.map((spot) => spot.photoId))) {
    const here = spots.filter((spot) => spot.photoId === photoId);
    const marked = await markSpotsWorkflow(context, {
      photoId,
      spots: here.map(({ label, x, y }) => ({ componentId: partId, label, x, y })),
    });
    if (!marked.ok) return marked;
  }
  return done({});
}

/**
 * Readings take the way of every file: kept byte for byte, read, put on their part by the spots they name. The file's own bytes
 * tell whether it came before, and each of the three goes on where an earlier sending stopped.
 */
async function takeReadings(
  context: Context,
  { partId, instrumentId, settings, elements, show, rows }: StepOf<"readings">,
): Promise<Outcome<Record<string, string>>> {
  const now = context.clock();
  const columns = handColumns(elements, { ...show, number: true });
  const entry = readHandEntry(rows, columns, settings, now.getTime());
  if (!entry.ok) return entry;
  const received = await receiveFileWorkflow(context, {
    name: handFileName(now, settings.timeZone ?? "UTC"),
    bytes: new TextEncoder().encode(entry.value.text),
    source: "hand",
  });
  if (!received.ok) return received;
  const { batch } = received.value;
  if (batch.state === "undone")
    return refused({ code: "already-imported", where: { file: batch.fileName }, found: "undone" });
  if (batch.state === "uploaded") {
    const { mapping } = entry.value;
    const imported = await importReadingsWorkflow(context, { batchId: batch.id, mapping, instrumentId });
    if (!imported.ok) return imported;
  }
  const waiting = (await listReadings(context.db, { batchId: batch.id, unassigned: true }, 500)).map((r) => r.id);
  if (waiting.length > 0) {
    const spot = { how: "as-written" } as const;
    const assigned = await assignReadingsWorkflow(context, { readingIds: waiting, componentId: partId, spot });
    if (!assigned.ok) return assigned;
  }
  return done({ batchId: batch.id });
}
