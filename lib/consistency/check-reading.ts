/** One reading of a check standard for one element, in the unit of its certificate. `value` null: below detection. */
export type CheckReading = {
  id: string;
  takenAt: string; // ISO 8601 with offset
  value: number | null;
  u: number | null; // standard uncertainty of counting; null = unknown
  detectionLimit: number | null;
};

/** What the certificate of a check standard states for one element. */
export type Certificate = { certified: number; uCertified: number };
