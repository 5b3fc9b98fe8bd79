import type { Problem } from "../quantity/problem.ts";

/** What can be wrong with a file of readings, a row of it or a cell. */
export const readingProblems: Record<string, (problem: Problem) => string> = {};
