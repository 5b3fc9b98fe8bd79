import type { Context } from "@/lib/platform/context.ts";
import type { Outcome } from "@/lib/quantity/problem.ts";
import { answerQuestions } from "@/lib/readings/answer-questions.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { batchTable } from "@/lib/store/batch-table.ts";
import { listReadings, type StoredReading } from "@/lib/store/readings.ts";
import { assignReadingsWorkflow } from "@/lib/workflows/assign-readings.ts";
import { createItemWorkflow, type ItemInput } from "@/lib/workflows/create-item.ts";
import { addComponentWorkflow, addSpecimenWorkflow } from "@/lib/workflows/describe-specimen.ts";
import { importReadingsWorkflow } from "@/lib/workflows/import-readings.ts";
import { receiveFileWorkflow } from "@/lib/workflows/receive-file.ts";

export function must<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(JSON.stringify(outcome.problems));
}

/** Invented for the tests: two spots of a glaze, read twice each, and one reading of another cup. */
export const readingsFile = `Reading No,Sample,Spot,Time,Seconds,Pb (ppm),Pb 2σ,Cd (ppm),Cd 2σ
1,mug,a,2026-05-02 10:00:00+02:00,40,412,36,<12,
2,mug,a,2026-05-02 10:02:00+02:00,40,405,35,<12,
3,mug,b,2026-05-02 10:04:00+02:00,40,398,35,<11,
4,mug,b,2026-05-02 10:06:00+02:00,40,420,37,<13,
5,cup,a,2026-05-02 10:08:00+02:00,40,18,6,<12,
`;

export const mugWords: ItemInput = {
  name: "Mug for the tests",
  category: "mug-or-cup",
  ageGroup: "adult",
  foodContact: true,
};

/** Loads a file as a tester would and answers what it asks. */
export async function loadReadings(context: Context, text: string = readingsFile): Promise<StoredReading[]> {
  const bytes = new TextEncoder().encode(text);
  const { batch } = must(await receiveFileWorkflow(context, { name: "tests.csv", bytes }));
  const table = must(await batchTable(context.db, batch));
  const mapping = must(
    answerQuestions(proposeMapping(table).mapping, { quantity: "bulk-mass-fraction", decimal: "point" }),
  );
  must(await importReadingsWorkflow(context, { batchId: batch.id, mapping, instrumentId: null }));
  return listReadings(context.db, { batchId: batch.id });
}

export type BenchItem = { itemId: string; slug: string; specimenId: string; partId: string; readings: StoredReading[] };

/** A mug with one part and its four readings on it, all by the workflows that people use. */
export async function benchItem(context: Context): Promise<BenchItem> {
  const readings = (await loadReadings(context)).filter((r) => r.sample === "mug");
  const item = must(await createItemWorkflow(context, mugWords));
  const specimenId = must(
    await addSpecimenWorkflow(context, item.id, { label: "mug 1", howGot: "given", whoPaid: "nobody" }),
  );
  const part = must(
    await addComponentWorkflow(context, specimenId, { name: "glaze, inside", material: "glaze", form: "coating" }),
  );
  const assign = { readingIds: readings.map((r) => r.id), componentId: part.id, spot: { how: "as-written" as const } };
  must(await assignReadingsWorkflow(context, assign));
  return { itemId: item.id, slug: item.slug, specimenId, partId: part.id, readings };
}
