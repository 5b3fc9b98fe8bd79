import type { Repeats } from "../consistency/repeats.ts";
import type { ApprovalGate } from "../publication/approval.ts";
import type { BoundPlan } from "../reconcile/bound-plans.ts";
import type { Plan } from "../reconcile/what-next.ts";
import { amountText, chancesText, counted, listed } from "./formats.ts";
import { planName } from "./plans.ts";

/** The review desk's own words. */
export const reviewPage = {
  title: "Review",
  lead: "Items that a tester asks somebody else to look at before they are published: do repeats agree, are the reasons good, would you say the same?",
  none: "Nothing waits for a review",
  noneText: "A tester hands an item over with “Ask for a review” on its bench page. It then appears here.",
} as const;

export const reviewDecisionWords: Record<"approved" | "sent-back" | "more-shots", string> = {
  approved: "approved",
  "sent-back": "sent back",
  "more-shots": "asked for more shots",
};

/** Whether a review was of what stands here now. */
export const reviewStanding = (same: boolean): string =>
  same ? "exactly what stands here" : "an earlier state; it no longer counts";

const refusals: Record<string, string> = {
  "own-readings":
    "You made this item, took its readings or handed it in, so somebody else has to review it. You can read and answer everything here.",
  "not-submitted": "This item is not waiting for a review at the moment. You can read everything here.",
};

/** Why there is no form to decide with; null where there is one. */
export const whyNoDecision = (answer: { yes: true } | { yes: false; code: string }): string | null =>
  answer.yes
    ? null
    : (refusals[answer.code] ??
      "Your role lets you read this and answer remarks, not decide on it. A reviewer or the owner decides.");

/** Who has taken an item up, as the queue and the page say it. */
export const claimWords = (name: string | null, own: boolean): string =>
  name === null ? "free" : own ? "you have it" : `${name} has it`;

/** The queue's last column. */
export const queueStanding = (answer: { yes: true } | { yes: false; code: string }): string =>
  answer.yes ? "to review" : answer.code === "own-readings" ? "your own" : "to read";

/** "5 agree, 1 does not, 2 cannot be said". */
export function repeatsCount(verdicts: readonly Repeats["verdict"][]): string {
  const count = (verdict: Repeats["verdict"]) => verdicts.filter((v) => v === verdict).length;
  const said = [
    count("agree") > 0 ? `${count("agree")} ${count("agree") === 1 ? "agrees" : "agree"}` : "",
    count("differ") > 0 ? `${count("differ")} ${count("differ") === 1 ? "does" : "do"} not` : "",
    count("cannot-say") > 0 ? `${count("cannot-say")} cannot be said` : "",
  ].filter((text) => text !== "");
  return said.length === 0 ? "no result yet" : `${counted(verdicts.length, "result")}: ${said.join(", ")}`;
}

const doneWords: Record<string, string> = {
  approved: "Approved. The tester can publish it with your name.",
  submitted: "Approved. This registry asks for one more person’s approval, so the item stays in the queue.",
  "sent-back": "Sent back with your note. The tester sees it at the bench.",
  "more-shots": "Sent back with your wish for more shots. The tester sees it at the bench.",
};

/** Said on the page once a decision is given; null for anything else. */
export const reviewDoneWords = (decision: string | undefined): string | null =>
  decision !== undefined && Object.hasOwn(doneWords, decision) ? doneWords[decision]! : null;

export const decisionMissing = "Choose one: approve what is shown, ask for more shots, or send it back.";

/** How far the approvals have come, at the bench and the review desk. */
export function gateSentence(gate: ApprovalGate): string {
  const by = listed(gate.by);
  switch (gate.state) {
    case "enough":
      return gate.by.length > 0
        ? `Approved by ${by}, for exactly what stands here. The page will name ${gate.by.length === 1 ? "the reviewer" : "both"}.`
        : "It can be published.";
    case "unreviewed":
      return gate.needed === 0
        ? "This registry lets a page be published without a review. It then says “Not independently reviewed”."
        : "Nobody else is in this registry who could review it. It can be published unreviewed; the page then says “Not independently reviewed”.";
    case "moved":
      return "It was approved once, but something has changed since: a reading, a spot, a photo, a word or the reason. The approval no longer counts; ask for a review again.";
    case "lacking":
      return gate.needed === 2
        ? gate.given === 1
          ? `This registry asks for two approvals. ${by} has approved exactly this; one more person has to.`
          : "This registry asks for the approvals of two people before anything is published."
        : "Another person has to approve it before it can be published.";
  }
}

