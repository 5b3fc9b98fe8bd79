import { fitText, textWidth } from "./text-width.ts";

/**
 * Labels over (or under) a line, each tied to a place on it by a leader, put into as few rows as keep them apart.
 * Places are fractions of the width and offsets are px, so a layout made for the narrowest width holds at every wider
 * one: within a row labels keep the order of their places, so the gaps between them can only grow.
 */
export type LabelWish = {
  id: string;
  at: number;
  text: string /** "beside" the leader or "centred" on it */;
  put: "beside" | "centred";
};
/** `dx` is from the place to the label's left edge; `anchor` says which of its edges is exact, for the room kept is generous. */
export type PlacedLabel = {
  id: string;
  at: number;
  text: string;
  dx: number;
  width: number;
  row: number;
  anchor: "start" | "middle" | "end";
};

const gap = 8;
const clearOfLeader = 4;

type Box = { left: number; right: number };
const box = (label: { at: number; dx: number; width: number }, width: number): Box => {
  const left = label.at * width + label.dx;
  return { left, right: left + label.width };
};

type Try = { text: string; size: number; dx: number; anchor: PlacedLabel["anchor"]; price: number };

/** Least share of the width that a label cut short may be given beside its leader. */
const leastRoom = 0.4;

/**
 * Ways to put a label, all of them inside the width: beside its leader or centred on it; where there is no room for that, over it, or
 * beside it and cut short.
 */
function waysToPut(wish: LabelWish, fontSize: number, width: number): Try[] {
  const x = wish.at * width;
  const sized = (room: number): { text: string; size: number } => {
    const text = fitText(wish.text, fontSize, room);
    return { text, size: Math.min(textWidth(text, fontSize), room) };
  };
  const whole = sized(width);
  const { size } = whole;
  const inside = ({ dx, size: own }: Try): boolean => x + dx >= 0 && x + dx + own <= width;
  const right = (one: { text: string; size: number }, price: number): Try => ({
    ...one,
    dx: clearOfLeader,
    anchor: "start",
    price,
  });
  const left = (one: { text: string; size: number }, price: number): Try => ({
    ...one,
    dx: -one.size - clearOfLeader,
    anchor: "end",
    price: price + 0.1,
  });
  const best: Try[] =
    wish.put === "beside"
      ? [right(whole, 0), left(whole, 0)]
      : [{ ...whole, dx: -size / 2, anchor: "middle", price: 0 }];
  const fitting = best.filter(inside);
  if (fitting.length > 0) return fitting;
  const clamped: Try = {
    ...whole,
    dx: Math.min(Math.max(x - size / 2, 0), width - size) - x,
    anchor: "middle",
    price: wish.put === "beside" ? 1.5 : 0.2,
  };
  if (wish.put === "centred") return [clamped];
  const rooms = [width - x - clearOfLeader, x - clearOfLeader] as const;
  const cut = [right(sized(rooms[0]), 1), left(sized(rooms[1]), 1)].filter((one, at) => {
    const room = rooms[at] ?? 0;
    return room >= leastRoom * width && one.size <= room;
  });
  return [clamped, ...cut.filter(inside)];
}

/** How many leaders would run through a label put so; the label's own leader through labels nearer the line counts too. */
function crossings(candidate: PlacedLabel, placed: PlacedLabel[], width: number): number {
  const own = box(candidate, width);
  const x = candidate.at * width;
  return placed.filter((other) => {
    const theirs = box(other, width);
    const otherX = other.at * width;
    const throughMe = other.row > candidate.row && otherX > own.left && otherX < own.right;
    const throughThem = candidate.row > other.row && x > theirs.left && x < theirs.right;
    return throughMe || throughThem;
  }).length;
}

const clashes = (candidate: PlacedLabel, placed: PlacedLabel[], width: number): boolean =>
  placed.some((other) => {
    if (other.row !== candidate.row) return false;
    const [a, b] = [box(candidate, width), box(other, width)];
    const [first, second] = candidate.at <= other.at ? [a, b] : [b, a];
    return first.right + gap > second.left;
  });

function placeInOrder(wishes: LabelWish[], width: number, fontSize: number): { placed: PlacedLabel[]; cost: number } {
  const placed: PlacedLabel[] = [];
  let cost = 0;
  for (const wish of wishes) {
    const ways = waysToPut(wish, fontSize, width);
    let best: { label: PlacedLabel; cost: number } | null = null;
    for (let row = 0; row <= placed.length; row++)
      for (const { text, size, dx, anchor, price: own } of ways) {
        const label = { id: wish.id, at: wish.at, text, dx, width: size, row, anchor };
        if (clashes(label, placed, width)) continue;
        const price = row + 4 * crossings(label, placed, width) + own;
        if (best === null || price < best.cost) best = { label, cost: price };
      }
    if (best !== null) {
      placed.push(best.label);
      cost += best.cost;
    }
  }
  return { placed, cost };
}

/**
 * Places every label; row 0 is next to the line. Several orders are tried and the one with the fewest rows and crossings
 * kept, unless the order given is to stand: the first label then gets the row next to the line.
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  width: number,
  fontSize: number,
  order: "best" | "given" = "best",
): PlacedLabel[] {
  if (order === "given") return placeInOrder([...wishes], width, fontSize).placed;
  const up = [...wishes].sort((a, b) => a.at - b.at);
  const half = width / 2;
  const inward = [...up].sort((a, b) => Math.abs(b.at * width - half) - Math.abs(a.at * width - half));
  const orders = [[...up].reverse(), up, inward, [...inward].reverse()];
  const tries = orders.map((order) => placeInOrder(order, width, fontSize));
  return tries.reduce((best, each) => (each.cost < best.cost ? each : best)).placed;
}
