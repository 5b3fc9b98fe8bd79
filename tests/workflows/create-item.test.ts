import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { slugOf } from "@/lib/quantity/slug.ts";
import { findItem } from "@/lib/store/items.ts";
import { createItemWorkflow, editItemWorkflow } from "@/lib/workflows/create-item.ts";
import { mugWords, must } from "../support/bench-item.ts";
import { contextAs, fixedNow } from "../support/test-context.ts";

describe("createItemWorkflow", () => {
  it("makes a draft with an address of its name, and another address where that is taken", async () => {
    const context = await contextAs("tester");
    const first = must(await createItemWorkflow(context, { ...mugWords, name: "Blåer Becher, groß" }));
    const second = must(await createItemWorkflow(context, { ...mugWords, name: "Blåer Becher, groß" }));
    expect(first).toMatchObject({ slug: "blaer-becher-gross", state: "draft", createdById: context.person.id });
    expect(second.slug).toBe("blaer-becher-gross-2");
    expect(slugOf("ゆのみ")).toBe("item");
  });

  it("gives no item an address under /items that is a page of its own", async () => {
    const context = await contextAs("tester");
    const folder = join(import.meta.dirname, "..", "..", "app", "(catalogue)", "items");
    const pages = readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !/^[[_(]/.test(entry.name))
      .map(({ name }) => name);
    expect(pages).toContain("compare");
    for (const page of pages)
      expect(must(await createItemWorkflow(context, { ...mugWords, name: page })).slug).toBe(`${page}-2`);
  });

  it("takes a product code only with its right last digit", async () => {
    const context = await contextAs("tester");
    // A number of the range that shops give out themselves (20–29), so of no product; 3 makes the weighted sum 90 (GS1 General Specifications, 7.9).
    expect(must(await createItemWorkflow(context, { ...mugWords, gtin: "2012345678903" })).gtin).toContain(
      "2012345678903",
    );
    expect(await createItemWorkflow(context, { ...mugWords, gtin: "2012345678904" })).toMatchObject({
      ok: false,
      problems: [{ code: "gtin-check-digit", where: { field: "gtin" } }],
    });
    expect(await createItemWorkflow(context, { ...mugWords, gtin: "12ab" })).toMatchObject({
      ok: false,
      problems: [{ code: "gtin-not-a-code" }],
    });
    expect(await context.db.item.count()).toBe(1);
  });

  it("changes words and keeps the address", async () => {
    const context = await contextAs("tester");
    const item = must(await createItemWorkflow(context, mugWords));
    must(await editItemWorkflow(context, item.id, { ...mugWords, name: "Cup", aliases: ["beaker"] }));
    expect(await findItem(context.db, item.id)).toMatchObject({ name: "Cup", aliases: ["beaker"], slug: item.slug });
    expect(await editItemWorkflow(context, "nothing", mugWords)).toMatchObject({
      ok: false,
      problems: [{ code: "unknown-item" }],
    });
  });

  it("is refused to a reviewer, and to nobody", async () => {
    const context = await contextAs("reviewer");
    expect(await createItemWorkflow(context, mugWords)).toMatchObject({
      ok: false,
      problems: [{ code: "not-allowed" }],
    });
    const nobody = { db: context.db, person: null, clock: () => fixedNow };
    expect(await createItemWorkflow(nobody, mugWords)).toMatchObject({
      ok: false,
      problems: [{ code: "not-signed-in" }],
    });
    expect(await context.db.item.count()).toBe(0);
  });
});
