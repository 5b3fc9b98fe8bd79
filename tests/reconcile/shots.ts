import { createHash } from "node:crypto";
import type { WrittenNumber } from "@/lib/readings/reading.ts";
import { reconcile } from "@/lib/reconcile/reconcile.ts";
import type { ReconcileInput, ReconcileResult, ShotInput } from "@/lib/reconcile/types.ts";

/** Invented readings for unit tests; nothing here was measured. */
export const sha256 = (text: string): string => createHash("sha256").update(text).digest("hex");

export const written = (value: number, decimals?: number): WrittenNumber => {
  const text = decimals === undefined ? String(value) : value.toFixed(decimals);
  return { text, value, decimals: decimals ?? (String(value).split(".")[1] ?? "").length };
};

let serial = 0;
export const shot = (overrides: Partial<ShotInput> = {}): ShotInput => ({
  id: `r${++serial}`,
  spot: null,
  quantity: "bulk-mass-fraction",
  mode: null,
  unit: "mg/kg",
  belowDetection: false,
  value: written(100),
  error: null,
  k: null,
  detectionLimit: null,
  secondsCounted: null,
  takenAt: null,
  setAside: null,
  ...overrides,
});

/** A detected reading value ± u (k = 1). */
export const seen = (value: number, u: number | null, overrides: Partial<ShotInput> = {}): ShotInput =>
  shot({ value: written(value), error: u === null ? null : written(u), k: u === null ? null : 1, ...overrides });

/** A non-detect below a limit; null: no limit was stated. */
export const missed = (limit: number | null, overrides: Partial<ShotInput> = {}): ShotInput =>
  shot({ belowDetection: true, value: null, detectionLimit: limit === null ? null : written(limit), ...overrides });

export const inputOf = (shots: ShotInput[], overrides: Partial<ReconcileInput> = {}): ReconcileInput => ({
  element: "Pb",
  quantity: "bulk-mass-fraction",
  form: "bulk",
  shots,
  contributions: [],
  ...overrides,
});

export const resultOf = (shots: ShotInput[], overrides: Partial<ReconcileInput> = {}): ReconcileResult =>
  reconcile(inputOf(shots, overrides), sha256);
