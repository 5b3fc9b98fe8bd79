import { type PlacedResult, resultsByWeight, type Verdict, verdictOf } from "../publication/leading-decision.ts";
import type { Snapshot, SnapshotDecision, SnapshotResult } from "../publication/snapshot.ts";
import { elementName } from "./elements.ts";
import { answerSentences as spanish } from "./es/answers.ts";
import {
  alsoAs,
  chancesText,
  counted,
  intervalText,
  plainDate,
  resultText,
  significant,
  unitText,
  withUnit,
} from "./formats.ts";
import { labelsIn } from "./labels.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";
import { limitName, verdictsIn } from "./verdicts.ts";

/** What a page says first: one line that answers, then what it means and how sure it is. Short words, short sentences. */
export type PlainAnswer = {
  verdict: Verdict | null;
  headline: string;
  sentences: string[];
};

const english = {
  takenBack: "We have taken this result back. Please do not use it.",
  takenBackOn: (day: string) => `We took it back on ${day}.`,
  takenBackWhy: (reason: string) => `Here is why: ${reason}`,
  nothingHidden: "The older pages stay where they are, so that nothing is hidden.",
  noResultAtAll: "We have no result for this item.",
  inPart: (part: string) => `in the part “${part}”`,
  noResult: (what: string) => `No result: ${what}.`,
  notDetected: (what: string) => `Not detected: ${what}.`,
  littleSeen: (what: string) => `A little was seen: ${what}.`,
  found: (element: string, where: string) => `${element} found ${where}.`,
  uneven: (element: string, range: string) =>
    `The amount of ${element} is not the same all over.${range === "" ? "" : ` We found ${range}.`}`,
  whole: (amount: string, element: string) => `For the whole part that makes ${amount} of ${element}.`,
  weFound: (amount: string, element: string) => `We found ${amount} of ${element}.`,
  trueAmount: (range: string) =>
    `The true amount is most likely from ${range}. Such a range is right about 19 times out of 20.`,
  oneSpot: "We tested just one spot, so the rest of the part may differ.",
  sawAt: (element: string, seen: number, spots: number) => `We saw ${element} at ${seen} of ${spots} spots.`,
  tooLittle: "That is too little to put one number on it.",
  noMoreThan: (amount: string) => `There is most likely no more than ${amount}.`,
  sawNone: (element: string, spots: number) =>
    `We saw no ${element} at ${spots === 1 ? "the one spot" : `any of the ${spots} spots`} we tested.`,
  notNone: "That does not mean that there is none.",
  maybeLittle: (amount: string) =>
    `There may still be a little: less than ${amount}. The tool cannot see less than that.`,
  fewSpots: (amount: string) =>
    `So few spots cannot show that the whole part holds that little. On average it may hold up to ${amount}.`,
  noReading: "No reading is left to go by.",
  lowHigh: (low: string, high: string) => `${low} at the lowest spot and ${high} at the highest`,
  needsLab: "The limits we list are for what comes out of it. A test in a lab would be needed to compare.",
  noLimit: "We know of no limit to hold this number against.",
  noLimitOfKind: "No limit that we list is made for this kind of thing.",
  justToCompare: (limit: string) => `Just to compare, we hold it against this one: ${limit}.`,
  heldAgainst: (limit: string) => `We hold it against this limit: ${limit}.`,
  testDay: (day: string) => `That goes by the rules of the day of the test, ${day}.`,
  changedSince: "The rules have changed since.",
  pageDay: (said: string) => `By the rules when this page was made it is ${said}.`,
  rulesOf: (day: string) => `That goes by the rules of ${day}.`,
  noneThatDay: "By the rules of the day of the test there was no such limit to hold it against.",
  testDaySaid: (said: string) => `By the rules of the day of the test it is ${said}.`,
  above: "It is above the limit.",
  below: "It is below the limit.",
  right: (chances: string) => `There are ${chances} that this is right.`,
  tooClose: "It is too close to call: we cannot tell if it is above or below.",
  chancesAbove: (chances: string) => `There are ${chances} that it is above.`,
  smallChanceAbove: (chances: string) => `There is ${chances} that it is above.`,
  someChanceAbove: (chances: string) => `There is a chance (${chances}) that it is above.`,
  moreReadings: "More readings may help.",
  cannotSay: "We cannot say on which side of it this item is.",
  unitMeans: (unit: string, words: string) => `${unit} means ${words}.`,
  sameAs: (amount: string, also: string) => `${amount} is the same as ${also}.`,
  withoutLimit: "with no limit to compare",
  some: (n: number, verdict: string) => `${n} ${verdict}`,
  moreResults: (n: number, said: string) => `We have ${counted(n, "more result")} for this item: ${said}.`,
  testedOn: (day: string) => `We tested it on ${day}.`,
  reviewed: "A second person checked the work.",
  notReviewed: "No second person has checked the work.",
};
export type AnswerSentences = Sentences<typeof english>;
const sentencesIn: ByLanguage<AnswerSentences> = { en: english, es: spanish };

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/**
 * The first sentences of an item's page, answer first: the verdict of the result that weighs most, its number, its limit,
 * how sure it is, what else was tested, and when. Complete over every state of a snapshot.
 *
 * @example headline "Above the limit: lead in the part “glaze, outside”."
 */
