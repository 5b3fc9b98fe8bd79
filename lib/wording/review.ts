import type { Repeats } from "../consistency/repeats.ts";
import { counted } from "./formats.ts";

/** The review desk's own words. */
export const reviewPage = {
  title: "Review",
  lead: "Items that a tester asks somebody else to look at before, or after, they are published: do repeats agree, are the reasons good, would you say the same?",
  none: "Nothing waits for a review",
  noneText: "A tester hands an item over with “Ask for a review” on its bench page. It then appears here.",
} as const;

export const reviewDecisionWords: Record<"approved" | "sent-back", string> = {
  approved: "approved",
  "sent-back": "sent back",
};

/** Whether a review was of what stands here now. */
export const reviewStanding = (same: boolean): string =>
  same ? "exactly what stands here" : "an earlier state; it no longer counts";

/** Why there is no form to decide with; null where there is one. */
export function whyNoDecision(answer: { yes: true } | { yes: false; code: string }, waiting: boolean): string | null {
  if (!answer.yes)
    return answer.code === "own-readings"
      ? "You loaded some of these readings yourself, so somebody else has to review them. You can read everything here."
      : "Your role lets you read this, not decide on it. A reviewer or the owner decides.";
  return waiting ? null : "This item is not waiting for a review at the moment. You can read everything here.";
}

/** The queue's last column. */
export const queueStanding = (answer: { yes: true } | { yes: false; code: string }): string =>
  answer.yes ? "to review" : answer.code === "own-readings" ? "your own readings" : "to read";

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

/** Said on the page once a decision is given; null for anything else. */
export function reviewDoneWords(decision: string | undefined): string | null {
  if (decision === "approved") return "Approved. The tester can publish it with your name.";
  return decision === "sent-back" ? "Sent back with your note. The tester sees it at the bench." : null;
}

export const decisionMissing = "Choose one: approve what is shown, or send it back.";
