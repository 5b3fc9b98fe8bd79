import { plainNumber } from "./interval-strip-layout.ts";
import { type LabelWish, placeLabels } from "./label-rows.ts";
import { textWidth } from "./text-width.ts";

/**
 * A drawing as marks on a sheet, px. The same marks become SVG on a page (under its tokens) and a file of its own.
 * `subject` is the thing told about, solid; `other` what it is held against, an outline; `doubt` the ends of its interval.
 */
export type Ink = "subject" | "area" | "other" | "doubt" | "rule" | "leader";
export type DrawingMark =
  | { kind: "line"; x1: number; y1: number; x2: number; y2: number; ink: Ink }
  | { kind: "rect"; x: number; y: number; width: number; height: number; ink: Ink }
  | { kind: "circle"; cx: number; cy: number; r: number; ink: Ink }
  | {
      kind: "text";
      x: number;
      y: number;
      text: string;
      size: number;
      anchor: "start" | "middle" | "end";
      strong: boolean;
    };
export type Drawing = { width: number; height: number; marks: DrawingMark[] };

export const drawingSizes = {
  narrow: { width: 256, fontSize: 13, gap: 26, tallest: 150 },
  wide: { width: 560, fontSize: 14, gap: 44, tallest: 230 },
} as const;
export type DrawingSize = keyof typeof drawingSizes;

/** CSS px to a millimetre: at this scale a print at 100 % is life size. */
export const pxPerMm = 96 / 25.4;

/** A shape with its name, ready to stand on the base line: left edge, width and height in px. */
type Standing = { id: string; label: string; strong: boolean; left: number; width: number; height: number };

/** Names over the shapes in as few rows as keep them apart, each with a thin line down to its shape. */
function namesOver(shapes: readonly Standing[], base: (rows: number) => number, size: DrawingSize): DrawingMark[] {
  const { width, fontSize } = drawingSizes[size];
  const row = fontSize + 6;
  const wishes = shapes.map((shape): LabelWish => {
    const middle = shape.left + shape.width / 2;
    return { id: shape.id, at: middle / width, text: shape.label, put: "centred" };
  });
  const placed = placeLabels(wishes, width, fontSize);
  const rows = rowsOf(placed);
  return placed.flatMap((label): DrawingMark[] => {
    const shape = shapes.find((each) => each.id === label.id);
    const x = label.at * width;
    const y = (rows - 1 - label.row) * row + fontSize;
    const share = label.anchor === "start" ? 0 : label.anchor === "end" ? 1 : 0.5;
    return [
      { kind: "line", x1: x, x2: x, y1: y + 4, y2: base(rows) - (shape?.height ?? 0) - 1, ink: "leader" },
      {
        kind: "text",
        x: x + label.dx + label.width * share,
        y,
        text: label.text,
        size: fontSize,
        anchor: label.anchor,
        strong: shape?.strong ?? false,
      },
    ];
  });
}

const rowsOf = (placed: readonly { row: number }[]): number => Math.max(-1, ...placed.map((each) => each.row)) + 1;

/** Lines first, then shapes, then words: words are never covered. */
const inOrder = (marks: DrawingMark[]): DrawingMark[] => [
  ...marks.filter((mark) => mark.kind === "line"),
  ...marks.filter((mark) => mark.kind !== "line" && mark.kind !== "text"),
  ...marks.filter((mark) => mark.kind === "text"),
];

/** 1, 2 or 5 times a power of ten: the largest that is no more than `most`. `roundBelow(37)` is 20. */
export function roundBelow(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  return ([5, 2, 1].find((step) => step * power <= most * (1 + 1e-9)) ?? 1) * power;
}
const roundAbove = (least: number): number => {
  const below = roundBelow(least);
  if (below >= least) return below;
  const lead = Math.round(below / 10 ** Math.floor(Math.log10(below) + 1e-9));
  return below * (lead === 2 ? 2.5 : 2);
};

export type GrainInput = {
  grain: { label: string; diameterMm: number };
  coins: readonly { id: string; label: string; diameterMm: number }[];
  /** Words over the enlarged grain: "20 times as large". */
  enlarged: (times: number) => string;
};
export type GrainDrawing = Drawing & { scale: number; enlargedTimes: number | null };

const lensRadius = 38;
const smallestSeen = 6;
const foot = 26;
const mostCoins = 3;

