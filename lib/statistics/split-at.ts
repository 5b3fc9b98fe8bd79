/**
 * Rearranges values so that the `count` smallest come first, in no order: what a full sort would do on both sides of one cut, in
 * a few passes. Quickselect (Hoare, Comm. ACM 4 (1961) 321) with the middle of three as pivot. Finite numbers only.
 *
 * With 3, 1, 2 and count 1 the 1 comes first; the order of the other two is not promised.
 */
export function splitAt(values: Float64Array, count: number): void {
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const pivot = middleOf(values[low]!, values[(low + high) >> 1]!, values[high]!);
    let i = low - 1;
    let j = high + 1;
    for (;;) {
      do i++;
      while (values[i]! < pivot);
      do j--;
      while (values[j]! > pivot);
      if (i >= j) break;
      const kept = values[i]!;
      values[i] = values[j]!;
      values[j] = kept;
    }
    // Everything up to j is at most the pivot, everything after at least the pivot.
    if (count - 1 <= j) high = j;
    else low = j + 1;
    if (count === j + 1) return;
  }
}

const middleOf = (a: number, b: number, c: number): number => Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
