import type { Context } from "@/lib/platform/context.ts";
import { answerQuestions } from "@/lib/readings/answer-questions.ts";
import type { Mapping } from "@/lib/readings/mapping.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { batchTable } from "@/lib/store/batch-table.ts";
import { importReadingsWorkflow } from "@/lib/workflows/import-readings.ts";
import { receiveFileWorkflow } from "@/lib/workflows/receive-file.ts";
import { must } from "./bench-item.ts";

/** Invented readings in a plain shape, enough to take a workflow through. One row is wrong on purpose. */
export const smallFile = [
  "No,Sample,Spot,Time,Pb (ppm),Pb err,Cd (ppm),Cd err",
  "1,mug glaze,a,2026-04-30T10:00:00+02:00,412,18,<9,",
  "2,mug glaze,a,2026-04-30T10:01:00+02:00,405,16,<9,",
  "3,mug glaze,b,2026-04-30T10:02:00+02:00,421,20,<8,",
  "4,mug glaze,c,2026-04-30T10:03:00+02:00,398,18,<9,",
  "5,mug foot,a,2026-04-30T10:04:00+02:00,<6,,<8,",
  ",,,,,,,",
  "6,mug foot,b,2026-04-30T10:05:00+02:00,twelve,3,<8,",
  "7,mug foot,c,2026-04-30T10:06:00+02:00,<7,,<8,",
].join("\n");

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Receives a file and answers its questions: a solid part, errors that cover two standard uncertainties. */
export async function received(
  context: Context,
  text: string = smallFile,
  name = "small.csv",
): Promise<{ batchId: string; mapping: Mapping }> {
  const { batch } = must(await receiveFileWorkflow(context, { name, bytes: bytesOf(text) }));
  const { mapping } = proposeMapping(must(await batchTable(context.db, batch)));
  return {
    batchId: batch.id,
    mapping: must(answerQuestions(mapping, { k: 2, quantity: "bulk-mass-fraction", timeZone: "UTC" })),
  };
}

export async function imported(context: Context, text: string = smallFile, name = "small.csv"): Promise<string> {
  const { batchId, mapping } = await received(context, text, name);
  must(await importReadingsWorkflow(context, { batchId, mapping, instrumentId: null }));
  return batchId;
}
