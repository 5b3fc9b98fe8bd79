import { DomainError } from "../quantity/domain-error.ts";

/** A list of finite numbers, at least `least` of them. Nothing is skipped: one bad number refuses the list. */
export const requireNumbers = (name: string, list: readonly number[], least = 1): void => {
  if (list.length < least)
    throw new DomainError(
      list.length === 0 ? "empty" : "too-few",
      `${name} needs at least ${least} number(s)`,
      list.length,
    );
  for (const number of list)
    if (typeof number !== "number" || !Number.isFinite(number))
      throw new DomainError("not-finite", `${name} holds something that is not a finite number`, number);
};

/** Values with a standard uncertainty each: same length, all finite, every uncertainty above zero. */
export const requireReadings = (x: readonly number[], u: readonly number[], least = 1): void => {
  requireNumbers("x", x, least);
  requireNumbers("u", u, 0);
  if (x.length !== u.length) throw new DomainError("length-mismatch", "x and u differ in length", [x.length, u.length]);
  for (const uncertainty of u)
    if (uncertainty <= 0)
      throw new DomainError("not-positive", "a standard uncertainty must be above zero", uncertainty);
};

/** One flag for each value. */
export const requireFlags = (x: readonly number[], censored: readonly boolean[]): void => {
  if (x.length !== censored.length)
    throw new DomainError("length-mismatch", "values and censored differ in length", [x.length, censored.length]);
  for (const flag of censored)
    if (typeof flag !== "boolean") throw new DomainError("not-a-flag", "censored holds true or false only", flag);
};

/** A confidence level or probability strictly between 0 and 1. */
export const requireLevel = (level: number, name = "level"): void => {
  if (typeof level !== "number" || !(level > 0 && level < 1))
    throw new DomainError("bad-level", `${name} must lie between 0 and 1`, level);
};

/** The power of two at or below `size`, so that dividing by it changes no digit. 1 for zero. */
export const scaleOf = (size: number): number => (size > 0 ? 2 ** Math.max(-1022, Math.floor(Math.log2(size))) : 1);
