/**
 * How many slips lead from one word to the other: a letter wrong, missing, too many, or two neighbours swapped
 * (optimal string alignment distance, Boytsov 2011, section 2.1). Ends early above `most` and then gives `most + 1`.
 * Our own few lines, since the kept libraries count a swap as two slips.
 *
 * @example editDistance("popyp", "poppy", 2) // 1
 * @example editDistance("mug", "bell", 1) // 2
 */
export function editDistance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(at(above, j) + 1, at(row, j - 1) + 1, at(above, j - 1) + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, at(before, j - 2) + 1);
      row.push(least);
    }
    if (Math.min(...row) > most) return most + 1;
    before = above;
    above = row;
  }
  return Math.min(at(above, b.length), most + 1);
}

const at = (row: number[], index: number): number => row[index] as number;

/**
 * How many slips a word of this length may hold and still be read as another word: none up to three letters, one up to
 * seven, two beyond. A word with a digit in it is never guessed at: one digit off is another code (policy).
 *
 * @example slipsAllowed("poppy") // 1
 * @example slipsAllowed("a1234") // 0
 */
export const slipsAllowed = (word: string): number =>
  /\d/.test(word) || word.length < 4 ? 0 : word.length < 8 ? 1 : 2;