export function itemAnswer(snapshot: Snapshot, language: Language = "en"): PlainAnswer {
  const say = sentencesIn[language];
  if (snapshot.kind === "withdrawal")
    return {
      verdict: null,
      headline: say.takenBack,
      sentences: [
        say.takenBackOn(plainDate(snapshot.publishedAt, language)),
        ...(snapshot.reason ? [say.takenBackWhy(endedSentence(snapshot.reason))] : []),
        say.nothingHidden,
      ],
    };
  const placed = resultsByWeight(snapshot);
  const [first, ...others] = placed;
  const tested = testedLine(snapshot, language);
  if (!first) return { verdict: null, headline: say.noResultAtAll, sentences: [tested] };
  const lead = resultAnswer(first, language);
  return { ...lead, sentences: [...lead.sentences, ...othersLines(others, language), tested] };
}

/** The same for one result of one part. */
export function resultAnswer(placed: PlacedResult, language: Language = "en"): PlainAnswer {
  const { result, decision } = placed;
  return {
    verdict: verdictOf(placed),
    headline: headline(placed, language),
    sentences: [
      ...amountSentences(result, language),
      ...limitSentences(result, decision, language),
      ...unitSentences(result, language),
    ],
  };
}

function headline({ part, result, decision }: PlacedResult, language: Language): string {
  const say = sentencesIn[language];
  const where = say.inPart(part.name);
  const element = elementName(result.element, language);
  const what = `${element} ${where}`;
  if (result.state === "no-readings") return say.noResult(what);
  if (result.state === "not-detected") return say.notDetected(what);
  if (decision?.applies === "applies" && decision.verdict !== "cannot-say")
    return `${capital(verdictsIn[language].verdicts[decision.verdict])}: ${what}.`;
  if (result.state === "not-quantified") return say.littleSeen(what);
  return say.found(capital(element), where);
}

function amountSentences(result: SnapshotResult, language: Language): string[] {
  const say = sentencesIn[language];
  const { stated, unit, counts } = result;
  const name = elementName(result.element, language);
  const amount = (value: number): string => withUnit(significant(value), unit, language);
  const range = result.range === null ? "" : say.lowHigh(amount(result.range[0]), amount(result.range[1]));
  switch (result.state) {
    case "quantified": {
      const uneven = result.flags.includes("uneven");
      const found = resultText({ ...result, stated: { ...stated, interval: null } }, language);
      return [
        ...(uneven && range !== "" ? [say.uneven(name, range)] : []),
        uneven ? say.whole(found, name) : say.weFound(found, name),
        ...(stated.interval ? [say.trueAmount(intervalText(stated.interval, unit, language))] : []),
        ...(counts.spots === 1 ? [say.oneSpot] : []),
      ];
    }
    case "range-only":
      return [say.uneven(name, range)];
    case "not-quantified":
      return [
        say.sawAt(name, counts.spotsDetected, counts.spots),
        say.tooLittle,
        ...(result.upperBound === null ? [] : [say.noMoreThan(amount(result.upperBound))]),
      ];
    case "not-detected":
      return [
        say.sawNone(name, counts.spots),
        stated.below === null ? say.notNone : say.maybeLittle(withUnit(stated.below, unit, language)),
        // What few spots leave open about the rest of the part; a verdict goes by that bound (method, step 9).
        ...(result.below !== null && result.upperBound !== null && result.upperBound > result.below
          ? [say.fewSpots(amount(result.upperBound))]
          : []),
      ];
    case "no-readings":
      return [say.noReading];
  }
}

