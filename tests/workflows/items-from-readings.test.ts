import { expect, it } from "vitest";
import { findItem, listItems } from "@/lib/store/items.ts";
import { countReadings, elementsMeasured, listReadings, readingGroups } from "@/lib/store/readings.ts";
import { itemsFromReadingsWorkflow, undoItemsWorkflow } from "@/lib/workflows/items-from-readings.ts";
import { loadReadings, must } from "../support/bench-item.ts";
import { imported } from "../support/small-file.ts";
import { contextAs } from "../support/test-context.ts";

const shared = { by: "sample" as const, batchId: null, howGot: "given", whoPaid: "nobody" };
const row = (group: string, item: string, part: string) => ({
  ...{ group, item, part },
  ...{ category: "mug-or-cup" as const, material: "glaze" as const, form: "coating" as const },
});

it("one item of two samples, each at the spots its file names; undone, the readings wait again", async () => {
  const context = await contextAs("tester");
  await imported(context);
  const rows = [row("mug glaze", "Blue mug", "glaze"), row("mug foot", "blue  mug", "foot")];
  const made = must(await itemsFromReadingsWorkflow(context, { ...shared, rows }));
  expect(made).toMatchObject({ items: [{ name: "Blue mug", slug: "blue-mug" }], parts: 2, readings: 6 });
  const item = await findItem(context.db, made.items[0]?.id ?? "");
  const [glaze] = item?.specimens[0]?.components ?? [];
  const readings = await listReadings(context.db, { componentId: glaze?.id ?? "" });
  expect(readings.map((r) => r.spot)).toEqual(["a", "a", "b", "c"]);
  expect(await countReadings(context.db, { unassigned: true })).toBe(0);
  must(
    await undoItemsWorkflow(
      context,
      made.items.map((i) => i.id),
    ),
  );
  expect(await listItems(context.db)).toEqual([]);
  expect(await countReadings(context.db, { unassigned: true })).toBe(6);
});

it("all or nothing, and why not", async () => {
  const context = await contextAs("tester");
  await imported(context);
  const refusal = async (...rows: ReturnType<typeof row>[]) => {
    const outcome = await itemsFromReadingsWorkflow(context, { ...shared, rows });
    return outcome.ok ? [] : outcome.problems.map((p) => p.code);
  };
  expect(await refusal(row("mug glaze", "Mug", "glaze"), row("mug foot", "Mug", "Glaze"))).toEqual([
    "part-named-twice",
  ]);
  expect(
    await refusal(row("mug glaze", "Mug", "a"), { ...row("mug foot", "Mug", "b"), category: "toy" as never }),
  ).toEqual(["item-of-two-kinds"]);
  expect(await refusal(row("mug glaze", "Mug", "a"), row("kettle", "Kettle", "a"))).toEqual(["group-without-readings"]);
  expect(await listItems(context.db)).toEqual([]);
});

it("an item with a photo is not taken back", async () => {
  const context = await contextAs("tester");
  await imported(context);
  const made = must(await itemsFromReadingsWorkflow(context, { ...shared, rows: [row("mug glaze", "Mug", "glaze")] }));
  const itemId = made.items[0]?.id ?? "";
  await context.db.photo.create({ data: { itemId, fileKey: "k", alt: "a mug", width: 1, height: 1, sha256: "x" } });
  expect(await undoItemsWorkflow(context, [itemId])).toMatchObject({ problems: [{ code: "item-in-use" }] });
});

it("readings are found by state, note, element, date and file, and grouped by what was written", async () => {
  const context = await contextAs("tester");
  const first = await loadReadings(context);
  await imported(context);
  const count = (filter: Parameters<typeof countReadings>[1]) => countReadings(context.db, filter);
  expect(await count({ state: "unassigned" })).toBe(11);
  expect(await count({ state: "assigned" })).toBe(0);
  expect(await count({ from: "2026-05-01" })).toBe(5);
  expect(await count({ to: "2026-05-01" })).toBe(6);
  expect(await count({ batchId: first[0]?.batchId ?? "", text: "cup" })).toBe(1);
  const elements = await elementsMeasured(context.db);
  expect([...elements.keys()].sort()).toEqual(["Cd", "Pb"]);
  expect(await count({ inColumns: elements.get("Pb") ?? [] })).toBe(11);
  expect(await count({ note: null })).toBe(11);
  expect((await readingGroups(context.db, { state: "unassigned" }, "sample")).map((g) => [g.text, g.count])).toEqual([
    ["mug", 4],
    ["mug glaze", 4],
    ["cup", 1],
    ["mug foot", 2],
  ]);
});
