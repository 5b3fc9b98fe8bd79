/** The number of a revision as an address writes it: 1, 2 … without zeros before; null where it is none. */
export const revisionNumber = (text: string): number | null => (/^[1-9]\d{0,6}$/.test(text) ? Number(text) : null);
