import { z } from "zod";
import type { ReviewGiven } from "../publication/approval.ts";
import type { Db } from "./database.ts";

/** Claims, decisions, remarks and started revisions of the review desk. */
export const reviewDecisions = ["approved", "sent-back", "more-shots"] as const;
export type ReviewDecision = (typeof reviewDecisions)[number];
export type ReviewRecord = ReviewGiven & { id: string; note: string };

export async function addReview(
  tx: Db,
  input: {
    itemId: string;
    reviewerId: string;
    decision: ReviewDecision;
    note: string;
    interests: string;
    inputsDigest: string;
    at: Date;
  },
): Promise<string> {
  const { at, ...review } = input;
  return (await tx.review.create({ data: { ...review, createdAt: at } })).id;
}

/** Every decision on an item, the newest first. */
export async function reviewsOf(db: Db, itemId: string): Promise<ReviewRecord[]> {
  const rows = await db.review.findMany({
    where: { itemId },
    orderBy: [{ createdAt: "desc" }, { id: "desc" }],
    include: { reviewer: { select: { name: true } } },
  });
  return rows.map(({ reviewer, itemId: _, decision, ...r }) => ({
    ...r,
    reviewerName: reviewer.name,
    decision: z.enum(reviewDecisions).parse(decision),
  }));
}

export type Claim = { reviewerId: string; reviewerName: string; interests: string; claimedAt: Date };

export async function claimOf(db: Db, itemId: string): Promise<Claim | null> {
  const row = await db.reviewClaim.findUnique({
    where: { itemId },
    include: { reviewer: { select: { name: true } } },
  });
  if (!row) return null;
  const { reviewerId, reviewer, interests, claimedAt } = row;
  return { reviewerId, reviewerName: reviewer.name, interests, claimedAt };
}

export async function writeClaim(
  tx: Db,
  claim: { itemId: string; reviewerId: string; interests: string; claimedAt: Date },
): Promise<void> {
  await tx.reviewClaim.create({ data: claim });
}

export async function dropClaim(tx: Db, itemId: string): Promise<void> {
  await tx.reviewClaim.deleteMany({ where: { itemId } });
}

/** What the tester said at submission of what ties them to the maker. */
export type Submission = { interests: string; submittedById: string | null; submittedAt: Date | null };

export async function submissionOf(db: Db, itemId: string): Promise<Submission> {
  const select = { interests: true, submittedById: true, submittedAt: true } as const;
  return db.item.findUniqueOrThrow({ where: { id: itemId }, select });
}

export async function writeSubmission(
  tx: Db,
  itemId: string,
  submission: { interests: string; submittedById: string; submittedAt: Date },
): Promise<void> {
  await tx.item.update({ where: { id: itemId }, data: submission });
}

export type CommentRecord = {
  id: string;
  itemId: string;
  authorId: string;
  authorName: string;
  about: string;
  text: string;
  replyToId: string | null;
  createdAt: Date;
  settledAt: Date | null;
};

/** Remarks and answers on an item, in the order they were made. */
export async function commentsOf(db: Db, itemId: string): Promise<CommentRecord[]> {
  const rows = await db.reviewComment.findMany({
    where: { itemId },
    orderBy: [{ createdAt: "asc" }, { id: "asc" }],
    include: { author: { select: { name: true } } },
  });
  return rows.map(({ author, settledById: _, ...row }) => ({ ...row, authorName: author.name }));
}

export async function findComment(db: Db, id: string): Promise<CommentRecord | null> {
  const row = await db.reviewComment.findUnique({ where: { id }, include: { author: { select: { name: true } } } });
  if (!row) return null;
  const { author, settledById: _, ...comment } = row;
  return { ...comment, authorName: author.name };
}

export async function addComment(
  tx: Db,
  comment: { itemId: string; authorId: string; about: string; text: string; replyToId: string | null; createdAt: Date },
): Promise<string> {
  return (await tx.reviewComment.create({ data: comment })).id;
}

export async function settleComment(tx: Db, id: string, by: { settledById: string; settledAt: Date }): Promise<void> {
  await tx.reviewComment.update({ where: { id }, data: by });
}

export const revisionKinds = ["correction", "update", "withdrawal"] as const;
export type StartedRevision = {
  kind: (typeof revisionKinds)[number];
  reason: string;
  startedById: string;
  startedAt: Date;
};

/** The revision of a published item that somebody has started, if anybody has. */
export async function startedRevision(db: Db, itemId: string): Promise<StartedRevision | null> {
  const row = await db.startedRevision.findUnique({ where: { itemId } });
  if (!row) return null;
  const { itemId: _, kind, ...rest } = row;
  return { ...rest, kind: z.enum(revisionKinds).parse(kind) };
}

export async function writeStartedRevision(tx: Db, itemId: string, revision: StartedRevision): Promise<void> {
  await tx.startedRevision.upsert({ where: { itemId }, create: { itemId, ...revision }, update: revision });
}

export async function dropStartedRevision(tx: Db, itemId: string): Promise<void> {
  await tx.startedRevision.deleteMany({ where: { itemId } });
}

export type MakerAnswerRecord = { id: string; receivedOn: string; fromWhom: string; text: string; createdAt: Date };

/** What makers have answered to an item's publication, the newest first. Read by the public page beside the snapshot. */
export async function makerAnswersOf(db: Db, slug: string): Promise<MakerAnswerRecord[]> {
  const select = { id: true, receivedOn: true, fromWhom: true, text: true, createdAt: true } as const;
  return db.makerAnswer.findMany({
    where: { item: { slug } },
    orderBy: [{ receivedOn: "desc" }, { id: "asc" }],
    select,
  });
}

export async function addMakerAnswer(
  tx: Db,
  answer: { itemId: string; receivedOn: string; fromWhom: string; text: string; addedById: string; createdAt: Date },
): Promise<string> {
  return (await tx.makerAnswer.create({ data: answer })).id;
}

/** Those who operated the analyser in the sessions of these readings: they took them, whoever loaded the file. */
export async function operatorsOf(db: Db, readingIds: string[]): Promise<string[]> {
  const rows = await db.session.findMany({
    where: { operatorId: { not: null }, readings: { some: { id: { in: readingIds } } } },
    select: { operatorId: true },
  });
  return rows.flatMap((row) => row.operatorId ?? []);
}
