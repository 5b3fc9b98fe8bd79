/** What can differ from one reading of a part to the next, the outermost first. */
export const factors = ["specimen", "instrument", "operator", "session", "spot"] as const;
export type Factor = (typeof factors)[number];

/** One detected value of one element, in the canonical unit of its kind, and where it comes from; null where that is not known. */
export type LocatedReading = { id: string; value: number } & Record<Factor, string | null>;
