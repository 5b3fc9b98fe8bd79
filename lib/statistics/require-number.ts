import { DomainError } from "../quantity/domain-error.ts";

// Checks of single numbers; lists are checked in checks.ts.

/** Refuses lists of different length. */
export function requireSameLength(name: string, left: readonly unknown[], right: readonly unknown[]): void {
  if (left.length !== right.length)
    throw new DomainError("length-mismatch", `${name} differ in length`, [left.length, right.length]);
}

/** Refuses anything but one finite number. */
export function requireNumber(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new DomainError("not-finite", `${name} is not a finite number`, value);
}

/** Refuses a number that is not finite and above zero. */
export function requirePositive(name: string, value: number): void {
  requireNumber(name, value);
  if (value <= 0) throw new DomainError("not-positive", `${name} must be above zero`, value);
}

/** Refuses a number that is not finite and zero or more. */
export function requireNotNegative(name: string, value: number): void {
  requireNumber(name, value);
  if (value < 0) throw new DomainError("negative", `${name} must be zero or more`, value);
}

/** Refuses a group's name that is neither text nor a finite number: a NaN names no group. */
export function requireLabel(name: string, label: string | number): void {
  if (typeof label !== "string") requireNumber(name, label);
}
