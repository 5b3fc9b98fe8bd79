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
};
