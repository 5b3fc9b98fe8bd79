import { type PlacedResult, resultsByWeight, type Verdict, verdictOf } from "../publication/leading-decision.ts";
import type { Snapshot, SnapshotDecision, SnapshotResult } from "../publication/snapshot.ts";
import { elementName } from "./elements.ts";
import {
  alsoAs,
  chancesText,
  counted,
  groupDigits,
  intervalText,
  plainDate,
  resultText,
  significant,
  withUnit,
} from "./formats.ts";
import { unitWords } from "./labels.ts";
import { limitName, verdictWords } from "./verdicts.ts";

/** What a page says first: one line that answers, then what it means and how sure it is. Short words, short sentences. */
export type PlainAnswer = {
  verdict: Verdict | null;
  headline: string;
  sentences: string[];
};

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/**
 * The first sentences of an item's page, answer first: the verdict of the result that weighs most, its number, its limit,
 * how sure it is, what else was tested, and when. Complete over every state of a snapshot.
 *
 * @example headline "Above the limit: lead in the part “glaze, outside”."
 */
export function itemAnswer(snapshot: Snapshot): PlainAnswer {
  if (snapshot.kind === "withdrawal")
    return {
      verdict: null,
      headline: "We have taken this result back. Please do not use it.",
      sentences: [
        `We took it back on ${plainDate(snapshot.publishedAt)}.`,
        ...(snapshot.reason ? [`Here is why: ${endedSentence(snapshot.reason)}`] : []),
        "The older pages stay where they are, so that nothing is hidden.",
      ],
    };
  const placed = resultsByWeight(snapshot);
  const [first, ...others] = placed;
  if (!first) return { verdict: null, headline: "We have no result for this item.", sentences: [testedLine(snapshot)] };
  const lead = resultAnswer(first);
  return { ...lead, sentences: [...lead.sentences, ...othersLines(others), testedLine(snapshot)] };
}

/** The same for one result of one part. */
export function resultAnswer(placed: PlacedResult): PlainAnswer {
  const { result, decision } = placed;
  return {
    verdict: verdictOf(placed),
    headline: headline(placed),
    sentences: [...amountSentences(result), ...limitSentences(result, decision), ...unitSentences(result)],
  };
}

const where = ({ part }: PlacedResult): string => `in the part “${part.name}”`;

function headline(placed: PlacedResult): string {
  const { result, decision } = placed;
  const what = `${elementName(result.element)} ${where(placed)}`;
  if (result.state === "no-readings") return `No result: ${what}.`;
  if (result.state === "not-detected") return `Not detected: ${what}.`;
  if (decision?.applies === "applies" && decision.verdict !== "cannot-say")
    return `${capital(verdictWords[decision.verdict])}: ${what}.`;
  if (result.state === "not-quantified") return `A little was seen: ${what}.`;
  return `${capital(elementName(result.element))} found ${where(placed)}.`;
}

function amountSentences(result: SnapshotResult): string[] {
  const { stated, unit, counts } = result;
  const name = elementName(result.element);
  switch (result.state) {
    case "quantified":
      return [
        ...(result.flags.includes("uneven") && result.range
          ? [`The amount of ${name} is not the same all over. We found ${rangeText(result.range, unit)}.`]
          : []),
        `${result.flags.includes("uneven") ? "For the whole part that makes" : "We found"} ${resultText({ ...result, stated: { ...stated, interval: null } })} of ${name}.`,
        ...(stated.interval
          ? [
              `The true amount is most likely from ${intervalText(stated.interval, unit)}. Such a range is right about 19 times out of 20.`,
            ]
          : []),
        ...(counts.spots === 1 ? ["We tested just one spot, so the rest of the part may differ."] : []),
      ];
    case "range-only":
      return result.range
        ? [`The amount of ${name} is not the same all over. We found ${rangeText(result.range, unit)}.`]
        : [`The amount of ${name} is not the same all over.`];
    case "not-quantified":
      return [
        `We saw ${name} at ${counts.spotsDetected} of ${counts.spots} spots.`,
        "That is too little to put one number on it.",
        ...(result.upperBound === null
          ? []
          : [`There is most likely no more than ${withUnit(significant(result.upperBound), unit)}.`]),
      ];
    case "not-detected":
      return [
        `We saw no ${name} at ${counts.spots === 1 ? "the one spot" : `any of the ${counts.spots} spots`} we tested.`,
        ...(stated.below === null
          ? ["That does not mean that there is none."]
          : [
              `There may still be a little: less than ${withUnit(stated.below, unit)}. The tool cannot see less than that.`,
            ]),
        ...fewSpotsSentence(result),
      ];
    case "no-readings":
      return ["No reading is left to go by."];
  }
}