export const noTies = "Nothing ties me to whoever made or sells it.";
export const interestsQuestion = {
  legend: "What ties you to whoever made or sells it?",
  hint: "Money, work, family, a quarrel: whatever a reader would want to know. It stands on the public page.",
  none: "Nothing does",
  some: "Something does, and here it is",
} as const;

/** "3 more spots: U about 21 mg/kg; decided in about 83 chances in 100". */
export function planText(plan: Plan, unit: string): string {
  const chance = plan.chance === null ? "" : `; it would then be clear of the limit in ${chancesText(plan.chance)}`;
  return `${planName(plan)}: an expanded uncertainty of about ${amountText(plan.expectedU, unit)}${chance}`;
}

/** "5 more spots: if again nothing is seen, the part holds less than about 18.4 mg/kg, which is below the limit" */
export function boundPlanText(plan: BoundPlan, unit: string): string {
  if (plan.bound === null) return `${planName(plan)}, whose detection limit lies well below the limit`;
  const settled = plan.settles ? ", which is below the limit" : ", still not below the limit";
  return `${planName(plan)}: if again nothing is seen, the part holds less than about ${amountText(plan.bound, unit)}${settled}`;
}

/** What a remark is about, where the page has no better name for it any more. */
export const aboutGone = "something that is no longer part of the item";

const actWords: Record<string, string> = {
  "create-item": "made the item",
  "edit-item": "changed its words",
  "add-specimen": "added an object",
  "add-component": "added a part",
  "edit-specimen": "changed what is said of an object",
  "edit-component": "changed a part",
  "move-part": "changed the order of objects or parts",
  "remove-component": "took a part away",
  "remove-specimen": "took an object away",
  "put-back": "put back what was taken away",
  "add-photo": "added a photo",
  "describe-photo": "changed what a photo shows",
  "move-photo": "changed the order of the photos",
  "take-photo-away": "took a photo away",
  "put-photo-back": "put a photo back",
  "mark-scale": "marked a known length on a photo",
  "mark-spots": "marked spots on a photo",
  "unmark-spot": "took a spot’s mark off a photo",
  "join-spots": "said which readings were shot at which spot",
  "add-other-test": "added a wipe, leach or laboratory test",
  "remove-other-test": "took such a test away",
  "put-other-test-back": "put such a test back",
  "pick-session": "said which session readings belong to",
  "mark-check-readings": "marked readings as read on a check standard",
  "tie-request": "tied a reader’s request to it",
  "assign-readings": "put readings on a part",
  "unassign-readings": "took readings off a part",
  "restore-assignments": "put readings back where they were",
  "set-aside-reading": "set readings aside",
  "restore-reading": "took readings back into the result",
  "undo-set-aside": "undid a setting aside",
  "submit-item": "asked for a review",
  "claim-item": "took it up for review",
  "release-item": "gave the review back",
  "review-item": "decided on it",
  "comment-item": "made a remark or an answer",
  "settle-comment": "called a remark settled",
  "ask-retest": "asked for a blind re-test",
  "hand-in-retest": "handed a re-test in",
  "call-off-retest": "called a re-test off",
  "start-revision": "started a new revision",
  "drop-revision": "dropped the revision that was started",
  "publish-item": "published it",
  "add-maker-answer": "attached a maker’s answer",
};

/** What somebody did, in a history; an act without words of its own as its code reads. */
export const actText = (action: string): string => actWords[action] ?? action.replaceAll("-", " ");

/** What a re-test came to. */
export const retestVerdicts: Record<"agree" | "differ" | "cannot-say", string> = {
  agree: "The two values agree within their uncertainties.",
  differ: "The two values differ by more than their uncertainties explain.",
  "cannot-say":
    "The two cannot be held beside each other by number: at least one is below detection, or no uncertainty is left.",
};
