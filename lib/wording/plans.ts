import type { BoundPlan } from "../reconcile/bound-plans.ts";
import type { Plan } from "../reconcile/what-next.ts";
import { counted, significant } from "./formats.ts";

/** What a plan asks for: "3 more spots", "counts 4 times as long". */
export function planName({ kind, amount }: Pick<Plan, "kind" | "amount">): string {
  switch (kind) {
    case "more-spots":
      return counted(amount, "more spot");
    case "longer-counts":
      return `counts ${amount} times as long`;
    case "closer-standard":
      return "a check standard nearer the value";
    case "laboratory":
      return "a laboratory";
  }
}

/** The work in it: "about 3 more shots"; a laboratory is no work of the bench. */
export const planEffort = ({ kind, effort }: Pick<Plan, "kind" | "effort">): string =>
  kind === "laboratory"
    ? "sending it in"
    : kind === "closer-standard"
      ? "getting one, and reading it"
      : `about ${significant(effort, 2)} shots`;

export const planWords = {
  title: (what: string, limit: string): string => `What would settle ${what}, against ${limit}`,
  cheapest: "the least that is likely enough",
  note: "Predicted from the spread and the counting errors seen so far. “Likely enough” is four times in five.",
  none: "No amount of further work of these kinds is likely to settle it: the value lies too near the limit.",
  cheapestUnseen: "the least that is enough",
  ifUnseen:
    "Predicted for the case that again nothing is seen: a limit of detection falls with the root of the seconds counted. If something is seen then, the result becomes a value and is held beside the limit as one. A laboratory’s detection limit is often far lower; ask for it.",
  noneUnseen:
    "No amount of further work of these kinds brings the bound under the limit: ask a laboratory whose detection limit lies well below it.",
  laboratoryBound: "by its own detection limit",
};

/** Whether a plan for a part that shows nothing settles it. */
export const unseenSettles = ({ settles }: Pick<BoundPlan, "settles">): string =>
  settles === null ? "ask for it" : settles ? "if nothing is seen" : "no";
