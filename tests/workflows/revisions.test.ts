import { expect, it } from "vitest";
import { findItem } from "@/lib/store/items.ts";
import { latestPublished, publishedRevision } from "@/lib/store/published.ts";
import { makerAnswersOf, startedRevision } from "@/lib/store/reviews.ts";
import { addMakerAnswerWorkflow } from "@/lib/workflows/add-maker-answer.ts";
import { publishItemWorkflow } from "@/lib/workflows/publish-item.ts";
import { setReadingAsideWorkflow } from "@/lib/workflows/set-reading-aside.ts";
import { setTermsWorkflow } from "@/lib/workflows/set-terms.ts";
import { dropRevisionWorkflow, startRevisionWorkflow } from "@/lib/workflows/start-revision.ts";
import { must } from "../support/bench-item.ts";
import { approve, codeOf, desk, submit } from "../support/review-desk.ts";

async function published() {
  const all = await desk();
  await submit(all.tester, all.itemId);
  await approve(all.reviewer, all.itemId);
  must(await publishItemWorkflow(all.tester, { itemId: all.itemId }));
  return all;
}

it("a correction goes with a reason, is reviewed, and keeps the older address", async () => {
  const { itemId, slug, db, tester, reviewer, readings } = await published();
  const start = { itemId, kind: "correction" } as const;
  for (const reason of [undefined, "", "   ", "oops"])
    expect(codeOf(await startRevisionWorkflow(tester, { ...start, ...(reason === undefined ? {} : { reason }) }))).toBe(
      "reason-missing",
    );
  expect(codeOf(await startRevisionWorkflow(reviewer, { ...start, reason: "One shot missed." }))).toBe("not-allowed");
  must(await startRevisionWorkflow(tester, { ...start, reason: "One shot missed the glaze." }));
  must(await setReadingAsideWorkflow(tester, { readingIds: [readings[0]!.id], reason: "missed the glaze" }));
  // The first approval was of the first revision.
  expect(codeOf(await publishItemWorkflow(tester, { itemId }))).toBe("approval-outdated");
  await submit(tester, itemId);
  expect(codeOf(await startRevisionWorkflow(tester, { ...start, reason: "Another reason." }))).toBe("in-review");
  await approve(reviewer, itemId);
  must(await publishItemWorkflow(tester, { itemId }));
  expect(await startedRevision(db, itemId)).toBeNull();
  expect((await latestPublished(slug, db))?.snapshot).toMatchObject({
    revision: 2,
    kind: "correction",
    reason: "One shot missed the glaze.",
    review: { reviewed: true },
  });
  expect((await publishedRevision(slug, 1, db))?.snapshot.kind).toBe("first");
});

it("an approval is for one reason: changed after it, it has to be given again", async () => {
  const { itemId, tester, reviewer } = await published();
  must(await startRevisionWorkflow(tester, { itemId, kind: "update", reason: "New readings came in." }));
  await submit(tester, itemId);
  await approve(reviewer, itemId);
  must(await startRevisionWorkflow(tester, { itemId, kind: "correction", reason: "It was wrong after all." }));
  expect(codeOf(await publishItemWorkflow(tester, { itemId }))).toBe("approval-outdated");
  // Nor does another kind slip in at the last moment.
  must(await startRevisionWorkflow(tester, { itemId, kind: "update", reason: "New readings came in." }));
  const other = { itemId, kind: "withdrawal", reason: "Gone at once, unseen." } as const;
  expect(codeOf(await publishItemWorkflow(tester, other))).toBe("approval-outdated");
  must(await publishItemWorkflow(tester, { itemId }));
});

it("a withdrawal keeps title, reason and hash, and drops every figure; it happens once", async () => {
  const { itemId, slug, db, tester, reviewer } = await published();
  must(await startRevisionWorkflow(tester, { itemId, kind: "withdrawal", reason: "The object was mixed up." }));
  await submit(tester, itemId);
  await approve(reviewer, itemId);
  const entry = must(await publishItemWorkflow(tester, { itemId }));
  expect(entry).toMatchObject({ revision: 2, kind: "withdrawal" });
  const page = await latestPublished(slug, db);
  expect(page?.snapshot).toMatchObject({
    item: { name: "Mug for the tests" },
    reason: "The object was mixed up.",
    specimens: [],
    files: [],
    review: { reviewed: true, reviewers: ["Ritva"] },
  });
  expect(page?.sha256).toMatch(/^[0-9a-f]{64}$/);
  expect((await findItem(db, itemId))?.state).toBe("withdrawn");
  const again = { itemId, kind: "withdrawal", reason: "Once more, please." } as const;
  expect(codeOf(await startRevisionWorkflow(tester, again))).toBe("already-withdrawn");
  // New readings can stand in its place.
  must(await startRevisionWorkflow(tester, { itemId, kind: "update", reason: "Measured again, the right one." }));
  await submit(tester, itemId);
  await approve(reviewer, itemId);
  expect(must(await publishItemWorkflow(tester, { itemId }))).toMatchObject({ revision: 3, kind: "update" });
});

it("what is not published is not corrected, and a started revision can be dropped", async () => {
  const { itemId, tester, db } = await desk();
  const start = { itemId, kind: "correction", reason: "It is wrong." } as const;
  expect(codeOf(await startRevisionWorkflow(tester, start))).toBe("not-published");
  const other = await published();
  must(await startRevisionWorkflow(other.tester, { ...start, itemId: other.itemId }));
  must(await dropRevisionWorkflow(other.tester, other.itemId));
  expect(await startedRevision(other.db, other.itemId)).toBeNull();
  expect(codeOf(await dropRevisionWorkflow(other.tester, other.itemId))).toBe("no-revision-started");
  expect((await findItem(db, itemId))?.state).toBe("draft");
});

it("a maker's answer stands beside the item, in full and dated, and changes nothing that was published", async () => {
  const { itemId, slug, db, owner, tester } = await published();
  const before = (await latestPublished(slug, db))?.sha256;
  const answer = { itemId, receivedOn: "2026-05-03", fromWhom: "The invented pottery", text: "We fire it at 1200 °C." };
  expect(codeOf(await addMakerAnswerWorkflow(tester, answer))).toBe("not-allowed");
  expect(codeOf(await addMakerAnswerWorkflow(owner, { ...answer, receivedOn: "2030-01-01" }))).toBe("date-ahead");
  must(await addMakerAnswerWorkflow(owner, answer));
  expect(await makerAnswersOf(db, slug)).toMatchObject([
    { receivedOn: "2026-05-03", fromWhom: "The invented pottery", text: "We fire it at 1200 °C." },
  ]);
  expect((await latestPublished(slug, db))?.sha256).toBe(before);
});

it("the owner sets the terms; pages keep those they were published under", async () => {
  const { slug, db, owner, tester } = await published();
  const terms = {
    licence: "CC0-1.0",
    contact: "shelf@example.org",
    rightOfReply: "Write to us.",
    approvalsNeeded: 2,
  } as const;
  expect(codeOf(await setTermsWorkflow(tester, terms))).toBe("not-allowed");
  await expect(setTermsWorkflow(owner, { ...terms, licence: "mine" })).rejects.toThrow();
  must(await setTermsWorkflow(owner, terms));
  expect(await db.registry.findUnique({ where: { id: 1 } })).toMatchObject(terms);
  expect((await latestPublished(slug, db))?.snapshot.registry.licence).toBe("CC-BY-4.0");
});
