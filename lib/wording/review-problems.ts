import type { Problem } from "../quantity/problem.ts";
import { foundText, type ProblemWords, quoted } from "./problem-sentence.ts";

/** What reviewing, re-testing, correcting and withdrawing can run into. */
export const reviewProblems: ProblemWords = {
  "not-submitted": () => "This item is not waiting for a review. Ask its tester to hand it in.",
  "already-submitted": () => "This item is already waiting for a review. It is handed in anew once it comes back.",
  "in-review": () => "This item is being reviewed. Wait until it comes back; then start the new revision.",
  "stale-draft": () =>
    "Someone changed this while you were looking at it. Reload the page to see the newest state, then try again. Nothing was changed.",
  "claimed-by-another": (p) =>
    `${nameOf(p, "Somebody else")} has taken this item up for review. Wait, choose another, or ask them to give it back. Nothing was changed.`,
  "not-claimed": () => "Take the item up first, with your statement of interests; then decide on it.",
  "note-missing": () =>
    "Please write a note to the tester, of at least 8 characters: what is missing, or what is wrong.",
  "approved-before": () =>
    "You have approved exactly this already. This registry asks for another person’s approval as well.",
  "needs-approval": (p) =>
    p.allowed === "2"
      ? `Two people have to approve this before it can be published; ${p.found === "1" ? "one has" : "nobody has"} so far.`
      : "Another person has to approve this before it can be published. Ask for a review.",
  "approval-outdated": () =>
    "Something has changed since this was approved, so the approval no longer counts. Ask for a review again.",
  "already-withdrawn": (p) =>
    `${p.found && !isState(p) ? `${quoted(p.found)} has` : "This item has"} already been withdrawn.`,
  "not-published": (p) =>
    `${nameOf(p, "This item")} is not published, so there is nothing to correct, withdraw or answer. Change it on the bench.`,
  "no-revision-started": () => "No new revision has been started for this item.",
  "unknown-comment": () => "That remark is not here any more. Reload the page.",
  "unknown-place": () => "That figure or row is not part of the item any more. Reload the page and say what you mean.",
  "not-your-comment": (p) => `Only ${nameOf(p, "whoever made the remark")} or the owner can call it settled.`,
  "blind-retest": () =>
    "You are asked to measure this item without knowing the first value. This opens once you have handed in yours.",
  "retest-open": () =>
    "Somebody is measuring this item again without knowing the value. Publishing would tell it. Wait, or call the re-test off.",
  "not-a-tester": (p) => `${nameOf(p, "That person")} does not take readings. Choose a tester.`,
  "knows-first-value": (p) =>
    `${nameOf(p, "That person")} made this item, took its readings or asks for the re-test, and so knows the value. Choose somebody else.`,
  "nothing-to-retest": (p) =>
    `There is no value of ${quoted(p.found)} on this part that a second one could be held beside.`,
  "unknown-retest": () => "You have not been asked for this re-test.",
  "retest-closed": () => "This re-test is closed: it was handed in or called off.",
  "retest-without-readings": (p) =>
    `You have put no reading of ${quoted(p.found)} on that part yet. Load yours and assign them; then hand in.`,
  "date-ahead": (p) => `That day has not come yet.${foundText(p)}`,
};

const isState = (p: Problem): boolean =>
  ["draft", "submitted", "approved", "published", "withdrawn"].includes(p.found!);
const nameOf = (p: Problem, otherwise: string): string => (p.found ? p.found : otherwise);
