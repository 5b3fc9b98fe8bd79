import { describe, expect, it } from "vitest";
import { findItem } from "@/lib/store/items.ts";
import { assignmentsOf } from "@/lib/store/readings.ts";
import {
  addComponentWorkflow,
  addSpecimenWorkflow,
  componentInput,
  editComponentWorkflow,
  editSpecimenWorkflow,
  moveWorkflow,
  specimenInput,
} from "@/lib/workflows/describe-specimen.ts";
import { putBackWorkflow, removeObjectWorkflow, removePartWorkflow } from "@/lib/workflows/remove-from-item.ts";
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

  it("a part taken away sets its readings free; put back, all is as it was", async () => {
    const context = await contextAs("tester");
    const { itemId, partId, readings } = await benchItem(context);
    const ids = readings.map((r) => r.id);
    const before = await assignmentsOf(context.db, ids);
    const spots = await context.db.spot.findMany();
    const removed = must(await removePartWorkflow(context, partId));
    expect((await findItem(context.db, itemId))?.specimens[0]?.components).toEqual([]);
    expect((await assignmentsOf(context.db, ids)).every((a) => a.componentId === null)).toBe(true);
    must(await putBackWorkflow(context, removed));
    expect(await assignmentsOf(context.db, ids)).toEqual(before);
    expect(await context.db.spot.findMany()).toEqual(spots);
    expect(await putBackWorkflow(context, removed)).toMatchObject({ problems: [{ code: "is-back-already" }] });
    expect(await removePartWorkflow(context, "none")).toMatchObject({ problems: [{ code: "unknown-part" }] });
  });

  it("an object goes with its parts, and comes back with them", async () => {
    const context = await contextAs("tester");
    const { itemId, specimenId } = await benchItem(context);
    const before = await findItem(context.db, itemId);
    const removed = must(await removeObjectWorkflow(context, specimenId));
    expect((await findItem(context.db, itemId))?.specimens).toEqual([]);
    must(await putBackWorkflow(context, removed));
    expect(await findItem(context.db, itemId)).toEqual(before);
  });

  it("what stands in a published page stays", async () => {
    const context = await contextAs("owner");
    const { itemId, slug, partId, specimenId } = await benchItem(context);
    await context.db.publication.create({
      data: {
        ...{
          itemId,
          slug,
          revision: 1,
          kind: "first",
          publishedAt: "2026-05-04T10:00:00Z",
          publishedById: context.person.id,
        },
        ...{ snapshot: JSON.stringify({ specimens: [{ id: specimenId, parts: [{ id: partId }] }] }), seq: 1 },
        ...{ snapshotSha256: "a".repeat(64), previousHash: "0".repeat(64), hash: "b".repeat(64) },
      },
    });
    const stays = { ok: false, problems: [{ code: "stands-in-publication", found: "1" }] };
    expect(await removePartWorkflow(context, partId)).toMatchObject(stays);
    expect(await removeObjectWorkflow(context, specimenId)).toMatchObject(stays);
  });

  it("words of objects and parts change, and their order", async () => {
    const context = await contextAs("tester");
    const { itemId, specimenId, partId } = await benchItem(context);
    const foot = { name: "foot", material: "ceramic-body", form: "bulk" } as const;
    const added = must(await addComponentWorkflow(context, specimenId, foot));
    must(
      await editComponentWorkflow(context, partId, {
        name: "glaze, outside",
        material: "glaze",
        form: "coating",
        thicknessMm: 0.2,
      }),
    );
    must(await editSpecimenWorkflow(context, specimenId, { label: "mug A", howGot: "given", whoPaid: "nobody" }));
    const names = async () => (await findItem(context.db, itemId))?.specimens[0]?.components.map((c) => c.name);
    expect(await names()).toEqual(["glaze, outside", "foot"]);
    must(await moveWorkflow(context, { componentId: added.id }, "up"));
    expect(await names()).toEqual(["foot", "glaze, outside"]);
    must(await moveWorkflow(context, { componentId: added.id }, "up"));
    expect(await names()).toEqual(["foot", "glaze, outside"]);
    must(await moveWorkflow(context, { specimenId }, "down"));
    expect((await findItem(context.db, itemId))?.specimens[0]).toMatchObject({ label: "mug A" });
    expect(await moveWorkflow(context, { specimenId: "none" }, "down")).toMatchObject({
      problems: [{ code: "unknown-specimen" }],
    });
  });
});
