import { describe, expect, it } from "vitest";
import { findItem } from "@/lib/store/items.ts";
import { latestPublished } from "@/lib/store/published.ts";
import { saveTerms } from "@/lib/store/registry.ts";
import { commentsOf, reviewsOf } from "@/lib/store/reviews.ts";
import { noTies } from "@/lib/wording/review.ts";
import { claimItemWorkflow, releaseItemWorkflow } from "@/lib/workflows/claim-item.ts";
import { commentItemWorkflow, settleCommentWorkflow } from "@/lib/workflows/comment-item.ts";
import { editItemWorkflow } from "@/lib/workflows/create-item.ts";
import { publishItemWorkflow } from "@/lib/workflows/publish-item.ts";
import { reviewItemWorkflow, submitItemWorkflow } from "@/lib/workflows/review-item.ts";
import { setReadingAsideWorkflow } from "@/lib/workflows/set-reading-aside.ts";
import { benchItem, mugWords, must } from "../support/bench-item.ts";
import { approve, claim, codeOf, desk, digestOf, submit } from "../support/review-desk.ts";
import { contextAs } from "../support/test-context.ts";

async function submitted() {
  const all = await desk();
  await submit(all.tester, all.itemId);
  return { ...all, shownDigest: await digestOf(all.db, all.itemId) };
}
type Submitted = Awaited<ReturnType<typeof submitted>>;
const stateOf = async ({ db, itemId }: Submitted) => (await findItem(db, itemId))?.state;
const terms = { licence: "CC-BY-4.0", contact: null, rightOfReply: "" };

