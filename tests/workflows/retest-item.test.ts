import { expect, it } from "vitest";
import type { Context } from "@/lib/platform/context.ts";
import { actsOnItem } from "@/lib/store/audit.ts";
import type { Database } from "@/lib/store/database.ts";
import { itemDraft } from "@/lib/store/item-draft.ts";
import { countReadings, listReadings, readingsOfComponents } from "@/lib/store/readings.ts";
import { openRetestsFor, retestsOf } from "@/lib/store/retests.ts";
import { assignReadingsWorkflow } from "@/lib/workflows/assign-readings.ts";
import { commentItemWorkflow } from "@/lib/workflows/comment-item.ts";
import { publishItemWorkflow } from "@/lib/workflows/publish-item.ts";
import { askRetestWorkflow, callOffRetestWorkflow, handInRetestWorkflow } from "@/lib/workflows/retest-item.ts";
import { loadReadings, must, readingsFile } from "../support/bench-item.ts";
import { codeOf, type Desk, desk, submit } from "../support/review-desk.ts";

const secondFile = readingsFile
  .replace("412,36", "388,36")
  .replace("405,35", "395,35")
  .replaceAll("2026-05-02", "2026-05-03");

async function asked() {
  const all = await desk();
  await submit(all.tester, all.itemId);
  const { itemId, partId, reviewer, other } = all;
  const ask = { itemId, componentId: partId, element: "Pb", testerId: other.person.id };
  return { ...all, ask, retestId: must(await askRetestWorkflow(reviewer, ask)) };
}

/** The second tester loads their own file and puts it on the same part. */
async function measureAgain(as: Context, partId: string) {
  const own = (await loadReadings(as, secondFile)).filter((r) => r.sample === "mug");
  const spot = { how: "as-written" } as const;
  must(await assignReadingsWorkflow(as, { readingIds: own.map((r) => r.id), componentId: partId, spot }));
  return own;
}

const draftFor = async (db: Database, itemId: string, viewerId: string | null, now: Date) =>
  (await itemDraft(db, itemId, { now, viewerId }))!;

/** All that the server would make of the item for this person, as one text. */
async function seenBy({ db, itemId, tester }: Desk, viewerId: string): Promise<string> {
  const { record, assessed, snapshot } = await draftFor(db, itemId, viewerId, tester.clock());
  return JSON.stringify({ readings: record.readings, assessed, snapshot, open: await openRetestsFor(db, viewerId) });
}

it("the second tester sees nothing of the first value until theirs is handed in", async () => {
  const all = await asked();
  const { db, itemId, partId, other, tester, retestId, readings } = all;
  const first = (await retestsOf(db, { itemId }))[0]!.first;
  const everyReading = readings.flatMap((r) => [
    r.id,
    ...r.results.flatMap((one) => (one.value ? [`"${one.value.text}"`] : [])),
  ]);
  const seen = await seenBy(all, other.person.id);
  for (const told of [...everyReading, String(first.value), first.inputsDigest]) expect(seen).not.toContain(told);
  // Their own readings and what follows from them they see; the item's own result stays as it was.
  const before = await draftFor(db, itemId, null, tester.clock());
  const own = await measureAgain(other, partId);
  const mine = await draftFor(db, itemId, other.person.id, tester.clock());
  expect(mine.record.readings.map((r) => r.id).sort()).toEqual(own.map((r) => r.id).sort());
  expect(mine.blind).toBe(true);
  const after = await draftFor(db, itemId, null, tester.clock());
  expect(after.digest).toBe(before.digest);
  expect(await seenBy(all, other.person.id)).not.toContain(first.inputsDigest);
  must(await handInRetestWorkflow(other, retestId));
  expect(await seenBy(all, other.person.id)).toContain(readings[0]!.id);
});

it("lists of readings leave the first shots out for the re-tester alone, and nothing else", async () => {
  const { db, other, tester, readings, partId } = await asked();
  const listed = async (viewerId: string | null) => (await listReadings(db, { viewerId })).map((r) => r.id);
  const all = await listed(tester.person.id);
  expect(all).toHaveLength(5);
  expect(await listed(null)).toEqual(all);
  const onPart = new Set(readings.map((r) => r.id));
  expect(await listed(other.person.id)).toEqual(all.filter((id) => !onPart.has(id)));
  const own = await measureAgain(other, partId);
  expect(await listReadings(db, { viewerId: other.person.id, componentId: partId })).toHaveLength(own.length);
  expect(await countReadings(db, { viewerId: other.person.id })).toBe(1 + 5);
});

