import type { ReferenceLoading } from "../amounts/types.ts";
import { DomainError } from "../quantity/domain-error.ts";
import { findLimit } from "./limits-in-force.ts";

/** The published dust loadings an amount is held against, oldest first on each surface: numbers, dates and checks are the limits' own. */
const chosen: readonly [ReferenceLoading["surface"], string][] = [
  ["floor", "EPA-DLHS-FLOOR-2001"],
  ["floor", "EPA-DLHS-FLOOR-2019"],
  ["floor", "EPA-DLAL-2024-FLOOR"],
  ["sill", "EPA-DLHS-SILL-2001"],
  ["sill", "EPA-DLHS-SILL-2019"],
  ["sill", "EPA-DLAL-2024-SILL"],
  ["trough", "EPA-CLR-2001-TROUGH"],
  ["trough", "EPA-DLCL-2021-TROUGH"],
  ["trough", "EPA-DLAL-2024-TROUGH"],
];

/**
 * Reference loadings with their dates, µg/ft²: floors 40, 10, 5; sills 250, 100, 40; troughs 400, 400, 100. The level that is in force
 * on floors and sills since 2025 without a number (any reportable value) has no place in arithmetic and stands on the page of limits.
 *
 * @example referenceLoadings().filter((r) => r.surface === "floor").map((r) => r.value) // [40, 10, 5]
 */
export const referenceLoadings = (): ReferenceLoading[] =>
  chosen.map(([surface, limitId]) => {
    const limit = findLimit(limitId);
    if (limit === null || limit.value === null || limit.quantity !== "dust-loading")
      throw new DomainError(
        "unknown-limit",
        "a reference loading must be a limit on settled dust with a number",
        limitId,
      );
    return {
      limitId,
      title: limit.title,
      surface,
      value: limit.value,
      failsAt: limit.failsAt,
      from: limit.from,
      until: limit.until,
      complianceFrom: limit.complianceFrom ?? null,
      checked: limit.checked,
    };
  });
