/** What a sheet of readings written down by hand says of all its readings, in tests. */
export const sheetSettings = {
  date: "2026-11-20",
  timeZone: "UTC",
  unit: "ppm",
  quantity: "bulk-mass-fraction",
  k: 2,
  decimal: "point",
} as const;
