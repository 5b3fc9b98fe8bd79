import type { ComparedResults } from "../consistency/compare-results.ts";
import { amountText, significant } from "./formats.ts";
import { pText } from "./repeats.ts";
import { retestVerdicts } from "./review.ts";

export const retestPage = {
  title: "Re-tests",
  lead: "Somebody else measures again, without knowing what came out the first time. Only then are the two values held beside each other.",
  forYou: "Asked of you",
  none: "No re-test has been asked for yet",
  noneText: "A reviewer asks for one on the page of an item under review.",
  how: [
    "Take your own readings of the part, as you would of any other, and load or write them down.",
    "Put them on the part of this item. You see your own readings and what they come to, and nothing of the first tester’s.",
    "Hand in. From then on nothing of yours is kept apart, and both values are compared.",
  ],
} as const;

export const retestStateWords: Record<"asked" | "done" | "called-off", string> = {
  asked: "asked, not handed in yet",
  done: "handed in",
  "called-off": "called off",
};

/** "−15 mg/kg": a difference with its sign. */
export const differenceText = (difference: number, unit: string): string =>
  `${difference < 0 ? "−" : difference > 0 ? "+" : ""}${amountText(Math.abs(difference), unit)}`;

/** What a comparison came to, one sentence each. */
export function comparisonSentences(compared: ComparedResults | null, unit: string): string[] {
  if (compared === null) return [retestVerdicts["cannot-say"]];
  const { difference, u, zeta, en, p, verdict, leftOut } = compared;
  return [
    retestVerdicts[verdict],
    `The first less the second: ${differenceText(difference, unit)}, with a standard uncertainty of ${amountText(u, unit)}.`,
    ...(en === null || zeta === null || p === null
      ? []
      : [
          `E_n ${significant(en, 2)} (they agree from −1 to 1); zeta ${significant(zeta, 2)}; a difference this large by chance alone: ${pText(p)}.`,
        ]),
    ...(leftOut.includes("calibration")
      ? ["Both were taken with the same analyser, so its calibration is left out of the comparison."]
      : []),
  ];
}
