import { expect, it } from "vitest";
import { sha256 } from "@/lib/platform/sha256.ts";
import { hashLogEntry } from "@/lib/publication/log-entry.ts";
import { latestPublished, publicationChain, publishedRevision } from "@/lib/store/published.ts";
import { searchPublished } from "@/lib/store/search.ts";
import { publishItemWorkflow } from "@/lib/workflows/publish-item.ts";
import { setReadingAsideWorkflow } from "@/lib/workflows/set-reading-aside.ts";
import { undoImportWorkflow } from "@/lib/workflows/undo-import.ts";
import { benchItem, must } from "../support/bench-item.ts";
import { contextAs } from "../support/test-context.ts";

it("publishes revision 1: canonical text whose hash the log holds, found by search, marked as not reviewed", async () => {
  const context = await contextAs("tester");
  const { itemId, slug } = await benchItem(context);
  const entry = must(await publishItemWorkflow(context, { itemId }));
  expect(entry).toMatchObject({ seq: 1, slug, revision: 1, kind: "first", previousHash: "0".repeat(64) });
  const published = await latestPublished(slug, context.db);
  expect(sha256(published?.json ?? "")).toBe(entry.snapshotSha256);
  expect(hashLogEntry(entry, sha256)).toBe(entry.hash);
  expect(published?.snapshot.review.reviewed).toBe(false);
  expect(published?.snapshot.testedOn).toBe("2026-05-02");
  const lead = published?.snapshot.specimens[0]?.parts[0]?.results.find((r) => r.element === "Pb");
  expect(lead).toMatchObject({ state: "quantified", counts: { readings: 4, spots: 2 } });
  expect((await searchPublished({ q: "mug tes" }, context.db)).hits.map((h) => h.entry.slug)).toEqual([slug]);
  expect((await searchPublished({ q: "", element: "Pb" }, context.db)).total).toBe(1);
  expect((await searchPublished({ q: "teapot" }, context.db)).total).toBe(0);
});

it("an update needs a reason, chains to the one before, and leaves revision 1 as it was", async () => {
  const context = await contextAs("tester");
  const { itemId, slug, readings } = await benchItem(context);
  const first = must(await publishItemWorkflow(context, { itemId }));
  const before = await publishedRevision(slug, 1, context.db);
  must(await setReadingAsideWorkflow(context, { readingIds: [readings[0]?.id ?? ""], reason: "the nose slipped off" }));
  expect(await publishItemWorkflow(context, { itemId, kind: "correction" })).toMatchObject({
    ok: false,
    problems: [{ code: "reason-missing" }],
  });
  const second = must(
    await publishItemWorkflow(context, { itemId, kind: "correction", reason: "One shot missed the glaze." }),
  );
  expect(second).toMatchObject({ seq: 2, revision: 2, kind: "correction", previousHash: first.hash });
  expect((await publishedRevision(slug, 1, context.db))?.json).toBe(before?.json);
  expect(await publicationChain(context.db)).toHaveLength(2);
});

it("an import that a page stands on cannot be undone", async () => {
  const context = await contextAs("tester");
  const { itemId, slug, readings } = await benchItem(context);
  must(await publishItemWorkflow(context, { itemId }));
  const outcome = await undoImportWorkflow(context, readings[0]?.batchId ?? "");
  expect(outcome).toMatchObject({ ok: false, problems: [{ code: "import-published", found: `${slug}, revision 1` }] });
});

it("a clock set back puts no entry before the one it follows", async () => {
  const context = await contextAs("tester");
  const { itemId } = await benchItem(context);
  const first = must(await publishItemWorkflow(context, { itemId }));
  const earlier = { ...context, clock: () => new Date("2020-01-01T00:00:00Z") };
  const second = must(await publishItemWorkflow(earlier, { itemId, kind: "update", reason: "More of the same." }));
  expect(second.publishedAt).toBe(first.publishedAt);
});

it("a reviewer does not publish", async () => {
  const context = await contextAs("tester");
  const { itemId } = await benchItem(context);
  const reviewer = await contextAs("reviewer", context.db);
  expect(await publishItemWorkflow(reviewer, { itemId })).toMatchObject({
    ok: false,
    problems: [{ code: "not-allowed" }],
  });
});