/**
 * A ball beside coins on a ruler, life size on paper, or 1 : 2, 1 : 5, 1 : 10 … where it is too big for the sheet. A ball
 * too small to see is drawn as the dot it is and once more in a circle, enlarged by a round number.
 */
export function grainDrawing(input: GrainInput, size: DrawingSize): GrainDrawing {
  const { width, fontSize, gap, tallest } = drawingSizes[size];
  const [first] = input.coins;
  const needed = (scale: number): number =>
    (input.grain.diameterMm + (first?.diameterMm ?? 0)) * scale * pxPerMm + (first ? gap : 0);
  const fits = (scale: number): boolean =>
    needed(scale) <= width && input.grain.diameterMm * scale * pxPerMm <= tallest;
  let scale = 1;
  for (let k = 1; !fits(scale) && k < 1e9; k = roundAbove(k * 1.5)) scale = 1 / k;
  const ppm = scale * pxPerMm;
  const grainPx = input.grain.diameterMm * ppm;
  const enlargedTimes = grainPx < smallestSeen ? roundAbove((smallestSeen * 2.5) / grainPx) : null;

  const standing: Standing[] = [
    { id: "grain", label: input.grain.label, strong: true, left: 0, width: grainPx, height: grainPx },
  ];
  let x = grainPx + gap;
  if (enlargedTimes !== null) {
    const across = lensRadius * 2;
    const label = input.enlarged(enlargedTimes);
    standing.push({ id: "lens", label, strong: false, left: x, width: across, height: across });
    x += across + gap;
  }
  for (const coin of input.coins.slice(0, mostCoins)) {
    const across = coin.diameterMm * ppm;
    if (x + across > width) break;
    standing.push({ id: coin.id, label: coin.label, strong: false, left: x, width: across, height: across });
    x += across + gap;
  }

  const names = namesOver(standing, (rows) => baseOf(rows, standing, fontSize), size);
  const base = baseOf(rowCount(names, fontSize), standing, fontSize);
  const shapes = standing.map((each): DrawingMark => {
    const r = Math.max(each.width / 2, 0.4);
    const ink = each.id === "grain" ? "subject" : each.id === "lens" ? "doubt" : "other";
    return { kind: "circle", cx: each.left + Math.max(each.width / 2, r), cy: base - r, r, ink };
  });
  const lens = standing.find((each) => each.id === "lens");
  if (lens && enlargedTimes !== null) {
    const cx = lens.left + lensRadius;
    shapes.push({ kind: "circle", cx, cy: base - lensRadius, r: (grainPx * enlargedTimes) / 2, ink: "subject" });
  }
  const marks = inOrder([...names, ...shapes, ...ruler(base, ppm, size)]);
  return { width, height: base + foot, marks, scale, enlargedTimes };
}

const baseOf = (rows: number, shapes: readonly Standing[], fontSize: number): number =>
  rows * (fontSize + 6) + 8 + Math.max(...shapes.map((shape) => shape.height));
const rowCount = (names: readonly DrawingMark[], fontSize: number): number =>
  new Set(names.flatMap((mark) => (mark.kind === "text" ? [Math.round(mark.y / (fontSize + 6))] : []))).size;

/** A ruler along the foot: ticks as fine as can be told apart, numbers in centimetres. */
function ruler(base: number, ppm: number, size: DrawingSize): DrawingMark[] {
  const { width, fontSize } = drawingSizes[size];
  const small = fontSize - 2;
  const minor = [1, 5, 10, 50, 100, 500, 1000, 5000].find((mm) => mm * ppm >= 3) ?? 10_000;
  const major = [10, 50, 100, 500, 1000, 5000, 10_000].find((mm) => mm * ppm >= 32 && mm >= minor) ?? 50_000;
  const last = width - textWidth("cm", small) - 4;
  const marks: DrawingMark[] = [{ kind: "line", x1: 0, x2: width, y1: base, y2: base, ink: "rule" }];
  for (let mm = 0; mm * ppm <= width; mm += minor) {
    const x = mm * ppm;
    const isMajor = mm % major === 0;
    const length = isMajor ? 9 : mm % (major / 2) === 0 ? 7 : 4;
    marks.push({ kind: "line", x1: x, x2: x, y1: base, y2: base + length, ink: "rule" });
    const text = plainNumber(mm / 10);
    const room = textWidth(text, small);
    if (!isMajor || (mm > 0 && x + room / 2 + 6 > last)) continue;
    const anchor = mm === 0 ? "start" : "middle";
    marks.push({ kind: "text", x, y: base + 9 + small + 1, text, size: small, anchor, strong: false });
  }
  marks.push({
    kind: "text",
    x: width,
    y: base + 9 + small + 1,
    text: "cm",
    size: small,
    anchor: "end",
    strong: false,
  });
  return marks;
}

