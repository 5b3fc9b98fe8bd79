import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type AreaInput,
  areaDrawing,
  type Drawing,
  type DrawingMark,
  drawingSizes,
  type GrainInput,
  grainDrawing,
  pxPerMm,
  roundBelow,
} from "@/app/_components/scale-drawing-layout.ts";
import { textWidth } from "@/app/_components/text-width.ts";
import { areaComparators, massComparators } from "@/lib/amounts/comparators.ts";

const words = fc.string({ unit: fc.constantFrom(..."abcdeMWO gm ±12,.é漢"), minLength: 1, maxLength: 60 });
const size = fc.constantFrom("narrow" as const, "wide" as const);
const spread = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true }).map((p) => 10 ** p);

const anyGrain: fc.Arbitrary<GrainInput> = fc.record({
  grain: fc.record({ label: words, diameterMm: spread(-4, 4) }),
  coins: fc
    .array(fc.record({ label: words, diameterMm: fc.double({ min: 10, max: 40, noNaN: true }) }), { maxLength: 4 })
    .map((coins) => coins.map((coin, at) => ({ ...coin, id: `coin-${at}` }))),
  enlarged: fc.constant((times: number) => `${times} times as large`),
});
const anyArea: fc.Arbitrary<AreaInput> = fc
  .record({
    area: fc.record({ label: words, m2: spread(-6, 9), interval: fc.option(fc.tuple(spread(-1, 0), spread(0, 1))) }),
    others: fc.array(fc.record({ label: words, sides: fc.tuple(spread(-2, 3), spread(-2, 3)) }), { maxLength: 3 }),
  })
  .map(({ area, others }) => ({
    area: {
      ...area,
      interval: area.interval ? ([area.m2 * area.interval[0], area.m2 * area.interval[1]] as const) : null,
    },
    others: others.map((other, at) => ({ ...other, id: `other-${at}` })),
  }));

type Box = { what: string; left: number; right: number; top: number; bottom: number };
const box = (mark: DrawingMark): Box => {
  switch (mark.kind) {
    case "line":
      return {
        what: "line",
        left: Math.min(mark.x1, mark.x2),
        right: Math.max(mark.x1, mark.x2),
        top: Math.min(mark.y1, mark.y2),
        bottom: Math.max(mark.y1, mark.y2),
      };
    case "rect":
      return { what: "rect", left: mark.x, right: mark.x + mark.width, top: mark.y, bottom: mark.y + mark.height };
    case "circle":
      return {
        what: "circle",
        left: mark.cx - mark.r,
        right: mark.cx + mark.r,
        top: mark.cy - mark.r,
        bottom: mark.cy + mark.r,
      };
    case "text": {
      const wide = textWidth(mark.text, mark.size);
      const left = mark.x - wide * (mark.anchor === "start" ? 0 : mark.anchor === "end" ? 1 : 0.5);
      return {
        what: `“${mark.text}”`,
        left,
        right: left + wide,
        top: mark.y - mark.size * 0.8,
        bottom: mark.y + mark.size * 0.25,
      };
    }
  }
};
const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right - 0.01 && b.left < a.right - 0.01 && a.top < b.bottom - 0.01 && b.top < a.bottom - 0.01;

/** Nothing leaves the sheet; no words lie on other words, nor on a shape. */
function check(drawing: Drawing): void {
  const all = drawing.marks.map(box);
  const inside = (one: Box): boolean =>
    one.left >= -0.01 && one.right <= drawing.width + 0.01 && one.top >= -0.01 && one.bottom <= drawing.height + 0.01;
  expect(
    all.filter((one) => !inside(one)),
    "leaves the sheet",
  ).toEqual([]);
  const texts = drawing.marks.flatMap((mark) => (mark.kind === "text" ? [box(mark)] : []));
  const shapes = drawing.marks.flatMap((mark) => (mark.kind === "rect" || mark.kind === "circle" ? [box(mark)] : []));
  for (const [at, one] of texts.entries())
    expect(
      [...texts.slice(at + 1), ...shapes].filter((other) => overlap(one, other)),
      `lies on ${one.what}`,
    ).toEqual([]);
}

test("a ball beside coins: nothing leaves the sheet, no words overlap", () => {
  fc.assert(
    fc.property(anyGrain, size, (input, each) => check(grainDrawing(input, each))),
    { numRuns: 500 },
  );
});

