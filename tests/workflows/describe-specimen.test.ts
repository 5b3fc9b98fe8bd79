import { describe, expect, it } from "vitest";
import { findItem } from "@/lib/store/items.ts";
import { assignReadingsWorkflow } from "@/lib/workflows/assign-readings.ts";
import {
  addComponentWorkflow,
  addSpecimenWorkflow,
  componentInput,
  removeComponentWorkflow,
  specimenInput,
} from "@/lib/workflows/describe-specimen.ts";
import { benchItem, must } from "../support/bench-item.ts";
import { contextAs } from "../support/test-context.ts";

describe("objects and parts", () => {
  it("keep the order in which they were named", async () => {
    const context = await contextAs("tester");
    const { itemId, specimenId } = await benchItem(context);
    must(
      await addComponentWorkflow(context, specimenId, { name: "foot ring", material: "ceramic-body", form: "bulk" }),
    );
    must(await addSpecimenWorkflow(context, itemId, { label: "mug 2", howGot: "found", whoPaid: "nobody" }));
    const item = await findItem(context.db, itemId);
    expect(item?.specimens.map((s) => s.label)).toEqual(["mug 1", "mug 2"]);
    expect(item?.specimens[0]?.components.map((c) => c.name)).toEqual(["glaze, inside", "foot ring"]);
    expect(item?.specimens[0]?.components[1]).toMatchObject({ accessible: true, thicknessMm: null });
  });

  it("are refused where there is nothing to hang them on", async () => {
    const context = await contextAs("tester");
    const part = { name: "x", material: "glaze", form: "bulk" } as const;
    expect(await addComponentWorkflow(context, "none", part)).toMatchObject({
      ok: false,
      problems: [{ code: "unknown-specimen" }],
    });
    expect(await addSpecimenWorkflow(context, "none", { label: "x", howGot: "x", whoPaid: "x" })).toMatchObject({
      ok: false,
      problems: [{ code: "unknown-item" }],
    });
  });

  it("keep when they were made as far as it is known, and refuse what cannot be", async () => {
    const context = await contextAs("tester");
    const { itemId } = await benchItem(context);
    const object = { label: "mug 2", howGot: "found", whoPaid: "nobody", gotOn: "2020-05-01" };
    must(await addSpecimenWorkflow(context, itemId, { ...object, madeOn: "2010-05" }));
    expect((await findItem(context.db, itemId))?.specimens.map((s) => s.madeOn)).toEqual([null, "2010-05"]);
    for (const madeOn of ["about 1990", "2010-13", "2010-02-30"])
      expect(await addSpecimenWorkflow(context, itemId, { ...object, madeOn })).toMatchObject({
        ok: false,
        problems: [{ code: "made-on-unreadable", where: { field: "madeOn" }, found: madeOn }],
      });
    for (const gotOn of ["2020-05-01", null])
      expect(await addSpecimenWorkflow(context, itemId, { ...object, gotOn, madeOn: "2038" })).toMatchObject({
        ok: false,
        problems: [{ code: "made-after-got", found: "2038" }],
      });
  });

  it("say how they were got and who paid; sizes are above zero", () => {
    expect(specimenInput.safeParse({ label: "mug", howGot: "", whoPaid: "us" }).success).toBe(false);
    const part = { name: "x", material: "glaze", form: "bulk" };
    expect(componentInput.safeParse({ ...part, thicknessMm: 0 }).success).toBe(false);
    expect(componentInput.safeParse({ ...part, material: "cheese" }).success).toBe(false);
    expect(componentInput.safeParse({ ...part, massG: 12.5 }).success).toBe(true);
  });

  it("a part goes only when no reading is on it", async () => {
    const context = await contextAs("tester");
    const { itemId, partId, readings } = await benchItem(context);
    expect(await removeComponentWorkflow(context, partId)).toMatchObject({
      ok: false,
      problems: [{ code: "part-has-readings", found: "4" }],
    });
    const readingIds = readings.map((r) => r.id);
    must(await assignReadingsWorkflow(context, { readingIds, componentId: null, spot: { how: "as-written" } }));
    must(await removeComponentWorkflow(context, partId));
    expect((await findItem(context.db, itemId))?.specimens[0]?.components).toEqual([]);
    expect(await context.db.spot.count()).toBe(0);
    expect(await removeComponentWorkflow(context, partId)).toMatchObject({
      ok: false,
      problems: [{ code: "unknown-part" }],
    });
  });
});
