import type { Snapshot } from "../../lib/publication/snapshot.ts";
import { sampleSnapshot } from "../../tests/support/sample-snapshot.ts";
import { type Random, randomFrom } from "../coverage/random.ts";

/** Words that invented items are made of; the scenario's own patterns are left out, so that its items stay the only ones.  No combination is meant to be anybody's product. */
const colours = "red blue green yellow orange purple grey white black turquoise amber pink cream brown".split(" ");
const patterns =
  "daisy ivy checked striped dotted swallow thistle acorn feather lattice wave star fern pebble heron lantern".split(
    " ",
  );
const objects: [string, string, string][] = [
  ["mug", "mug-or-cup", "glaze"],
  ["cup", "mug-or-cup", "glaze"],
  ["plate", "plate-or-bowl", "glaze"],
  ["bowl", "plate-or-bowl", "glaze"],
  ["saucepan", "pot-or-pan", "enamel"],
  ["casserole", "baking-dish", "enamel"],
  ["spoon", "cutlery-or-utensil", "steel"],
  ["tumbler", "glassware", "glass"],
  ["jar", "food-storage", "glass"],
  ["spinning top", "toy", "paint"],
  ["rattle", "toy", "paint"],
  ["bear", "soft-toy-or-textile", "textile-print"],
  ["bib", "bib-or-baby-gear", "pvc"],
  ["blocks", "puzzle-or-blocks", "abs"],
  ["key ring", "jewellery-or-key-ring", "zinc-alloy"],
  ["figurine", "ornament", "ceramic-body"],
];
const beasts =
  "snail heron badger otter wren beetle hare toad lynx marten curlew newt stoat plover dormouse grebe vole siskin tench mole".split(
    " ",
  );
const things =
  "anchor lantern thimble kettle bucket ladder trowel bellows spindle hammock compass barrel wicket saddle whistle basket mitten".split(
    " ",
  );
const places =
  "in a ring|under a bridge|over two waves|beside a tree|between leaves|on a hill|in a square|above a crown of dots".split(
    "|",
  );
const ages = ["child-under-3", "child-3-to-12", "teen", "adult", "unknown"] as const;

export const pick = <T>(random: Random, from: readonly T[]): T => from[Math.floor(random.uniform() * from.length)] as T;

/** The last digit of a 14-digit product code (weights 3 and 1 from the right). */
export function withCheckDigit(first13: string): string {
  const sum = [...first13].reduce((acc, digit, i) => acc + Number(digit) * (i % 2 === 0 ? 3 : 1), 0);
  return `${first13}${(10 - (sum % 10)) % 10}`;
}

/** What is the same in every invented item: made once, since a registry of 100,000 is made of it. Its part has ten readings. */
const base = withTenReadings(sampleSnapshot());

function withTenReadings(snapshot: Snapshot): Snapshot {
  const [specimen] = snapshot.specimens;
  const [part] = specimen?.parts ?? [];
  const [result] = part?.results ?? [];
  if (!specimen || !part || !result) throw new Error("the sample has a specimen with a part and a result");
  const readings = Array.from({ length: 10 }, (_, i) => {
    const like = result.readings[i % result.readings.length]!;
    return { ...like, id: `r${i + 1}`, row: i + 1, number: String(100 + i) };
  });
  return { ...snapshot, specimens: [{ ...specimen, parts: [{ ...part, results: [{ ...result, readings }] }] }] };
}

/**
 * Item number `n` of an invented registry: the same for the same number, whatever else is made. Names repeat, as they do
 * in life; the mark holds a number that only this item has.
 */
export function inventedItem(n: number): Snapshot {
  const random = randomFrom(n * 7919 + 17);
  const [object, category, material] = pick(random, objects);
  const colour = pick(random, colours);
  const pattern = pick(random, patterns);
  const decade = 1950 + 10 * Math.floor(random.uniform() * 8);
  const number = String(100_000 + n);
  const [specimen] = base.specimens;
  const [part] = specimen?.parts ?? [];
  if (!specimen || !part) throw new Error("the sample has a specimen with a part");
  return {
    ...base,
    slug: `${colour}-${pattern}-${object.replace(" ", "-")}-${n}`,
    publishedAt: new Date(Date.UTC(2025, 0, 1) + n * 60_000).toISOString(),
    testedOn: new Date(Date.UTC(2020, 0, 1) + (n % 2000) * 86_400_000).toISOString().slice(0, 10),
    item: {
      ...base.item,
      name: `${colour} ${object} with ${pattern} pattern`.replace(/^./, (first) => first.toUpperCase()),
      aliases: [`${pattern} ${object}`],
      marks: `A ${pick(random, beasts)} ${pick(random, places)}, a ${pick(random, things)} and the number ${number.slice(0, 3)}-${number.slice(3)}`,
      maker: null,
      gtin: n % 3 === 0 ? withCheckDigit(`02${String(n).padStart(11, "0")}`) : null,
      category,
      ageGroup: pick(random, ages),
      description: `Made about the ${decade}s.`,
    },
    specimens: [{ ...specimen, parts: [{ ...part, material }] }],
    photos: [],
  };
}
