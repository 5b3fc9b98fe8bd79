import { expect, it } from "vitest";
import { mappingOfForm } from "@/app/bench/imports/[id]/mapping-form-values.ts";
import { mappingView, startingMapping } from "@/app/bench/imports/[id]/mapping-view.ts";
import { answerQuestions } from "@/lib/readings/answer-questions.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { batchFile } from "@/lib/store/batch-table.ts";
import { asideRows, findBatch, rawBytes, readColumns } from "@/lib/store/imports.ts";
import { countReadings, listReadings } from "@/lib/store/readings.ts";
import { importReadingsWorkflow } from "@/lib/workflows/import-readings.ts";
import { mendRowWorkflow } from "@/lib/workflows/mend-row.ts";
import { receiveFileWorkflow } from "@/lib/workflows/receive-file.ts";
import { redoImportWorkflow, undoImportWorkflow } from "@/lib/workflows/undo-import.ts";
import { xlsxFile } from "@/sample-data/workbook-files.ts";
import { must } from "../support/bench-item.ts";
import { bytesOf, imported, received, smallFile } from "../support/small-file.ts";
import { contextAs } from "../support/test-context.ts";

it("every row of the file is accounted for, and readings hold what was written", async () => {
  const context = await contextAs("tester");
  const batchId = await imported(context);
  const batch = await findBatch(context.db, batchId);
  expect(batch?.account).toEqual({ total: 9, accepted: 6, setAside: 1, blank: 1, header: 1 });
  const readings = await listReadings(context.db, { batchId });
  expect(readings.map((r) => r.row)).toEqual([2, 3, 4, 5, 6, 9]);
  const [first] = readings;
  expect(first?.results.find((r) => r.element === "Pb")).toMatchObject({
    value: { text: "412", value: 412 },
    error: { text: "18" },
    k: 2,
    unit: "ppm",
  });
  expect(first?.results.find((r) => r.element === "Cd")).toMatchObject({
    belowDetection: true,
    detectionLimit: { value: 9 },
    value: null,
  });
  expect(first?.takenAt).toBe("2026-04-30T10:00:00+02:00");
});

it("keeps the file byte for byte and knows it again", async () => {
  const context = await contextAs("tester");
  const batchId = await imported(context);
  const batch = await findBatch(context.db, batchId);
  expect(Buffer.from(await rawBytes(context.db, batch?.rawFileId ?? ""))).toEqual(Buffer.from(bytesOf(smallFile)));
  const again = must(await receiveFileWorkflow(context, { name: "renamed.csv", bytes: bytesOf(smallFile) }));
  expect(again).toMatchObject({ known: true, batch: { id: batchId } });
});

it("a raw file can be neither changed nor deleted", async () => {
  const context = await contextAs("tester");
  await imported(context);
  await expect(context.db.rawFile.updateMany({ data: { name: "other" } })).rejects.toThrow();
  await expect(context.db.rawFile.deleteMany()).rejects.toThrow();
});

it("a reading that stands in another file is kept, but set aside with where it stands", async () => {
  const context = await contextAs("tester");
  await imported(context);
  const more = `${smallFile}\n8,mug foot,d,2026-04-30T10:07:00+02:00,<5,,<8,`;
  const { batchId, mapping } = await received(context, more, "exported-again.csv");
  const done = must(await importReadingsWorkflow(context, { batchId, mapping, instrumentId: null }));
  expect(done).toMatchObject({ readings: 7, repeated: 6 });
  const fresh = (await listReadings(context.db, { batchId })).filter((r) => r.setAside === null);
  expect(fresh.map((r) => r.number)).toEqual(["8"]);
  const [repeat] = await listReadings(context.db, { batchId });
  expect(repeat?.setAside?.reason).toBe("The same reading stands in small.csv, row 2.");
});

it("a row set aside is mended in place, and what is still wrong is named", async () => {
  const context = await contextAs("tester");
  const batchId = await imported(context);
  const [row] = await asideRows(context.db, batchId);
  expect(row).toMatchObject({ row: 8, problems: [{ column: "Pb (ppm)", found: "twelve" }] });
  const cells = row?.cells ?? [];
  const wrong = await mendRowWorkflow(context, { batchId, rowId: row?.id ?? "", cells });
  expect(wrong).toMatchObject({
    ok: false,
    problems: [{ where: { file: "small.csv", row: 8, column: "Pb (ppm)" }, found: "twelve" }],
  });
  const mended = cells.map((cell) => (cell === "twelve" ? "12" : cell));
  expect(must(await mendRowWorkflow(context, { batchId, rowId: row?.id ?? "", cells: mended }))).toBe(8);
  expect((await findBatch(context.db, batchId))?.account).toEqual({
    total: 9,
    accepted: 7,
    setAside: 0,
    blank: 1,
    header: 1,
  });
  const twice = await mendRowWorkflow(context, { batchId, rowId: row?.id ?? "", cells: mended });
  expect(twice).toMatchObject({ ok: false, problems: [{ code: "row-already-mended" }] });
});

