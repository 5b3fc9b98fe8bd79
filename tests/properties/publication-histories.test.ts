import fc from "fast-check";
import { expect, it } from "vitest";
import type { Person } from "@/lib/access/permissions.ts";
import type { Context } from "@/lib/platform/context.ts";
import { sha256 } from "@/lib/platform/sha256.ts";
import { approvalDigest } from "@/lib/publication/approval.ts";
import { canonicalJson } from "@/lib/publication/canonical-json.ts";
import { snapshotSchema } from "@/lib/publication/snapshot.ts";
import { verifyLog } from "@/lib/publication/verify-log.ts";
import { publicationChain } from "@/lib/store/published.ts";
import { reviewsOf } from "@/lib/store/reviews.ts";
import { noTies } from "@/lib/wording/review.ts";
import { claimItemWorkflow, releaseItemWorkflow } from "@/lib/workflows/claim-item.ts";
import { commentItemWorkflow } from "@/lib/workflows/comment-item.ts";
import { editItemWorkflow } from "@/lib/workflows/create-item.ts";
import { publishItemWorkflow } from "@/lib/workflows/publish-item.ts";
import { askRetestWorkflow, callOffRetestWorkflow, handInRetestWorkflow } from "@/lib/workflows/retest-item.ts";
import { reviewItemWorkflow, submitItemWorkflow } from "@/lib/workflows/review-item.ts";
import { restoreReadingWorkflow, setReadingAsideWorkflow } from "@/lib/workflows/set-reading-aside.ts";
import { setTermsWorkflow } from "@/lib/workflows/set-terms.ts";
import { dropRevisionWorkflow, startRevisionWorkflow } from "@/lib/workflows/start-revision.ts";
import { mugWords } from "../support/bench-item.ts";
import { type Desk, desk, digestOf } from "../support/review-desk.ts";

/** Who takes a step: mostly somebody whose work it is, else anybody; any of them may try anything. */
const who = fc.constantFrom("by-trade", "by-trade", "by-trade", "tester", "reviewer", "second", "owner", "other");
const trade = (what: string, which: number): string => {
  if (/^(claim|approve|send-back|release|ask|call)/.test(what)) return which % 2 === 0 ? "reviewer" : "second";
  return what === "hand-in" ? "other" : what.startsWith("terms") ? "owner" : "tester";
};
const step = fc.record({
  who,
  what: fc.constantFrom(
    "submit",
    "claim",
    "approve",
    "approve",
    "approve-something-older",
    "send-back",
    "release",
    "publish",
    "publish",
    "publish-as-another-kind",
    "edit",
    "set-aside",
    "restore",
    "photo",
    "start-correction",
    "start-update",
    "start-withdrawal",
    "drop",
    "remark",
    "ask-retest",
    "call-off",
    "hand-in",
    "terms-0",
    "terms-1",
    "terms-2",
  ),
  which: fc.nat(3),
});
type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

type Seen = { digests: string[]; needed: number };

async function take(all: Desk, { who: name, what, which }: Step, seen: Seen): Promise<{ ok: boolean }> {
  const as = all[(name === "by-trade" ? trade(what, which) : name) as "tester"] as Context & { person: Person };
  const { itemId, db } = all;
  const decide = async (decision: "approved" | "sent-back", shownDigest: string) =>
    reviewItemWorkflow(as, { itemId, decision, shownDigest, note: "Looked at every row of it." });
  const digestNow = async () => {
    const digest = await digestOf(db, itemId, as.clock());
    seen.digests.push(digest);
    return digest;
  };
  const readingIds = [all.readings[which]!.id];
  switch (what) {
    case "submit":
      return submitItemWorkflow(as, { itemId, interests: noTies });
    case "claim":
      return claimItemWorkflow(as, { itemId, interests: noTies });
    case "approve":
      return decide("approved", await digestNow());
    case "approve-something-older":
      return decide("approved", seen.digests[which % Math.max(1, seen.digests.length)] ?? "0".repeat(64));
    case "send-back":
      return decide("sent-back", await digestNow());
    case "release":
      return releaseItemWorkflow(as, itemId);
    case "publish":
      return publishItemWorkflow(as, { itemId });
    case "publish-as-another-kind":
      return publishItemWorkflow(as, { itemId, kind: "correction", reason: `A reason given late, ${which}.` });
    case "edit":
      return editItemWorkflow(as, itemId, { ...mugWords, marks: `a crown and ${which}` });
    case "set-aside":
      return setReadingAsideWorkflow(as, { readingIds, reason: "missed the spot" });
    case "restore":
      return restoreReadingWorkflow(as, readingIds);
    case "photo": {
      const photo = { itemId, fileKey: `${which}.webp`, alt: "the mug", width: 4, height: 3, sha256: "0".repeat(64) };
      await db.photo.create({ data: photo });
      return { ok: true };
    }
    case "start-correction":
    case "start-update":
    case "start-withdrawal": {
      const kind = what.slice("start-".length) as "correction" | "update" | "withdrawal";
      return startRevisionWorkflow(as, { itemId, kind, reason: `Reason number ${which} in words.` });
    }
    case "drop":
      return dropRevisionWorkflow(as, itemId);
    case "remark":
      return commentItemWorkflow(as, { itemId, text: "Why?" });
    case "ask-retest":
      return askRetestWorkflow(as, { itemId, componentId: all.partId, element: "Pb", testerId: all.other.person.id });
    case "call-off":
    case "hand-in": {
      const open = await db.retest.findFirst({ where: { state: "asked" } });
      const id = open?.id ?? "none";
      return what === "call-off" ? callOffRetestWorkflow(as, id) : handInRetestWorkflow(as, id);
    }
    default: {
      const approvalsNeeded = Number(what.slice("terms-".length)) as 0 | 1 | 2;
      const set = await setTermsWorkflow(as, {
        licence: "CC-BY-4.0",
        contact: null,
        rightOfReply: "",
        approvalsNeeded,
      });
      if (set.ok) seen.needed = approvalsNeeded;
      return set;
    }
  }
}

