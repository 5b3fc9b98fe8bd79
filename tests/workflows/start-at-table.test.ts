import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { findItem } from "@/lib/store/items.ts";
import { startAtTableWorkflow } from "@/lib/workflows/start-at-table.ts";
import { must } from "../support/bench-item.ts";
import { contextAs, person } from "../support/test-context.ts";

const written = (sendId: string) => ({
  sendId,
  item: {
    name: "Jug with a crown",
    category: "mug-or-cup" as const,
    ageGroup: "adult" as const,
    foodContact: true,
    mouthable: false,
    marks: "",
  },
  object: { label: "jug 1", howGot: "given", whoPaid: "nobody" },
  part: { name: "glaze", material: "glaze" as const, form: "coating" as const },
});

describe("startAtTableWorkflow", () => {
  it("makes item, object and part, and the same answer when it is sent again", async () => {
    const context = await contextAs("tester");
    const sendId = randomUUID();
    const first = must(await startAtTableWorkflow(context, written(sendId)));
    expect(await findItem(context.db, first.itemId)).toMatchObject({
      name: "Jug with a crown",
      slug: "jug-with-a-crown",
      state: "draft",
      specimens: [{ label: "jug 1", components: [{ id: first.partId, name: "glaze", form: "coating" }] }],
    });
    // Sent again, even with other words: what was made stands.
    const again = { ...written(sendId), part: { ...written(sendId).part, name: "rim" } };
    expect(must(await startAtTableWorkflow(context, again))).toEqual(first);
    expect(await context.db.item.count()).toBe(1);
    expect(await context.db.component.count()).toBe(1);
  });

  it("makes another item for another sheet of the same name", async () => {
    const context = await contextAs("tester");
    must(await startAtTableWorkflow(context, written(randomUUID())));
    const other = must(await startAtTableWorkflow(context, written(randomUUID())));
    expect((await findItem(context.db, other.itemId))?.slug).toBe("jug-with-a-crown-2");
  });

  it("refuses a sheet that another person sent, and a reviewer", async () => {
    const context = await contextAs("tester");
    const sendId = randomUUID();
    must(await startAtTableWorkflow(context, written(sendId)));
    const owner = { ...context, person: await person(context.db, "owner") };
    expect(await startAtTableWorkflow(owner, written(sendId))).toMatchObject({
      ok: false,
      problems: [{ code: "sent-by-another" }],
    });
    const reviewer = { ...context, person: await person(context.db, "reviewer") };
    expect((await startAtTableWorkflow(reviewer, written(randomUUID()))).ok).toBe(false);
    expect(await context.db.item.count()).toBe(1);
  });
});