it("an import is taken back and brought back", async () => {
  const context = await contextAs("tester");
  const batchId = await imported(context);
  expect(must(await undoImportWorkflow(context, batchId))).toBe("undone");
  expect(await listReadings(context.db, { batchId })).toEqual([]);
  expect(must(await redoImportWorkflow(context, batchId))).toBe("imported");
  expect(await listReadings(context.db, { batchId })).toHaveLength(6);
});

it("a question that is open stops the import, and nothing is written", async () => {
  const context = await contextAs("tester");
  const { batchId, mapping } = await received(context);
  const open = { ...mapping, elements: mapping.elements.map((e) => ({ ...e, k: null })) };
  const outcome = await importReadingsWorkflow(context, { batchId, mapping: open, instrumentId: null });
  expect(outcome).toMatchObject({ ok: false, problems: [{ code: "ask-k", where: { file: "small.csv" } }] });
  expect((await findBatch(context.db, batchId))?.state).toBe("uploaded");
  expect(await readColumns(context.db, batchId)).toBe("[]");
});

it("an instrument is asked what its errors cover once", async () => {
  const context = await contextAs("tester");
  const instrument = await context.db.instrument.create({ data: { name: "A", kind: "XRF", serial: "A-1" } });
  const { batchId, mapping } = await received(context);
  must(await importReadingsWorkflow(context, { batchId, mapping, instrumentId: instrument.id }));
  expect((await context.db.instrument.findUniqueOrThrow({ where: { id: instrument.id } })).errorK).toBe(2);
});

it("a reviewer loads nothing", async () => {
  const reviewer = await contextAs("reviewer");
  expect(await receiveFileWorkflow(reviewer, { name: "x.csv", bytes: bytesOf(smallFile) })).toMatchObject({
    ok: false,
    problems: [{ code: "not-allowed" }],
  });
});

it("a file over 50 MB is refused with both sizes, and nothing is kept", async () => {
  const context = await contextAs("tester");
  const outcome = await receiveFileWorkflow(context, { name: "big.csv", bytes: new Uint8Array(60_000_000) });
  expect(outcome).toMatchObject({
    ok: false,
    problems: [{ code: "too-large", found: "60.0 MB", allowed: "50.0 MB", where: { file: "big.csv" } }],
  });
  expect(await context.db.rawFile.count()).toBe(0);
});

it("a workbook: the sheet chosen is the one loaded, read again for a row to mend, and its rows are the sheet's own", async () => {
  const context = await contextAs("tester");
  const sheet = (name: string, value: string) => ({
    name,
    rows: [
      ["Made for the tests"],
      ["No", "Sample", "Pb (ppm)", "Pb err"],
      [1, "mug", value, 2],
      [2, "mug", "twelve", 2],
    ],
  });
  const bytes = xlsxFile([sheet("Monday", "12.50"), sheet("Tuesday", "99.0")]);
  const { batch } = must(await receiveFileWorkflow(context, { name: "week.xlsx", bytes }));
  const opened = must(await batchFile(context.db, batch, "Tuesday"));
  const said = answerQuestions(proposeMapping(opened.table).mapping, {
    k: 2,
    quantity: "bulk-mass-fraction",
    timeZone: "UTC",
  });
  const mapping = { ...must(said), sheet: opened.sheet };
  must(await importReadingsWorkflow(context, { batchId: batch.id, mapping, instrumentId: null }));
  const [reading] = await listReadings(context.db, { batchId: batch.id });
  expect(reading).toMatchObject({ row: 3, results: [{ value: { text: "99.0" } }] });
  expect(Buffer.from(await rawBytes(context.db, batch.rawFileId))).toEqual(Buffer.from(bytes));
  const [aside] = await asideRows(context.db, batch.id);
  expect(aside).toMatchObject({ row: 4, cells: ["2", "mug", "twelve", "2"] });
  must(await mendRowWorkflow(context, { batchId: batch.id, rowId: aside?.id ?? "", cells: ["2", "mug", "12", "2"] }));
  expect(await countReadings(context.db, { batchId: batch.id })).toBe(2);
});

it("a second file with the same header starts from what was said of the first: its form need not ask again", async () => {
  const context = await contextAs("tester");
  await imported(context);
  const { batch } = must(
    await receiveFileWorkflow(context, { name: "second.csv", bytes: bytesOf(smallFile.replaceAll("412", "413")) }),
  );
  const file = must(await batchFile(context.db, batch));
  const view = await mappingView(context.db, batch, file);
  expect(view).toMatchObject({ source: "remembered", questions: [] });
  // The form of such a screen holds the columns and no answers, since nothing was asked.
  const form = new FormData();
  for (const [at, { use, element, unit }] of view.uses.entries()) {
    form.set(`use-${at}`, use);
    form.set(`element-${at}`, element ?? "");
    form.set(`unit-${at}`, unit ?? "");
  }
  const { mapping: base } = await startingMapping(context.db, batch, file);
  const mapping = must(mappingOfForm(form, file.table, base));
  const done = must(await importReadingsWorkflow(context, { batchId: batch.id, mapping, instrumentId: null }));
  expect(done.readings).toBe(6);
});