export type AreaInput = {
  /** The area told about, m², with the ends of its interval where it has one. */
  area: { label: string; m2: number; interval: readonly [number, number] | null };
  others: readonly { id: string; label: string; sides: readonly [number, number] }[];
};
export type AreaDrawing = Drawing & { barMetres: number };

/**
 * An area as a square beside things of known size, all to one scale, with a scale bar. Dashed squares are the ends of the
 * area's interval. On the narrow sheet things stand upright, on the wide one they lie.
 */
export function areaDrawing(input: AreaInput, size: DrawingSize): AreaDrawing {
  const { width, fontSize, gap, tallest } = drawingSizes[size];
  const side = Math.sqrt(input.area.m2);
  const [low, high] = input.area.interval?.map(Math.sqrt) ?? [side, side];
  const room = Math.max(side, high ?? side);
  const metres = [
    { id: "area", label: input.area.label, strong: true, w: room, h: room },
    ...input.others.map((other) => {
      const [short = 0, long = 0] = [...other.sides].sort((a, b) => a - b);
      const [w, h] = size === "wide" ? [long, short] : [short, long];
      return { id: other.id, label: other.label, strong: false, w, h };
    }),
  ];
  const across = metres.reduce((sum, each) => sum + each.w, 0);
  const ppm = Math.min(
    (width - gap * (metres.length - 1) - 2) / across,
    tallest / Math.max(...metres.map((each) => each.h)),
  );
  let x = 1;
  const standing = metres.map((each): Standing => {
    const left = x;
    x += each.w * ppm + gap;
    return { id: each.id, label: each.label, strong: each.strong, left, width: each.w * ppm, height: each.h * ppm };
  });
  const names = namesOver(standing, (rows) => baseOf(rows, standing, fontSize), size);
  const base = baseOf(rowCount(names, fontSize), standing, fontSize);
  const square = (metresLong: number, ink: Ink): DrawingMark => {
    const px = metresLong * ppm;
    return { kind: "rect", x: 1, y: base - px, width: px, height: px, ink };
  };
  const shapes: DrawingMark[] = [
    square(side, "area"),
    ...(input.area.interval ? [square(low ?? side, "doubt"), square(high ?? side, "doubt")] : []),
    ...standing.slice(1).map(
      (each): DrawingMark => ({
        kind: "rect",
        x: each.left,
        y: base - each.height,
        width: each.width,
        height: each.height,
        ink: "other",
      }),
    ),
  ];
  const bar = scaleBar(base, ppm, size);
  return { width, height: base + foot, marks: inOrder([...names, ...shapes, ...bar.marks]), barMetres: bar.metres };
}

const lengthText = (metres: number): string =>
  metres >= 1000
    ? `${plainNumber(metres / 1000)} km`
    : metres >= 1
      ? `${plainNumber(metres)} m`
      : metres >= 0.01
        ? `${plainNumber(metres * 100)} cm`
        : `${plainNumber(metres * 1000)} mm`;

function scaleBar(base: number, ppm: number, size: DrawingSize): { metres: number; marks: DrawingMark[] } {
  const { width, fontSize } = drawingSizes[size];
  const small = fontSize - 2;
  const metres = roundBelow(width / 3 / ppm);
  const long = metres * ppm;
  const y = base + 12;
  const line = (x1: number, y1: number, x2: number, y2: number): DrawingMark => ({
    kind: "line",
    x1,
    y1,
    x2,
    y2,
    ink: "rule",
  });
  return {
    metres,
    marks: [
      line(0, base, width, base),
      line(0, y, long, y),
      line(0, y - 4, 0, y + 4),
      line(long, y - 4, long, y + 4),
      { kind: "text", x: long + 6, y: y + 4, text: lengthText(metres), size: small, anchor: "start", strong: false },
    ],
  };
}
