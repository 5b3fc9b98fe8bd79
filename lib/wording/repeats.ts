import type { RepeatReason, Repeats, SpotRepeats } from "../consistency/repeats.ts";
import { roundToUncertainty } from "../quantity/round-to-uncertainty.ts";
import { amountText, chancesText, intervalText, significant, withUnit } from "./formats.ts";

/** What the review desk says about readings that repeat each other. */
export const repeatHeadlines: Record<Repeats["verdict"], string> = {
  agree: "The repeats agree.",
  differ: "The repeats do not agree.",
  "cannot-say": "It cannot be said whether the repeats agree.",
};

export const repeatReasons: Record<RepeatReason, string> = {
  "no-readings": "No reading is left to go by.",
  "one-reading": "There is one reading, and nothing to hold it against.",
  "within-spots":
    "At one spot at least, readings of the same place differ by more than their own errors explain. Look for a spot that was missed, or a part that moved.",
  "between-spots":
    "The spots differ by more than their errors explain. That may be the part itself: the stated range takes it in.",
  "stands-apart":
    "At least one reading stands far from the others. It counts until a person sets it aside with a reason.",
  "none-detected": "No reading saw any of it.",
  "mixed-detection": "It was found at some spots and not at others, so the spots cannot be compared by their errors.",
  "errors-unknown": "The readings carry no errors, so there is nothing to hold their differences against.",
  "one-spot": "All readings are of one spot; how even the part is stays open.",
  "no-second-shots": "Each spot was shot once, so no place was read twice.",
};

export const repeatStates: Record<SpotRepeats["state"], string> = {
  "one-reading": "read once",
  agree: "agree",
  differ: "differ",
  "cannot-say": "cannot be said",
  "not-detected": "not detected",
};

/** "agree: at 1.1 times their own error (p = 0.27)". */
export function withinSpotText(spot: SpotRepeats): string {
  if (spot.p === null || spot.birge === null) return repeatStates[spot.state];
  return `${repeatStates[spot.state]}: spread ${significant(spot.birge, 2)} times what their errors explain (${pText(spot.p)})`;
}

/** A p value: "p = 0.27", or "p under 0.001". */
export const pText = (p: number): string => (p < 0.001 ? "p under 0.001" : `p = ${significant(p, 2)}`);

/** A spot’s own value to the place its standard uncertainty u earns: "412 mg/kg, u 18", or "below 12 mg/kg". */
export function spotValueText(spot: SpotRepeats, unit: string): string {
  if (spot.value !== null) {
    if (spot.u === null) return withUnit(significant(spot.value, 4), unit);
    const { value, U } = roundToUncertainty(spot.value, spot.u);
    return `${withUnit(value, unit)}, u ${U}`;
  }
  return spot.below === null ? "not detected" : `below ${amountText(spot.below, unit)}`;
}

/** The spread between the spots, the test, and what leaving one spot out does; one sentence each. */
export function betweenSpotsSentences(repeats: Repeats): string[] {
  const { between, leaveOneOut, unit } = repeats;
  const sentences: string[] = [];
  if (between !== null)
    sentences.push(
      `Between the spots: a spread of ${amountText(between.tau, unit)} (${significant(between.relative * 100, 2)} % of the value) beyond their errors; ${chanceOfScatter(between.p)}.`,
    );
  if (leaveOneOut !== null)
    sentences.push(
      `With any one spot left out, the mean lies from ${intervalText([significant(leaveOneOut[0]), significant(leaveOneOut[1])], unit)}.`,
    );
  return sentences;
}

const chanceOfScatter = (p: number): string =>
  `even spots would scatter this much or more in ${chancesText(p).replace(/ chances? in 100$/, " of 100 cases")} (Q test, ${pText(p)})`;
