/** Digits and nothing else. Names are compared so often that a pattern would show in the time. */
function isNumeral(name: string): boolean {
  for (let i = 0; i < name.length; i++) {
    const code = name.charCodeAt(i);
    if (code < 48 || code > 57) return false;
  }
  return name !== "";
}

/**
 * An order of names that every machine agrees on: numerals by size ("2" before "10"), then everything else by code unit.
 * Locale-aware comparison differs between systems, so it is not used.
 */
export function compareNames(a: string, b: string): number {
  if (a === b) return 0;
  const numeralA = isNumeral(a);
  const numeralB = isNumeral(b);
  if (numeralA && numeralB && Number(a) !== Number(b)) return Number(a) - Number(b);
  if (numeralA !== numeralB) return numeralA ? -1 : 1;
  return a < b ? -1 : 1;
}

/** The list in this order, equals as they came. Most lists come in order, and then the list itself is the answer. */
export function inOrder<T>(list: readonly T[], compare: (a: T, b: T) => number): readonly T[] {
  for (let i = 1; i < list.length; i++) if (compare(list[i - 1]!, list[i]!) > 0) return list.toSorted(compare);
  return list;
}

/** Compares numbers with `null` (unknown) last, so that a sorted list fixes the order of every sum. */
export function compareNumbers(a: number | null, b: number | null): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
  return a - b;
}
