import { describe, expect, it } from "vitest";
import { sha256 } from "@/lib/platform/sha256.ts";
import { assessItem } from "@/lib/publication/assess-item.ts";
import type { Database } from "@/lib/store/database.ts";
import { readingsByIds } from "@/lib/store/readings.ts";
import { workingItem } from "@/lib/store/working-item.ts";
import {
  putAsideBackWorkflow,
  restoreReadingWorkflow,
  setReadingAsideWorkflow,
} from "@/lib/workflows/set-reading-aside.ts";
import { benchItem, must } from "../support/bench-item.ts";
import { contextAs, fixedNow, person } from "../support/test-context.ts";

async function assessed(db: Database, itemId: string) {
  const working = await workingItem(db, itemId, "2026-05-04");
  const { specimens, inputsDigest } = assessItem(working!.assess, sha256);
  const lead = specimens[0]?.parts[0]?.results.find((r) => r.reconciled.element === "Pb");
  return { lead: lead!.reconciled, inputsDigest };
}

describe("setReadingAsideWorkflow", () => {
  it("leaves the reading in sight, out of the value, and shows the value with it", async () => {
    const context = await contextAs("tester");
    const { itemId, readings } = await benchItem(context);
    const before = await assessed(context.db, itemId);
    const input = { readingIds: [readings[0]!.id], reason: "the window lay half on the rim" };
    expect(must(await setReadingAsideWorkflow(context, input))).toMatchObject({ count: 1 });
    const after = await assessed(context.db, itemId);
    expect(after.lead.counts).toMatchObject({ readings: 4, used: 3, setAside: 1 });
    expect(after.lead.flags).toContain("excluded-readings");
    expect(after.lead.withSetAside?.value).toBeCloseTo(before.lead.value!, 9);
    expect(after.inputsDigest).not.toBe(before.inputsDigest);
    const row = await context.db.reading.findUniqueOrThrow({ where: { id: readings[0]!.id } });
    expect(row).toMatchObject({ asideReason: input.reason, asideById: context.person.id, asideAt: fixedNow });
  });

  it("is taken back whole: the result and its digest are as before", async () => {
    const context = await contextAs("tester");
    const { itemId, readings } = await benchItem(context);
    const before = await assessed(context.db, itemId);
    const readingIds = [readings[0]!.id, readings[3]!.id];
    must(await setReadingAsideWorkflow(context, { readingIds, reason: "both on a chip" }));
    must(await restoreReadingWorkflow(context, readingIds));
    expect(await assessed(context.db, itemId)).toEqual(before);
  });

  it("wants a reason that says something, and a reading that is there", async () => {
    const context = await contextAs("tester");
    const { readings } = await benchItem(context);
    expect(await setReadingAsideWorkflow(context, { readingIds: [readings[0]!.id], reason: "  bad  " })).toMatchObject({
      ok: false,
      problems: [{ code: "reason-too-short", where: { field: "reason" } }],
    });
    expect(await setReadingAsideWorkflow(context, { readingIds: ["none"], reason: "long enough" })).toMatchObject({
      ok: false,
      problems: [{ code: "unknown-reading" }],
    });
    expect(await context.db.reading.count({ where: { asideReason: { not: null } } })).toBe(0);
  });

  it("is refused to a reviewer, both ways", async () => {
    const context = await contextAs("tester");
    const { readings } = await benchItem(context);
    const reviewer = { ...context, person: await person(context.db, "reviewer") };
    const readingIds = [readings[0]!.id];
    const no = { ok: false, problems: [{ code: "not-allowed" }] };
    expect(await setReadingAsideWorkflow(reviewer, { readingIds, reason: "long enough" })).toMatchObject(no);
    expect(await restoreReadingWorkflow(reviewer, readingIds)).toMatchObject(no);
  });

  it("is undone: each reading has again the reason it had, or none", async () => {
    const context = await contextAs("tester");
    const { readings } = await benchItem(context);
    const [first, second] = readings.map((r) => r.id) as [string, string];
    must(await setReadingAsideWorkflow(context, { readingIds: [first], reason: "beside the mug" }));
    const both = must(await setReadingAsideWorkflow(context, { readingIds: [first, second], reason: "both of them" }));
    must(await putAsideBackWorkflow(context, both.before));
    const reasons = (await readingsByIds(context.db, [first, second])).map((r) => r.setAside?.reason ?? null);
    expect(reasons).toEqual(["beside the mug", null]);
  });
});
