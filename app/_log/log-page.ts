/** How much of the log a page shows. */
export const entriesShown = 100;
export const correctionsShown = 30;

/** The entry of the log before which a page goes on, as its address says; null for the newest, and for what is no entry's number. */
export function entryBefore(params: Record<string, string | string[] | undefined>): number | null {
  const { before } = params;
  return typeof before === "string" && /^[1-9]\d{0,8}$/.test(before) ? Number(before) : null;
}
