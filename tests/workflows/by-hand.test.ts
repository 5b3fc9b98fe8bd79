import { describe, expect, it } from "vitest";
import { type HandSettings, handColumns, readHandEntry } from "@/lib/readings/hand-entry.ts";
import { findBatch, rawBytes } from "@/lib/store/imports.ts";
import { listReadings } from "@/lib/store/readings.ts";
import { handFileName } from "@/lib/wording/bench.ts";
import { importReadingsWorkflow } from "@/lib/workflows/import-readings.ts";
import { receiveFileWorkflow } from "@/lib/workflows/receive-file.ts";
import { must } from "../support/bench-item.ts";
import { contextAs, fixedNow } from "../support/test-context.ts";

const settings: HandSettings = {
  date: "2026-05-03",
  timeZone: "Europe/Lisbon",
  unit: "ppm",
  quantity: "coating-mass-fraction",
  k: 2,
  decimal: "comma",
};

describe("readings written by hand", () => {
  it("take the way of every file: kept byte for byte, read as typed, marked as by hand", async () => {
    const context = await contextAs("tester");
    const rows = [
      { sample: "mug", spot: "a", "Pb value": "412,5", "Pb error": "36" },
      {},
      { sample: "mug", "Pb value": "<12" },
    ];
    const entry = must(readHandEntry(rows, handColumns(["Pb"]), settings, fixedNow.getTime()));
    const name = handFileName(fixedNow, "Europe/Lisbon");
    expect(name).toBe("by hand 2026-05-04 11-00.tsv");
    const bytes = new TextEncoder().encode(entry.text);
    const { batch } = must(await receiveFileWorkflow(context, { name, bytes, source: "hand" }));
    const input = { batchId: batch.id, mapping: entry.mapping, instrumentId: null };
    expect(must(await importReadingsWorkflow(context, input))).toMatchObject({
      readings: 2,
      account: { total: 3, accepted: 2, setAside: 0, blank: 0, header: 1 },
    });
    expect(await findBatch(context.db, batch.id)).toMatchObject({ source: "hand", state: "imported" });
    expect(new TextDecoder().decode(await rawBytes(context.db, batch.rawFileId))).toBe(entry.text);
    const readings = await listReadings(context.db, { batchId: batch.id });
    expect(readings).toMatchObject([
      { source: "hand", takenOn: "2026-05-03", results: [{ value: { text: "412,5", value: 412.5 }, k: 2 }] },
      { results: [{ belowDetection: true, detectionLimit: { value: 12 } }] },
    ]);
  });

  it("are recognised when the same sheet comes again", async () => {
    const context = await contextAs("tester");
    const rows = [{ sample: "mug", "Pb value": "412" }];
    const entry = must(readHandEntry(rows, handColumns(["Pb"]), settings, fixedNow.getTime()));
    const file = { name: "by hand.tsv", bytes: new TextEncoder().encode(entry.text), source: "hand" as const };
    const first = must(await receiveFileWorkflow(context, file));
    must(
      await importReadingsWorkflow(context, { batchId: first.batch.id, mapping: entry.mapping, instrumentId: null }),
    );
    expect(must(await receiveFileWorkflow(context, file))).toMatchObject({
      known: true,
      batch: { id: first.batch.id },
    });
    expect(
      await importReadingsWorkflow(context, { batchId: first.batch.id, mapping: entry.mapping, instrumentId: null }),
    ).toMatchObject({ ok: false, problems: [{ code: "already-imported" }] });
  });
});
