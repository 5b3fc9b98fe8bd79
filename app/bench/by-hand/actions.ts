"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { requestContext } from "@/lib/access/request-context.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { Problem } from "@/lib/quantity/problem.ts";
import { elementsIn, handColumns, handSettings, readHandEntry } from "@/lib/readings/hand-entry.ts";
import { handFileName } from "@/lib/wording/bench.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { importReadingsWorkflow } from "@/lib/workflows/import-readings.ts";
import { receiveFileWorkflow } from "@/lib/workflows/receive-file.ts";

const sheet = z.object({
  instrumentId: z.string().min(1).nullable(),
  settings: handSettings,
  elements: z.array(z.string().max(3)).min(1).max(40),
  show: z.object({ error: z.boolean(), limit: z.boolean() }),
  rows: z.array(z.record(z.string().max(40), z.string().max(200))).max(2000),
});
export type Sheet = z.infer<typeof sheet>;

/** A trouble with the sheet: the sentence, and its line and column where it has them. */
export type SheetTrouble = { text: string; line?: number | undefined; column?: string | undefined };
export type SheetReply = { next: string } | { troubles: SheetTrouble[] };

const troublesOf = (problems: readonly Problem[]): SheetReply => ({
  troubles: problems.map((p) => ({ text: problemSentence(p), line: p.where?.row, column: p.where?.column })),
});

/** A sheet becomes a file of its own and takes the way that every file takes: kept byte for byte, mapped, read, written whole or not at all. */
export async function saveSheet(input: unknown): Promise<SheetReply> {
  const parsed = sheet.safeParse(input);
  if (!parsed.success)
    return troublesOf(
      parsed.error.issues.map((issue) => ({
        code: "invalid-form",
        where: { field: issue.path.map(String).join(" ") },
      })),
    );
  const { instrumentId, settings, elements, show, rows } = parsed.data;
  const context = await requestContext();
  const now = context.clock();
  const columns = handColumns(elementsIn(elements.join(" ")).elements, show);
  // Checked whole before anything is kept: what cannot be taken is mended in the sheet, not in a stored file.
  const entry = readHandEntry(rows, columns, settings, now.getTime());
  if (!entry.ok) return troublesOf(entry.problems);
  const received = await receiveFileWorkflow(context, {
    name: handFileName(now, settings.timeZone ?? "UTC"),
    bytes: new TextEncoder().encode(entry.value.text),
    source: "hand",
  });
  if (!received.ok) return troublesOf(received.problems);
  const batchId = received.value.batch.id;
  const imported = await importReadingsWorkflow(context, { batchId, mapping: entry.value.mapping, instrumentId });
  if (!imported.ok) return troublesOf(imported.problems);
  revalidatePath(paths.bench(), "layout");
  return { next: `${paths.benchReadings()}?file=${encodeURIComponent(batchId)}` };
}