/** What must hold of a publication at the moment it is made. */
async function holds(all: Desk, seen: Seen): Promise<void> {
  const chain = await publicationChain(all.db);
  const { json } = chain.at(-1)!;
  const snapshot = snapshotSchema.parse(JSON.parse(json));
  const reviews = await reviewsOf(all.db, all.itemId);
  const digest = approvalDigest(snapshot, sha256);
  const approvals = new Set(
    reviews.filter((r) => r.decision === "approved" && r.inputsDigest === digest).map((r) => r.reviewerId),
  );
  expect(snapshot.review.reviewed).toBe(approvals.size > 0);
  expect(snapshot.review.inputsDigest).toBe(approvals.size > 0 ? digest : null);
  // Five people are there, so that nothing goes unreviewed but where the owner asks for no review.
  expect(approvals.size).toBeGreaterThanOrEqual(seen.needed);
  // Nobody approved what they took, made or handed in.
  const item = await all.db.item.findUniqueOrThrow({ where: { id: all.itemId } });
  const authors = new Set([item.createdById, all.tester.person.id]);
  for (const reviewer of approvals) expect(authors.has(reviewer)).toBe(false);
  expect(canonicalJson(JSON.parse(json))).toBe(json);
}

it("whatever people try in whatever order, no page is published without the approvals its terms ask for, bound to its digest", async () => {
  const counts = { tried: 0, done: 0, published: 0, unreviewed: 0 };
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 10, maxLength: 30 }), fc.boolean(), async (steps, headStart) => {
      const all = await desk();
      const seen: Seen = { digests: [], needed: 1 };
      // Half of the histories begin with a published page, so that revisions are reached often.
      const start: Step[] = headStart
        ? [
            { who: "tester", what: "submit", which: 0 },
            { who: "reviewer", what: "claim", which: 0 },
            { who: "reviewer", what: "approve", which: 0 },
            { who: "tester", what: "publish", which: 0 },
          ]
        : [];
      let published = 0;
      for (const each of [...start, ...steps]) {
        counts.tried += 1;
        const outcome = await take(all, each, seen);
        if (!outcome.ok) continue;
        counts.done += 1;
        const now = await all.db.publication.count();
        if (now > published) {
          published = now;
          counts.published += 1;
          await holds(all, seen);
        }
      }
      const chain = await publicationChain(all.db);
      const snapshots = new Map(chain.map(({ entry, json }) => [entry.seq, json]));
      const faults = verifyLog({ entries: chain.map((c) => c.entry), snapshot: (seq) => snapshots.get(seq) }, sha256);
      expect(faults).toEqual([]);
      counts.unreviewed += chain.filter(({ json }) => !JSON.parse(json).review.reviewed).length;
      await all.db.$disconnect();
    }),
    { numRuns: Number(process.env["HISTORIES"] ?? 20), endOnFailure: true },
  );
  console.info(`histories: ${JSON.stringify(counts)}`);
  // The steps reach what the property is about.
  expect(counts.published).toBeGreaterThan(10);
}, 600_000);