/** What few spots leave open about the rest of a part in which nothing was seen; a verdict goes by that bound (method, step 9). */
const fewSpotsSentence = ({ below, upperBound, unit }: SnapshotResult): string[] =>
  below !== null && upperBound !== null && upperBound > below
    ? [
        `So few spots cannot show that the whole part holds that little. On average it may hold up to ${withUnit(significant(upperBound), unit)}.`,
      ]
    : [];

const rangeText = ([low, high]: readonly [number, number], unit: string): string =>
  `${withUnit(significant(low), unit)} at the lowest spot and ${withUnit(significant(high), unit)} at the highest`;

function limitSentences(result: SnapshotResult, decision: SnapshotDecision | null): string[] {
  if (result.state === "no-readings") return [];
  if (decision === null)
    return result.decisions.some((d) => d.applies === "other-quantity")
      ? ["The limits we list are for what comes out of it. A test in a lab would be needed to compare."]
      : ["We know of no limit to hold this number against."];
  if (decision.applies === "for-reference")
    return [
      "No limit that we list is made for this kind of thing.",
      `Just to compare, we hold it against this one: ${limitName(decision)}.`,
      ...verdictSentence(decision),
      ...daySentences(result, decision),
    ];
  return [
    `We hold it against this limit: ${limitName(decision)}.`,
    ...verdictSentence(decision),
    ...daySentences(result, decision),
  ];
}

/** Which day's rules the leading verdict goes by, where the other day's differ, and what the other day's say. */
function daySentences(result: SnapshotResult, decision: SnapshotDecision): string[] {
  if (decision.which === "both") return [];
  const other = result.decisions.filter(
    (d) => d.which !== "both" && d.which !== decision.which && d.applies === decision.applies,
  );
  const said = other.map((d) => `${verdictWords[d.verdict]} (${limitName(d)})`).join("; ");
  return decision.which === "test-day"
    ? [
        `That goes by the rules of the day of the test, ${plainDate(decision.day)}.`,
        said === "" ? "The rules have changed since." : `By the rules when this page was made it is ${said}.`,
      ]
    : [
        `That goes by the rules of ${plainDate(decision.day)}.`,
        said === ""
          ? "By the rules of the day of the test there was no such limit to hold it against."
          : `By the rules of the day of the test it is ${said}.`,
      ];
}

function verdictSentence({ verdict, probabilityAbove: p }: SnapshotDecision): string[] {
  switch (verdict) {
    case "above":
      return [
        p === null
          ? "It is above the limit."
          : `It is above the limit. There are ${chancesText(p)} that this is right.`,
      ];
    case "below":
      return [
        p === null
          ? "It is below the limit."
          : `It is below the limit. There are ${chancesText(1 - p)} that this is right.`,
      ];
    case "too-close":
      return [
        "It is too close to call: we cannot tell if it is above or below.",
        ...(p === null ? [] : [`There are ${chancesText(p)} that it is above.`]),
        "More readings may help.",
      ];
    case "not-detected":
      return p === null
        ? []
        : [`There is ${p <= 0.01 ? chancesText(p) : `a chance (${chancesText(p)})`} that it is above.`];
    case "cannot-say":
      return ["We cannot say on which side of it this item is."];
  }
}

function unitSentences(result: SnapshotResult): string[] {
  const words = unitWords[result.unit];
  if (!words || result.state === "no-readings") return [];
  const also = result.value === null ? null : alsoAs(result.stated.value, result.value, result.unit);
  return [
    `${result.unit} means ${words}.${also ? ` ${groupDigits(result.stated.value)} ${result.unit} is the same as ${also}.` : ""}`,
  ];
}

/** What the other results say, counted by verdict, most pressing first. */
function othersLines(others: PlacedResult[]): string[] {
  const groups = new Map<string, number>();
  for (const other of others) {
    const verdict = verdictOf(other);
    const applies = other.decision?.applies === "applies" || verdict === "not-detected";
    const words = verdict === null || !applies ? "with no limit to compare" : verdictWords[verdict];
    groups.set(words, (groups.get(words) ?? 0) + 1);
  }
  if (groups.size === 0) return [];
  const said = [...groups].map(([words, n]) => `${n} ${words}`).join(", ");
  return [`We have ${counted(others.length, "more result")} for this item: ${said}.`];
}

function testedLine(snapshot: Snapshot): string {
  const review = snapshot.review.reviewed
    ? "A second person checked the work."
    : "No second person has checked the work.";
  return `We tested it on ${plainDate(snapshot.testedOn)}. ${review}`;
}

const endedSentence = (text: string): string => (/[.!?]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`);
