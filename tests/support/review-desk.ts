import type { Person } from "@/lib/access/permissions.ts";
import type { Context } from "@/lib/platform/context.ts";
import type { Outcome } from "@/lib/quantity/problem.ts";
import type { Database } from "@/lib/store/database.ts";
import { itemDraft } from "@/lib/store/item-draft.ts";
import { noTies } from "@/lib/wording/review.ts";
import { claimItemWorkflow } from "@/lib/workflows/claim-item.ts";
import { reviewItemWorkflow, submitItemWorkflow } from "@/lib/workflows/review-item.ts";
import { type BenchItem, benchItem, must } from "./bench-item.ts";
import { contextAs, fixedNow, person } from "./test-context.ts";

type As = Context & { person: Person };
export type Desk = BenchItem & { db: Database; tester: As; reviewer: As; second: As; owner: As; other: As };

/** A mug on the bench of a registry with a tester, two reviewers, another tester and an owner. */
export async function desk(): Promise<Desk> {
  let seconds = 0;
  // A second goes by at every look, so that what comes later is later.
  const clock = () => new Date(fixedNow.getTime() + 1000 * seconds++);
  const tester = { ...(await contextAs("tester")), clock };
  const { db } = tester;
  const as = async (role: Person["role"], name: string): Promise<As> => ({
    ...tester,
    person: await person(db, role, name),
  });
  const [reviewer, second, owner, other] = [
    await as("reviewer", "Ritva"),
    await as("reviewer", "Sanna"),
    await as("owner", "Odaline"),
    await as("tester", "Otto"),
  ] as const;
  return { ...(await benchItem(tester)), db, tester, reviewer, second, owner, other };
}

/** What an approval given now would be bound to. */
export async function digestOf(db: Database, itemId: string, now: Date = fixedNow): Promise<string> {
  return (await itemDraft(db, itemId, { now }))!.digest;
}

export const submit = async (as: Context, itemId: string) =>
  must(await submitItemWorkflow(as, { itemId, interests: noTies }));

export const claim = async (as: Context, itemId: string) =>
  must(await claimItemWorkflow(as, { itemId, interests: noTies }));

/** Claims an item that was handed in, and approves it as it stands. */
export async function approve(as: Context, itemId: string) {
  await claim(as, itemId);
  const shownDigest = await digestOf(as.db, itemId);
  return must(await reviewItemWorkflow(as, { itemId, decision: "approved", shownDigest }));
}

/** The code of the first problem of a refusal; "done" where nothing was refused. */
export const codeOf = (outcome: Outcome<unknown>): string => (outcome.ok ? "done" : (outcome.problems[0]?.code ?? ""));