function limitSentences(result: SnapshotResult, decision: SnapshotDecision | null, language: Language): string[] {
  const say = sentencesIn[language];
  if (result.state === "no-readings") return [];
  if (decision === null)
    return [result.decisions.some((d) => d.applies === "other-quantity") ? say.needsLab : say.noLimit];
  const limit = limitName(decision, language);
  return [
    ...(decision.applies === "for-reference"
      ? [say.noLimitOfKind, say.justToCompare(limit)]
      : [say.heldAgainst(limit)]),
    ...verdictSentence(decision, language),
    ...daySentences(result, decision, language),
  ];
}

/** Which day's rules the leading verdict goes by, where the other day's differ, and what the other day's say. */
function daySentences(result: SnapshotResult, decision: SnapshotDecision, language: Language): string[] {
  const say = sentencesIn[language];
  if (decision.which === "both") return [];
  const other = result.decisions.filter(
    (d) => d.which !== "both" && d.which !== decision.which && d.applies === decision.applies,
  );
  const said = other.map((d) => `${verdictsIn[language].verdicts[d.verdict]} (${limitName(d, language)})`).join("; ");
  const day = plainDate(decision.day, language);
  return decision.which === "test-day"
    ? [say.testDay(day), said === "" ? say.changedSince : say.pageDay(said)]
    : [say.rulesOf(day), said === "" ? say.noneThatDay : say.testDaySaid(said)];
}

function verdictSentence({ verdict, probabilityAbove: p }: SnapshotDecision, language: Language): string[] {
  const say = sentencesIn[language];
  const chances = (probability: number): string => chancesText(probability, language);
  switch (verdict) {
    case "above":
      return [p === null ? say.above : `${say.above} ${say.right(chances(p))}`];
    case "below":
      return [p === null ? say.below : `${say.below} ${say.right(chances(1 - p))}`];
    case "too-close":
      return [say.tooClose, ...(p === null ? [] : [say.chancesAbove(chances(p))]), say.moreReadings];
    case "not-detected":
      return p === null ? [] : [p <= 0.01 ? say.smallChanceAbove(chances(p)) : say.someChanceAbove(chances(p))];
    case "cannot-say":
      return [say.cannotSay];
  }
}

function unitSentences(result: SnapshotResult, language: Language): string[] {
  const say = sentencesIn[language];
  const words = labelsIn[language].unit[result.unit];
  if (!words || result.state === "no-readings") return [];
  const also = result.value === null ? null : alsoAs(result.stated.value, result.value, result.unit, language);
  const means = say.unitMeans(unitText(result.unit, language), words);
  return [also ? `${means} ${say.sameAs(withUnit(result.stated.value, result.unit, language), also)}` : means];
}

/** What the other results say, counted by verdict, most pressing first. */
function othersLines(others: PlacedResult[], language: Language): string[] {
  const say = sentencesIn[language];
  const groups = new Map<string, number>();
  for (const other of others) {
    const verdict = verdictOf(other);
    const applies = other.decision?.applies === "applies" || verdict === "not-detected";
    const words = verdict === null || !applies ? say.withoutLimit : verdictsIn[language].verdicts[verdict];
    groups.set(words, (groups.get(words) ?? 0) + 1);
  }
  if (groups.size === 0) return [];
  return [say.moreResults(others.length, [...groups].map(([words, n]) => say.some(n, words)).join(", "))];
}

function testedLine(snapshot: Snapshot, language: Language): string {
  const say = sentencesIn[language];
  const review = snapshot.review.reviewed ? say.reviewed : say.notReviewed;
  return `${say.testedOn(plainDate(snapshot.testedOn, language))} ${review}`;
}

const endedSentence = (text: string): string => (/[.!?]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`);
