import { DomainError } from "../quantity/domain-error.ts";

export type IecMatrix = "polymer" | "metal" | "composite";
export const iecElements = ["Cd", "Pb", "Hg", "Br", "Cr"] as const;
export type IecElement = (typeof iecElements)[number];

export type IecBand = {
  /** "under" the band, "between" (a chemical test is needed), "over" the band, or "none" where the table has no row. */
  band: "under" | "between" | "over" | "none";
  /** At or below this it is under; null where nothing can be (too much scatter, or only a non-detect can). */
  underUpTo: number | null;
  /** At or above this it is over; null where X-rays alone can never say so. */
  overFrom: number | null;
};

type Row = { under: number | null; over: number | null; lodOnly?: boolean };
const at = (under: number | null, over: number | null): Row => ({ under, over });
const lead = { polymer: at(700, 1300), metal: at(700, 1300), composite: at(500, 1500) };

/** Figures in mg/kg before 3σ is taken off or added: ±30 % of the limit in polymers and metals, ±50 % in composites. */
const table: Record<IecElement, Record<IecMatrix, Row | null>> = {
  Cd: {
    polymer: at(70, 130),
    metal: at(70, 130),
    composite: { under: null, over: 150, lodOnly: true },
  },
  Pb: lead,
  Hg: lead,
  Br: { polymer: at(300, null), metal: null, composite: at(250, null) },
  Cr: { polymer: at(700, null), metal: at(700, null), composite: at(500, null) },
};

/**
 * The three-way screening bands of IEC 62321-3-1:2013 for the elements restricted in electrical equipment.
 *
 * under: x ≤ a − 3σ; over: x ≥ b + 3σ; between otherwise. x and σ in mg/kg; σ is the repeatability of the instrument near
 * the limit. `value` null is a non-detect with its detection limit `below`: it is under only if `below` is, and for cadmium
 * in a composite whatever `below` is, since there the table says "not detected". Total chromium and bromine only point to
 * hexavalent chromium and brominated retardants: they are never over.
 * Where 3σ eats the lower figure (3σ ≥ 70 for cadmium in a polymer) nothing can be under, and `underUpTo` is null.
 *
 * Refuses (DomainError) numbers that are not finite or below zero, and a non-detect without its limit.
 *
 * Source: IEC 62321-3-1:2013 screening table, read as reproduced in a test report (second-hand). The edition of 2026 replaces
 * it; its table was not seen. An extra, for comparison only: household objects are not in its scope.
 *
 * @example iecScreening({ element: "Pb", matrix: "polymer", value: 900, sigma: 20 }) // { band: "between", underUpTo: 640, overFrom: 1360 }
 */
export const iecScreening = ({
  element,
  matrix,
  value,
  below = null,
  sigma,
}: {
  element: IecElement;
  matrix: IecMatrix;
  value: number | null;
  below?: number | null;
  sigma: number;
}): IecBand => {
  for (const number of [value ?? 0, below ?? 0, sigma])
    if (!Number.isFinite(number) || number < 0)
      throw new DomainError(
        "not-a-content",
        "value, detection limit and sigma must be finite and zero or more",
        number,
      );
  const content = value ?? below;
  if (content === null) throw new DomainError("no-detection-limit", "a non-detect needs its detection limit", value);
  const row = table[element][matrix];
  if (!row) return { band: "none", underUpTo: null, overFrom: null };
  const lowered = row.under === null ? null : row.under - 3 * sigma;
  const underUpTo = lowered !== null && lowered > 0 ? lowered : null;
  const overFrom = row.over === null ? null : row.over + 3 * sigma;
  const under = row.lodOnly ? value === null : underUpTo !== null && content <= underUpTo;
  const over = value !== null && overFrom !== null && value >= overFrom;
  return { band: under ? "under" : over ? "over" : "between", underUpTo, overFrom };
};