test("areas side by side: nothing leaves the sheet, no words overlap", () => {
  fc.assert(
    fc.property(anyArea, size, (input, each) => check(areaDrawing(input, each))),
    { numRuns: 500 },
  );
});

const coins = massComparators.flatMap((one) =>
  one.coin ? [{ id: one.id, label: one.name, diameterMm: one.coin.diameter }] : [],
);
const grain = (diameterMm: number, which: "narrow" | "wide" = "wide") =>
  grainDrawing({ grain: { label: "the ball", diameterMm }, coins, enlarged: (n) => `${n} times` }, which);
const circles = (drawing: Drawing) => drawing.marks.flatMap((mark) => (mark.kind === "circle" ? [mark] : []));

describe("the ball is to scale", () => {
  test.each(["narrow", "wide"] as const)("beside its coins, %s", (which) => {
    fc.assert(
      fc.property(spread(-1, 2), (diameterMm) => {
        const drawing = grain(diameterMm, which);
        const drawn = circles(drawing).filter((circle) => circle.ink === "other");
        for (const [at, coin] of drawn.entries())
          expect(coin.r * 2).toBeCloseTo((coins[at]?.diameterMm ?? 0) * drawing.scale * pxPerMm, 6);
        const ball = circles(drawing).find((circle) => circle.ink === "subject");
        expect(ball?.r).toBeCloseTo(Math.max(0.4, (diameterMm * drawing.scale * pxPerMm) / 2), 6);
        expect(drawn.length).toBeGreaterThan(0);
      }),
    );
  });

  test("life size where it fits: a dime is 17.91 mm, at 96 px an inch 67.69 px", () => {
    const drawing = grain(5);
    expect(drawing.scale).toBe(1);
    expect(circles(drawing).find((circle) => circle.ink === "other")?.r).toBeCloseTo(67.69 / 2, 2);
  });

  test("a ball too small to see is drawn once more, by a round number", () => {
    const drawing = grain(0.2);
    // 0.2 mm is 0.756 px; 15 px or more are wanted.
    expect(drawing.enlargedTimes).toBe(20);
    const [small, large] = circles(drawing)
      .filter((circle) => circle.ink === "subject")
      .map((circle) => circle.r);
    expect((large ?? 0) / (small ?? 1)).toBeCloseTo((0.7559 * 20) / 2 / 0.4, 2);
    expect(grain(3).enlargedTimes).toBeNull();
  });

  test("a ball too big for the sheet is drawn smaller by a round number, and so are the coins", () => {
    const drawing = grain(120);
    expect(drawing.scale).toBe(0.5);
    expect(circles(drawing).find((circle) => circle.ink === "subject")?.r).toBeCloseTo((120 * 0.5 * pxPerMm) / 2, 6);
  });
});

describe("the areas are to scale", () => {
  test("every area drawn is the same number of px² to a square metre, the scale bar too", () => {
    const drawing = areaDrawing(
      {
        area: { label: "this much", m2: 632, interval: [500, 800] },
        others: areaComparators.slice(-2).map(({ id, name, sides }) => ({ id, label: name, sides })),
      },
      "wide",
    );
    const rects = drawing.marks.flatMap((mark) => (mark.kind === "rect" ? [mark] : []));
    const perM2 = rects.map((rect) => rect.width * rect.height);
    const [area = 0, low, high, court, pitch] = perM2;
    expect((low ?? 0) / area).toBeCloseTo(500 / 632, 6);
    expect((high ?? 0) / area).toBeCloseTo(800 / 632, 6);
    expect((court ?? 0) / area).toBeCloseTo((78 * 36 * 0.09290304) / 632, 6);
    expect((pitch ?? 0) / area).toBeCloseTo(7140 / 632, 6);
    const bar = drawing.marks.find((mark) => mark.kind === "line" && mark.y1 === mark.y2 && mark.x2 < 300);
    const long = bar?.kind === "line" ? bar.x2 - bar.x1 : 0;
    expect((long / drawing.barMetres) ** 2).toBeCloseTo(area / 632, 6);
  });
  test("all fit the width whatever they are", () => {
    expect(drawingSizes.narrow.width).toBeLessThanOrEqual(320 - 2 * 16 - 17);
  });
});

test("round numbers", () => {
  expect([37, 50, 9.99, 0.2, 1].map(roundBelow)).toEqual([20, 50, 5, 0.2, 1]);
});
