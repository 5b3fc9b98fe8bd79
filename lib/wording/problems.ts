import type { Problem } from "../quantity/problem.ts";
import { accessProblems } from "./access-problems.ts";
import { amountProblems } from "./amount-problems.ts";
import { problemWords as spanish } from "./es/problems.ts";
import { fieldName } from "./form-fields.ts";
import { readable } from "./labels.ts";
import type { Language } from "./language.ts";
import { otherTestProblems } from "./other-tests.ts";
import { photoProblems } from "./photo-problems.ts";
import { allowedText, foundText, type ProblemWords, placeOf, quoted } from "./problem-sentence.ts";
import { publicationProblems } from "./publication-problems.ts";
import { readingProblems } from "./reading-problems.ts";
import { reviewProblems } from "./review-problems.ts";
import { sessionProblems } from "./session-problems.ts";
import { testRequestProblems } from "./test-requests.ts";
import { typedProblems } from "./typed-words.ts";
import { workflowProblems } from "./workflow-problems.ts";

/** A form's field that did not fit. Every form uses this one. */
const formProblems: ProblemWords = {
  "invalid-form": (p) =>
    p.found === undefined || p.found === ""
      ? `Please fill in ${p.where?.field ? `the field ${quoted(fieldName(p.where.field))}` : "what is missing"}.${allowedText(p)}`
      : `Please check ${p.where?.field ? `the field ${quoted(fieldName(p.where.field))}` : "the form"}.${foundText(p)}${allowedText(p)}`,
};

/** Every code that has a sentence of its own, from the files of each room. */
export const problemWords: ProblemWords = {
  ...readingProblems,
  ...workflowProblems,
  ...sessionProblems,
  ...otherTestProblems,
  ...publicationProblems,
  ...photoProblems,
  ...accessProblems,
  ...reviewProblems,
  ...amountProblems,
  ...testRequestProblems,
  ...typedProblems,
  ...formProblems,
};

/**
 * The sentence for a problem. A code without a sentence of its own is not swallowed: its words, its place, what was
 * found and what is allowed are said all the same.
 *
 * @example problemSentence({ code: "slug-taken", found: "blue-mug" })
 * // "Another item already has the address “blue-mug”. Choose another name."
 */
export function problemSentence(problem: Problem): string {
  const words = Object.hasOwn(problemWords, problem.code) ? problemWords[problem.code] : undefined;
  if (words) return words(problem);
  const what = readable(problem.code);
  const place = placeOf(problem);
  return `${place}${place ? what.charAt(0).toLowerCase() + what.slice(1) : what}.${foundText(problem)}${allowedText(problem)}`;
}

/** The same on a reader's page. In another language only what readers' forms can meet has a sentence; the rest is English. */
export function problemSentenceIn(problem: Problem, language: Language): string {
  const words = language === "es" && Object.hasOwn(spanish, problem.code) ? spanish[problem.code] : undefined;
  return words ? words(problem) : problemSentence(problem);
}

/** All of them, each once. */
export const problemSentences = (problems: readonly Problem[]): string[] => [...new Set(problems.map(problemSentence))];
