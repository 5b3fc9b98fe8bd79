import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  plainNumber,
  type StripInput,
  type StripLayout,
  type StripSize,
  stripLayout,
  stripSizes,
} from "@/app/_components/interval-strip-layout.ts";

const content = fc.double({ min: -6, max: 7, noNaN: true }).map((power) => 10 ** power);
const words = fc.string({ unit: fc.constantFrom(..."abcdeMWO gm ±12,.é漢"), minLength: 1, maxLength: 60 });
const pair = fc.tuple(content, content).map(([a, b]): [number, number] => [Math.min(a, b), Math.max(a, b)]);

const anyInput: fc.Arbitrary<StripInput> = fc.record({
  unit: fc.constant("mg/kg"),
  value: fc.option(content),
  interval: fc.option(
    fc.oneof(
      pair,
      pair.map(([, hi]): [number, number] => [-hi, hi]),
    ),
  ),
  bound: fc.option(content),
  range: fc.option(pair),
  worst: fc.option(fc.record({ value: content, label: words })),
  limits: fc
    .oneof(
      fc.array(fc.record({ value: content, label: words }), { maxLength: 8 }),
      fc.array(fc.record({ value: fc.double({ min: 88, max: 101, noNaN: true }), label: words }), { maxLength: 8 }),
    )
    .map((limits) => limits.map((limit, index) => ({ ...limit, id: `limit-${index}` }))),
  label: words,
});

type Box = { id: string; left: number; right: number; top: number; bottom: number };
const boxes = (layout: StripLayout, width: number): Box[] =>
  layout.labels.map((label) => ({
    id: `${label.kind} ${label.id}`,
    left: label.at * width + label.dx,
    right: label.at * width + label.dx + label.width,
    top: label.y - layout.fontSize * 0.8,
    bottom: label.y + layout.fontSize * 0.25,
  }));

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right - 0.01 && b.left < a.right - 0.01 && a.top < b.bottom && b.top < a.bottom;

function check(input: StripInput, size: StripSize, width: number): void {
  const layout = stripLayout(input, size);
  const all = boxes(layout, width);
  for (const [index, one] of all.entries()) {
    expect(one.left, `${one.id} leaves on the left`).toBeGreaterThanOrEqual(-0.01);
    expect(one.right, `${one.id} leaves on the right`).toBeLessThanOrEqual(width + 0.01);
    expect(one.top, `${one.id} leaves at the top`).toBeGreaterThanOrEqual(0);
    expect(one.bottom, `${one.id} leaves at the bottom`).toBeLessThanOrEqual(layout.height);
    for (const other of all.slice(index + 1)) expect(overlap(one, other), `${one.id} / ${other.id}`).toBe(false);
  }
  const places = [
    layout.bar?.from,
    layout.bar?.to,
    layout.value?.at,
    layout.range?.from,
    layout.range?.to,
    layout.worst?.at,
    ...layout.limits.map((limit) => limit.at),
    ...layout.ticks.map((tick) => tick.at),
  ];
  for (const place of places) if (place !== undefined) expect(place >= 0 && place <= 1).toBe(true);
  // Every limit keeps its name; in a list, where a number is the name, each number once.
  const named = layout.labels.filter((label) => label.kind === "limit");
  const numbers = new Set(input.limits.map((limit) => plainNumber(limit.value)));
  expect(named).toHaveLength(size === "small" ? numbers.size : input.limits.length);
}

describe("interval strip, over 500 random cases", () => {
  for (const size of ["narrow", "wide", "widest", "small"] as const)
    test(`${size}: no two labels overlap and nothing leaves the box, at its own width and every wider one`, () => {
      const widths = fc.double({ min: stripSizes[size].width, max: 1200, noNaN: true });
      fc.assert(
        fc.property(anyInput, widths, (input, width) => {
          check(input, size, stripSizes[size].width);
          check(input, size, width);
          check(input, size, 1200);
        }),
        { numRuns: 500 },
      );
    });
});

describe("interval strip", () => {
  const plain: StripInput = {
    unit: "mg/kg",
    value: 92.1,
    interval: [84.6, 99.6],
    bound: null,
    range: null,
    worst: null,
    limits: [
      { id: "a", value: 90, label: "paint on children's goods" },
      { id: "b", value: 100, label: "children's products" },
    ],
    label: "92.1 ± 7.5 mg/kg",
  };

  test("in a list, two limits of one number are one line and one number", () => {
    const limits = [90, 90, 100, 40].map((value, at) => ({ id: String(at), value, label: "" }));
    const layout = stripLayout({ ...plain, limits }, "small");
    expect(layout.labels.filter((label) => label.kind === "limit").map((label) => label.text)).toHaveLength(3);
    expect(layout.limits.map((limit) => limit.id).sort()).toEqual(["0", "2", "3"]);
  });

  test("keeps the order of numbers on the axis", () => {
    const layout = stripLayout(plain, "wide");
    const [a, b] = layout.limits.toSorted((x, y) => x.at - y.at);
    expect(a?.id).toBe("a");
    expect(b?.id).toBe("b");
    expect(layout.bar?.from).toBeLessThan(layout.value?.at ?? 0);
    expect(layout.value?.at).toBeLessThan(layout.bar?.to ?? 0);
    expect(a?.at).toBeLessThan(layout.value?.at ?? 0);
  });

  test("a non-detect is an open bar from the left edge to its bound", () => {
    const layout = stripLayout({ ...plain, value: null, interval: null, bound: 5 }, "narrow");
    expect(layout.bar).toMatchObject({ open: true, from: 0, offLeft: true });
    expect(layout.value).toBeNull();
  });

  test("an interval that reaches zero runs off the left end", () => {
    expect(stripLayout({ ...plain, interval: [-3, 99] }, "wide").bar).toMatchObject({ from: 0, offLeft: true });
  });

  test("values beyond a given axis are marked at both ends", () => {
    const limits = [{ id: "low", value: 0.5, label: "low" }];
    const layout = stripLayout({ ...plain, value: 9000, interval: null, limits, domain: [10, 1000] }, "wide");
    expect(layout.value?.off).toBe("right");
    expect(layout.limits[0]?.off).toBe("left");
  });

  test("nothing to show still gives an axis", () => {
    const layout = stripLayout({ ...plain, value: null, interval: null, limits: [] }, "narrow");
    expect(layout.bar).toBeNull();
    expect(layout.ticks.length).toBeGreaterThan(1);
  });

  test("numbers on the axis are plain", () => {
    expect([12500, 0.05, 90, 1e6].map((value) => plainNumber(value))).toEqual([
      "12\u202F500",
      "0.05",
      "90",
      "1\u202F000\u202F000",
    ]);
  });
});
