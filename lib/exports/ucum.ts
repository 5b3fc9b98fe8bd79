/** UCUM codes (ucum.org, case-sensitive form; from memory) of the units that snapshots carry. */
const codes: Record<string, string> = {
  "mg/kg": "mg/kg",
  ppm: "[ppm]",
  "%": "%",
  "mg/cm²": "mg/cm2",
  "µg/cm²": "ug/cm2",
  "µg/ft²": "ug/[sft_i]",
  "µg/mL": "ug/mL",
  "mg/L": "mg/L",
  "µg/kg": "ug/kg",
  "µg/day": "ug/d",
  mg: "mg",
  s: "s",
};

/** UCUM code of a unit, or null where it has none that we know. */
export const ucumCode = (unit: string): string | null => codes[unit] ?? null;