describe("deciding on an item", () => {
  it("approves what was shown; the page then names the reviewer and states both sides' ties", async () => {
    const all = await submitted();
    const { itemId, slug, tester, reviewer, shownDigest } = all;
    await claim(reviewer, itemId);
    expect(must(await reviewItemWorkflow(reviewer, { itemId, decision: "approved", shownDigest }))).toBe("approved");
    expect(await stateOf(all)).toBe("approved");
    must(await publishItemWorkflow(tester, { itemId }));
    const published = await latestPublished(slug, tester.db);
    expect(published?.snapshot.review).toMatchObject({
      reviewed: true,
      reviewers: ["Ritva"],
      inputsDigest: shownDigest,
      interests: [{ name: "Ritva", statement: noTies }],
    });
    expect(published?.snapshot.interests).toBe(noTies);
  });

  it.each(["sent-back", "more-shots"] as const)("%s goes with a note, and not without one", async (decision) => {
    const all = await submitted();
    const { itemId, reviewer, shownDigest } = all;
    await claim(reviewer, itemId);
    const back = { itemId, decision, shownDigest };
    expect(await reviewItemWorkflow(reviewer, { ...back, note: "no" })).toMatchObject({
      ok: false,
      problems: [{ code: "note-missing", where: { field: "note" } }],
    });
    expect(await stateOf(all)).toBe("submitted");
    must(await reviewItemWorkflow(reviewer, { ...back, note: "Spot b needs a third reading." }));
    expect(await stateOf(all)).toBe("draft");
    expect(await reviewsOf(reviewer.db, itemId)).toMatchObject([{ decision, reviewerName: "Ritva" }]);
  });

  it("refuses whoever loaded a reading, made the item or handed it in, the owner too", async () => {
    const owner = await contextAs("owner");
    const { itemId } = await benchItem(owner);
    await submit(owner, itemId);
    expect(codeOf(await claimItemWorkflow(owner, { itemId, interests: noTies }))).toBe("own-readings");
    const shownDigest = await digestOf(owner.db, itemId);
    const decided = await reviewItemWorkflow(owner, { itemId, decision: "approved", shownDigest });
    expect(codeOf(decided)).toBe("own-readings");
    expect(await reviewsOf(owner.db, itemId)).toEqual([]);
  });

  it("refuses whoever only handed it in, and whoever operated the analyser", async () => {
    const { itemId, tester, owner, second, db, readings } = await desk();
    await submit(owner, itemId);
    expect(codeOf(await claimItemWorkflow(owner, { itemId, interests: noTies }))).toBe("own-readings");
    const instrument = await db.instrument.create({ data: { name: "A", kind: "XRF", serial: "A-1" } });
    const session = await db.session.create({
      data: { instrumentId: instrument.id, operatorId: second.person.id, timeZone: "UTC", startedAt: "2026-05-02" },
    });
    await db.reading.update({ where: { id: readings[0]!.id }, data: { sessionId: session.id } });
    expect(codeOf(await claimItemWorkflow(second, { itemId, interests: noTies }))).toBe("own-readings");
    expect(codeOf(await claimItemWorkflow(tester, { itemId, interests: noTies }))).toBe("not-allowed");
  });

  it.each(["reading", "word", "photo"])("refuses what has changed since it was shown: a %s", async (change) => {
    const all = await submitted();
    const { itemId, tester, reviewer, readings, shownDigest, db } = all;
    await claim(reviewer, itemId);
    if (change === "reading")
      must(await setReadingAsideWorkflow(tester, { readingIds: [readings[0]!.id], reason: "missed the spot" }));
    else if (change === "word") must(await editItemWorkflow(tester, itemId, { ...mugWords, marks: "a crown" }));
    else
      await db.photo.create({
        data: { itemId, fileKey: "a.webp", alt: "the mug", width: 4, height: 3, sha256: "0".repeat(64) },
      });
    const decided = await reviewItemWorkflow(reviewer, { itemId, decision: "approved", shownDigest });
    expect(codeOf(decided)).toBe("stale-draft");
    expect(await stateOf(all)).toBe("submitted");
  });

  it("takes only what waits for a review, and submits only what has readings and does not wait", async () => {
    const { itemId, tester, reviewer, db } = await desk();
    const shownDigest = await digestOf(db, itemId);
    const early = await reviewItemWorkflow(reviewer, { itemId, decision: "approved", shownDigest });
    expect(codeOf(early)).toBe("not-submitted");
    const interests = noTies;
    expect(codeOf(await submitItemWorkflow(tester, { itemId: "none", interests }))).toBe("unknown-item");
    expect(codeOf(await submitItemWorkflow(reviewer, { itemId, interests }))).toBe("not-allowed");
    await submit(tester, itemId);
    expect(codeOf(await submitItemWorkflow(tester, { itemId, interests }))).toBe("already-submitted");
  });
});

describe("taking an item up", () => {
  it("is for one reviewer at a time, and the second is told who has it", async () => {
    const { itemId, reviewer, second, shownDigest } = await submitted();
    // Both at the same moment: one has it, the other is told.
    const both = await Promise.all(
      [reviewer, second].map((as) => claimItemWorkflow(as, { itemId, interests: noTies })),
    );
    expect(both.filter((each) => each.ok)).toHaveLength(1);
    const lost = both[0]!.ok ? second : reviewer;
    const holder = both[0]!.ok ? reviewer : second;
    expect(both.find((each) => !each.ok)).toMatchObject({
      problems: [{ code: "claimed-by-another", found: holder.person.name }],
    });
    const decided = await reviewItemWorkflow(lost, { itemId, decision: "approved", shownDigest });
    expect(codeOf(decided)).toBe("claimed-by-another");
    expect(codeOf(await releaseItemWorkflow(lost, itemId))).toBe("claimed-by-another");
    must(await releaseItemWorkflow(holder, itemId));
    expect(codeOf(await reviewItemWorkflow(lost, { itemId, decision: "approved", shownDigest }))).toBe("not-claimed");
    await claim(lost, itemId);
  });

  it("the owner gives back what somebody who is away has taken up", async () => {
    const { itemId, reviewer, owner, second } = await submitted();
    await claim(reviewer, itemId);
    must(await releaseItemWorkflow(owner, itemId));
    await claim(second, itemId);
  });
});

