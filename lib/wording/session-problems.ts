import { type ProblemWords, quoted } from "./problem-sentence.ts";

/** What stands in the way of an instrument's record, a session or a check standard. */
export const sessionProblems: ProblemWords = {
  "unknown-session": () => "There is no such session. It may have been taken away; reload the page.",
  "unknown-check-standard": () => "There is no such check standard. Reload the page and choose again.",
  "ends-before-start": (p) =>
    `The session would end ${p.found ? `(${p.found}) ` : ""}before it starts${p.allowed ? ` (${p.allowed})` : ""}. Check day, time and zone of both.`,
  "moment-incomplete": (p) =>
    `Write the day, the time of day and the time zone${p.found ? `; so far there is ${quoted(p.found)}` : ""}. A time without its zone is no moment.`,
  "moment-twice": (p) =>
    `${quoted(p.found)} came twice, since clocks were set back that night. Write the zone as an offset, such as +02:00, to say which one.`,
  "moment-never": (p) => `${quoted(p.found)} never came, since clocks skipped it. Write another time.`,
  "unknown-mode": (p) =>
    `The instrument has no mode ${quoted(p.found)}.${p.allowed ? ` It has: ${p.allowed}.` : " Write its modes down first."} Modes are written exactly as its files write them.`,
  "unknown-element": (p) => `${quoted(p.found)} is no element. Write its symbol, such as Pb or Cd.`,
  "range-upside-down": (p) =>
    `In the calibrated range ${quoted(p.found)} the upper end is not above the lower one. Write the lower one first.`,
  "certified-line-unread": (p) =>
    `The line ${quoted(p.found)} could not be read. Write one element a line: Pb 5150 ± 180, or Pb 5150 none stated, or for a blank Pb < 1.`,
  "certified-twice": (p) => `${quoted(p.found)} stands there twice. Write each element once.`,
  "range-line-unread": (p) =>
    `The line ${quoted(p.found)} could not be read. Write one range a line: element, from, to and unit, and the mode if it holds for one only: Pb 20–6000 mg/kg, glass and glaze.`,
  "certified-uncertainty-missing": (p) =>
    `The certificate’s uncertainty for ${quoted(p.found)} is missing. A check without it can show that the instrument is fit, but nothing can be corrected by it. If the certificate states none, write “none stated” on that line.`,
  "nothing-certified": () => "Write down at least one certified element, with its value and its uncertainty.",
  "certified-value-missing": (p) =>
    `${quoted(p.found)} needs one certified value, or for a blank one bound (“< 1”), and not both.`,
  "standard-name-taken": (p) =>
    `The name ${quoted(p.found)} already belongs to the check standard ${quoted(p.allowed)}. Two standards of one name could not be told apart in a file.`,
  "is-check-reading": (p) =>
    `Reading ${p.found ?? ""} was taken on a check standard, so it cannot be put on a part. If that is wrong, say so on the check standard’s page first.`,
  "reading-on-part": (p) =>
    `Reading ${p.found ?? ""} is on a part of an item. Take it off there first, so that a page does not lose it unseen.`,
  "not-a-claim": () =>
    "That session’s time does not hold this reading. Choose one of those that do, or change a session’s start or end.",
  "certificate-kind": (p) =>
    `The certificate is not a PDF or a picture${p.found ? ` (${p.found})` : ""}. Nothing was stored.`,
};
