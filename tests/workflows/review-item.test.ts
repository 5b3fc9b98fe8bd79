import { describe, expect, it } from "vitest";
import { sha256 } from "@/lib/platform/sha256.ts";
import { assessItem } from "@/lib/publication/assess-item.ts";
import type { Database } from "@/lib/store/database.ts";
import { findItem } from "@/lib/store/items.ts";
import { reviewsOf } from "@/lib/store/publications.ts";
import { latestPublished } from "@/lib/store/published.ts";
import { workingItem } from "@/lib/store/working-item.ts";
import { editItemWorkflow } from "@/lib/workflows/create-item.ts";
import { publishItemWorkflow } from "@/lib/workflows/publish-item.ts";
import { reviewItemWorkflow, submitItemWorkflow } from "@/lib/workflows/review-item.ts";
import { setReadingAsideWorkflow } from "@/lib/workflows/set-reading-aside.ts";
import { benchItem, mugWords, must } from "../support/bench-item.ts";
import { contextAs, person } from "../support/test-context.ts";

const digestOf = async (db: Database, itemId: string): Promise<string> =>
  assessItem((await workingItem(db, itemId, "2026-05-04"))!.assess, sha256).inputsDigest;

async function submitted() {
  const tester = await contextAs("tester");
  const bench = await benchItem(tester);
  must(await submitItemWorkflow(tester, bench.itemId));
  const reviewer = { ...tester, person: await person(tester.db, "reviewer", "Ritva") };
  return { ...bench, tester, reviewer, shownDigest: await digestOf(tester.db, bench.itemId) };
}
const stateOf = async (db: Database, itemId: string) => (await findItem(db, itemId))?.state;

describe("reviewItemWorkflow", () => {
  it("approves what was shown, and the page then names the reviewer", async () => {
    const { itemId, slug, tester, reviewer, shownDigest } = await submitted();
    expect(must(await reviewItemWorkflow(reviewer, { itemId, decision: "approved", shownDigest }))).toBe("approved");
    expect(await stateOf(tester.db, itemId)).toBe("approved");
    must(await publishItemWorkflow(tester, { itemId }));
    const published = await latestPublished(slug, tester.db);
    expect(published?.snapshot.review).toMatchObject({
      reviewed: true,
      reviewers: ["Ritva"],
      inputsDigest: shownDigest,
    });
  });

  it("sends back with a note, and not without one", async () => {
    const { itemId, reviewer, shownDigest } = await submitted();
    const back = { itemId, decision: "sent-back", shownDigest } as const;
    expect(await reviewItemWorkflow(reviewer, { ...back, note: "no" })).toMatchObject({
      ok: false,
      problems: [{ code: "reason-missing", where: { field: "note" } }],
    });
    expect(await stateOf(reviewer.db, itemId)).toBe("submitted");
    must(await reviewItemWorkflow(reviewer, { ...back, note: "Spot b needs a third reading." }));
    expect(await stateOf(reviewer.db, itemId)).toBe("draft");
    expect(await reviewsOf(reviewer.db, itemId)).toMatchObject([{ decision: "sent-back", reviewerName: "Ritva" }]);
  });

  it("refuses an approval by whoever loaded a reading, the owner too", async () => {
    const owner = await contextAs("owner");
    const { itemId } = await benchItem(owner);
    must(await submitItemWorkflow(owner, itemId));
    const shownDigest = await digestOf(owner.db, itemId);
    expect(await reviewItemWorkflow(owner, { itemId, decision: "approved", shownDigest })).toMatchObject({
      ok: false,
      problems: [{ code: "own-readings" }],
    });
    expect(await reviewsOf(owner.db, itemId)).toEqual([]);
  });

  it("refuses a tester, who may read but not decide", async () => {
    const { itemId, tester, shownDigest } = await submitted();
    const other = { ...tester, person: await person(tester.db, "tester", "other") };
    expect(await reviewItemWorkflow(other, { itemId, decision: "approved", shownDigest })).toMatchObject({
      ok: false,
      problems: [{ code: "not-allowed" }],
    });
  });

  it("refuses what has changed since it was shown: a reading set aside, or a word", async () => {
    for (const change of ["reading", "word"]) {
      const { itemId, tester, reviewer, readings, shownDigest } = await submitted();
      if (change === "reading")
        must(await setReadingAsideWorkflow(tester, { readingIds: [readings[0]!.id], reason: "missed the spot" }));
      else must(await editItemWorkflow(tester, itemId, { ...mugWords, marks: "a crown" }));
      expect(await reviewItemWorkflow(reviewer, { itemId, decision: "approved", shownDigest })).toMatchObject({
        ok: false,
        problems: [{ code: "stale-draft" }],
      });
      expect(await stateOf(tester.db, itemId)).toBe("submitted");
    }
  });

  it("no longer counts once a reading is set aside after the approval", async () => {
    const { itemId, slug, tester, reviewer, readings, shownDigest } = await submitted();
    must(await reviewItemWorkflow(reviewer, { itemId, decision: "approved", shownDigest }));
    must(await setReadingAsideWorkflow(tester, { readingIds: [readings[0]!.id], reason: "missed the spot" }));
    must(await publishItemWorkflow(tester, { itemId }));
    expect((await latestPublished(slug, tester.db))?.snapshot.review.reviewed).toBe(false);
  });

  it("takes only what waits for a review, and submits only what has readings", async () => {
    const tester = await contextAs("tester");
    const { itemId } = await benchItem(tester);
    const reviewer = { ...tester, person: await person(tester.db, "reviewer") };
    const shownDigest = await digestOf(tester.db, itemId);
    expect(await reviewItemWorkflow(reviewer, { itemId, decision: "approved", shownDigest })).toMatchObject({
      ok: false,
      problems: [{ code: "not-submitted" }],
    });
    expect(await submitItemWorkflow(tester, "none")).toMatchObject({ ok: false, problems: [{ code: "unknown-item" }] });
    expect(await submitItemWorkflow(reviewer, itemId)).toMatchObject({
      ok: false,
      problems: [{ code: "not-allowed" }],
    });
  });
});