describe("publishing", () => {
  it("needs an approval, and says so", async () => {
    const { itemId, tester } = await submitted();
    expect(codeOf(await publishItemWorkflow(tester, { itemId }))).toBe("needs-approval");
  });

  it("needs a new one once the draft has moved", async () => {
    const { itemId, tester, reviewer, readings } = await submitted();
    await approve(reviewer, itemId);
    must(await setReadingAsideWorkflow(tester, { readingIds: [readings[0]!.id], reason: "missed the spot" }));
    expect(codeOf(await publishItemWorkflow(tester, { itemId }))).toBe("approval-outdated");
    await submit(tester, itemId);
    await approve(reviewer, itemId);
    must(await publishItemWorkflow(tester, { itemId }));
  });

  it("needs two people where the owner asks for two; one person's approval counts once", async () => {
    const all = await submitted();
    const { itemId, slug, tester, reviewer, second, shownDigest, db } = all;
    await saveTerms(db, { ...terms, approvalsNeeded: 2 });
    expect(await approve(reviewer, itemId)).toBe("submitted");
    expect(codeOf(await publishItemWorkflow(tester, { itemId }))).toBe("needs-approval");
    await claim(reviewer, itemId);
    const again = await reviewItemWorkflow(reviewer, { itemId, decision: "approved", shownDigest });
    expect(codeOf(again)).toBe("approved-before");
    must(await releaseItemWorkflow(reviewer, itemId));
    expect(await approve(second, itemId)).toBe("approved");
    must(await publishItemWorkflow(tester, { itemId }));
    expect((await latestPublished(slug, db))?.snapshot.review.reviewers).toEqual(["Ritva", "Sanna"]);
  });

  it("goes unreviewed where the owner asks for none, or nobody else is there; and the page says so", async () => {
    const all = await submitted();
    await saveTerms(all.db, { ...terms, approvalsNeeded: 0 });
    must(await publishItemWorkflow(all.tester, { itemId: all.itemId }));
    expect((await latestPublished(all.slug, all.db))?.snapshot.review.reviewed).toBe(false);
    const alone = await contextAs("owner");
    const { itemId, slug } = await benchItem(alone);
    must(await publishItemWorkflow(alone, { itemId }));
    expect((await latestPublished(slug, alone.db))?.snapshot.review.reviewed).toBe(false);
  });
});

describe("remarks", () => {
  it("are made on the item, a part, a figure or a row; answered; and settled by whoever made them", async () => {
    const { itemId, partId, readings, tester, reviewer, second, db } = await submitted();
    for (const about of ["item", `component:${partId}`, `value:${partId}:Pb`, `reading:${readings[0]!.id}`])
      must(await commentItemWorkflow(reviewer, { itemId, about, text: "Why is this?" }));
    for (const about of ["nowhere", "component:none", `value:${partId}:Xx`, "reading:none", "item:more"])
      expect(codeOf(await commentItemWorkflow(reviewer, { itemId, about, text: "?" }))).toBe("unknown-place");
    const [, , figure] = await commentsOf(db, itemId);
    const answer = must(await commentItemWorkflow(tester, { itemId, text: "It was cold.", replyToId: figure!.id }));
    // An answer to an answer hangs on the remark.
    must(await commentItemWorkflow(reviewer, { itemId, text: "I see.", replyToId: answer }));
    const all = await commentsOf(db, itemId);
    expect(all.filter((c) => c.replyToId === figure!.id).map((c) => [c.about, c.text])).toEqual([
      [`value:${partId}:Pb`, "It was cold."],
      [`value:${partId}:Pb`, "I see."],
    ]);
    expect(codeOf(await settleCommentWorkflow(second, figure!.id))).toBe("not-your-comment");
    expect(codeOf(await settleCommentWorkflow(reviewer, answer))).toBe("unknown-comment");
    must(await settleCommentWorkflow(reviewer, figure!.id));
    expect((await commentsOf(db, itemId)).find((c) => c.id === figure!.id)?.settledAt).not.toBeNull();
  });
});