it("a laboratory's value of the item is kept from the re-tester as well", async () => {
  const { db, itemId, specimenId, other, tester } = await asked();
  await db.otherTest.create({
    data: {
      ...{ specimenId, kind: "laboratory", element: "Pb", valueText: "405", value: 405, unit: "mg/kg" },
      createdById: tester.person.id,
    },
  });
  const told = async (viewerId: string | null) =>
    JSON.stringify((await draftFor(db, itemId, viewerId, tester.clock())).snapshot);
  expect(await told(null)).toContain("405");
  expect(await told(other.person.id)).not.toContain("405");
});

it("is refused to and from whoever knows the value", async () => {
  const { ask, reviewer, tester, owner, second, db, itemId } = await asked();
  await db.retest.updateMany({ data: { state: "called-off" } });
  expect(codeOf(await askRetestWorkflow(tester, ask))).toBe("not-allowed");
  expect(codeOf(await askRetestWorkflow(reviewer, { ...ask, testerId: tester.person.id }))).toBe("knows-first-value");
  expect(codeOf(await askRetestWorkflow(owner, { ...ask, testerId: owner.person.id }))).toBe("knows-first-value");
  expect(codeOf(await askRetestWorkflow(reviewer, { ...ask, testerId: second.person.id }))).toBe("not-a-tester");
  expect(codeOf(await askRetestWorkflow(reviewer, { ...ask, element: "Xx" }))).toBe("nothing-to-retest");
  expect(codeOf(await askRetestWorkflow(reviewer, { ...ask, itemId: "none" }))).toBe("unknown-item");
  must(await askRetestWorkflow(reviewer, ask));
  expect(codeOf(await askRetestWorkflow(reviewer, ask))).toBe("retest-open");
  expect((await retestsOf(db, { itemId })).map((r) => r.state).sort()).toEqual(["asked", "called-off"]);
});

it("whoever re-tests neither remarks nor publishes, and nobody publishes meanwhile", async () => {
  const { itemId, other, tester, reviewer, db, retestId } = await asked();
  expect(codeOf(await commentItemWorkflow(other, { itemId, text: "What is it?" }))).toBe("blind-retest");
  expect(codeOf(await publishItemWorkflow(other, { itemId }))).toBe("blind-retest");
  await db.registry.create({ data: { id: 1, name: "Shelf", approvalsNeeded: 0 } });
  expect(codeOf(await publishItemWorkflow(tester, { itemId }))).toBe("retest-open");
  must(await callOffRetestWorkflow(reviewer, retestId));
  must(await publishItemWorkflow(tester, { itemId }));
  expect(codeOf(await handInRetestWorkflow(other, retestId))).toBe("retest-closed");
});

it("handed in, both values stand, and the readings are combined by the method", async () => {
  const { itemId, partId, other, tester, db, retestId, owner } = await asked();
  expect(codeOf(await handInRetestWorkflow(other, retestId))).toBe("retest-without-readings");
  const own = await measureAgain(other, partId);
  expect(codeOf(await handInRetestWorkflow(owner, retestId))).toBe("unknown-retest");
  must(await handInRetestWorkflow(other, retestId));
  const [retest] = await retestsOf(db, { itemId });
  expect(retest).toMatchObject({
    state: "done",
    first: { counts: { readings: 4 } },
    second: { counts: { readings: 4 } },
  });
  expect(retest!.second!.value).toBeLessThan(retest!.first.value!);
  const combined = await draftFor(db, itemId, null, tester.clock());
  const lead = combined.snapshot.specimens[0]!.parts[0]!.results.find((r) => r.element === "Pb")!;
  expect(lead.counts.readings).toBe(8);
  expect(lead.value).toBeGreaterThan(retest!.second!.value!);
  expect(lead.value).toBeLessThan(retest!.first.value!);
  expect(combined.snapshot.testers.map((t) => t.name)).toEqual(["Otto", "tester"]);
  const marked = await db.reading.findMany({ where: { retestId }, select: { id: true } });
  expect(marked.map((r) => r.id).sort()).toEqual(own.map((r) => r.id).sort());
  expect(await readingsOfComponents(db, [partId])).toHaveLength(8);
  expect((await actsOnItem(db, itemId)).map((act) => [act.action, act.actorName]).slice(0, 3)).toEqual([
    ["hand-in-retest", "Otto"],
    ["assign-readings", "Otto"],
    ["ask-retest", "Ritva"],
  ]);
});
