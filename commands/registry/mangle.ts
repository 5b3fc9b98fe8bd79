import type { Snapshot } from "../../lib/publication/snapshot.ts";
import type { Random } from "../coverage/random.ts";
import { pick } from "./invented-items.ts";

/** A word with one slip: two neighbours swapped, a letter left out, doubled or wrong. Never its first. */
export function slipped(random: Random, word: string): string {
  const at = 1 + Math.floor(random.uniform() * (word.length - 2));
  const [before, here, next, after] = [word.slice(0, at), word[at] ?? "", word[at + 1] ?? "", word.slice(at + 2)];
  switch (Math.floor(random.uniform() * 4)) {
    case 0:
      return here === next ? before + next + after : before + next + here + after;
    case 1:
      return before + next + after;
    case 2:
      return before + here + here + next + after;
    default:
      return `${before}${here === "e" ? "a" : "e"}${next}${after}`;
  }
}

/** How somebody who holds this item may ask for it: by its code, its mark, or its name with a part of the mark. */
export function askedFor(random: Random, { item }: Snapshot): string {
  const [, beast = "", rest = ""] = /^A (\w+) (.*)$/.exec(item.marks) ?? [];
  const number = /\d{3}-\d{3}/.exec(item.marks)?.[0] ?? "";
  const words = item.name.toLowerCase().split(" ");
  const thing = /, a (\w+) and/.exec(rest)?.[1] ?? "";
  return pick(random, [
    () => (item.gtin ? item.gtin.replace(/^0/, "") : `${beast} ${number}`),
    () => number,
    () => number.replace("-", ""),
    () => `number ${number.replace("-", " ")}`,
    () =>
      `${slipped(
        random,
        pick(
          random,
          words.filter((word) => word.length > 3 && word !== "with"),
        ),
      )} ${number}`,
    () => `${number} ${thing} ${beast}`,
    () => `${words[0]} ${words[1]} ${beast}s ${number}`,
  ])();
}
