import { describe, expect, it } from "vitest";
import { listReadings, readingsOfComponents } from "@/lib/store/readings.ts";
import { workingItem } from "@/lib/store/working-item.ts";
import { assignReadingsWorkflow, restoreAssignmentsWorkflow } from "@/lib/workflows/assign-readings.ts";
import { undoImportWorkflow } from "@/lib/workflows/undo-import.ts";
import { benchItem, must } from "../support/bench-item.ts";
import { contextAs, person } from "../support/test-context.ts";

const spotsOf = async (db: Parameters<typeof readingsOfComponents>[0], partId: string) =>
  (await readingsOfComponents(db, [partId])).map((r) => r.spot);

describe("assignReadingsWorkflow", () => {
  it("puts readings on a part by the file's own spots, each spot once", async () => {
    const context = await contextAs("tester");
    const { partId } = await benchItem(context);
    expect(await spotsOf(context.db, partId)).toEqual(["a", "a", "b", "b"]);
    expect(await context.db.spot.count({ where: { componentId: partId } })).toBe(2);
    expect(await listReadings(context.db, { unassigned: true })).toMatchObject([{ sample: "cup" }]);
  });

  it("puts them at one named spot, or at none", async () => {
    const context = await contextAs("tester");
    const { partId, readings } = await benchItem(context);
    const readingIds = readings.map((r) => r.id);
    must(
      await assignReadingsWorkflow(context, { readingIds, componentId: partId, spot: { how: "one", label: "rim" } }),
    );
    expect(await spotsOf(context.db, partId)).toEqual(["rim", "rim", "rim", "rim"]);
    must(await assignReadingsWorkflow(context, { readingIds, componentId: partId, spot: { how: "each" } }));
    expect(await spotsOf(context.db, partId)).toEqual([null, null, null, null]);
  });

  it("is undone to exactly what was before", async () => {
    const context = await contextAs("tester");
    const { partId, readings } = await benchItem(context);
    const [first, second] = readings.map((r) => r.id);
    const readingIds = [first!, second!];
    const { before } = must(
      await assignReadingsWorkflow(context, { readingIds, componentId: null, spot: { how: "as-written" } }),
    );
    expect(await spotsOf(context.db, partId)).toEqual(["b", "b"]);
    must(await restoreAssignmentsWorkflow(context, before));
    expect(await spotsOf(context.db, partId)).toEqual(["a", "a", "b", "b"]);
  });

  it("takes all of them or none: an unknown reading, part, or an undone import stops it", async () => {
    const context = await contextAs("tester");
    const { partId, readings } = await benchItem(context);
    const ids = readings.map((r) => r.id);
    const spot = { how: "one", label: "rim" } as const;
    expect(
      await assignReadingsWorkflow(context, { readingIds: [...ids, "no-such"], componentId: partId, spot }),
    ).toMatchObject({ ok: false, problems: [{ code: "unknown-reading" }] });
    expect(await assignReadingsWorkflow(context, { readingIds: ids, componentId: "none", spot })).toMatchObject({
      ok: false,
      problems: [{ code: "unknown-part" }],
    });
    expect(await spotsOf(context.db, partId)).toEqual(["a", "a", "b", "b"]);
    must(await undoImportWorkflow(context, readings[0]!.batchId));
    expect(await assignReadingsWorkflow(context, { readingIds: ids, componentId: partId, spot })).toMatchObject({
      ok: false,
      problems: [{ code: "unknown-reading" }],
    });
  });

  it("names who loaded the readings, and the day of the last one", async () => {
    const context = await contextAs("tester");
    const { itemId } = await benchItem(context);
    const working = await workingItem(context.db, itemId, "2026-05-04");
    expect(working?.authors).toEqual([context.person.id]);
    expect(working?.assess.testDay).toBe("2026-05-02");
  });

  it("is refused to a reviewer", async () => {
    const context = await contextAs("tester");
    const { partId, readings } = await benchItem(context);
    const reviewer = { ...context, person: await person(context.db, "reviewer") };
    const input = { readingIds: [readings[0]!.id], componentId: null, spot: { how: "each" } } as const;
    expect(await assignReadingsWorkflow(reviewer, { ...input, readingIds: [...input.readingIds] })).toMatchObject({
      ok: false,
      problems: [{ code: "not-allowed" }],
    });
    expect(await spotsOf(context.db, partId)).toHaveLength(4);
  });
});
