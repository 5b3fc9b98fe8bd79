import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  limitTimelineLayout,
  type TimelineInput,
  type TimelineLayout,
  type TimelineSize,
  timelineSizes,
} from "@/app/_components/limit-timeline-layout.ts";
import { textWidth } from "@/app/_components/text-width.ts";
import { timelineInput } from "@/app/(catalogue)/limits/[id]/history-figure.tsx";
import { historyOf } from "@/lib/limits/limits-in-force.ts";
import { listLimits, publicLimit } from "@/lib/limits/list-limits.ts";
import { languages } from "@/lib/wording/language.ts";

const day = fc
  .integer({ min: 0, max: 36_500 })
  .map((days) => new Date(Date.UTC(1950, 0, 1) + days * 86_400_000).toISOString().slice(0, 10));
const words = fc.string({ unit: fc.constantFrom(..."abcdeMWO gm ±12,.é漢"), minLength: 1, maxLength: 60 });
const step = fc.record({
  number: words,
  period: words,
  years: words,
  from: fc.option(day),
  until: fc.option(day),
  never: fc.boolean(),
  complianceFrom: fc.option(day),
});
const anyInput: fc.Arbitrary<TimelineInput> = fc.record({
  today: day,
  steps: fc.array(step, { minLength: 1, maxLength: 6 }).map((steps) =>
    steps.map((each, at) => {
      // Days of one number stand in order, as the table of limits holds them.
      const [from, asked, until] = [each.from, each.complianceFrom, each.until].toSorted((a, b) =>
        a === null || b === null ? 0 : a < b ? -1 : 1,
      );
      return { ...each, id: String(at), from: from ?? null, complianceFrom: asked ?? null, until: until ?? null };
    }),
  ),
  marks: fc
    .array(fc.record({ day, text: words }), { maxLength: 3 })
    .map((marks) => marks.map((each, at) => ({ ...each, id: `m${at}` }))),
});

type Box = { id: string; left: number; right: number; top: number; bottom: number };
const boxes = (layout: TimelineLayout, width: number): Box[] => {
  const box = (id: string, at: number, dx: number, size: number, y: number): Box => ({
    id,
    left: at * width + dx,
    right: at * width + dx + size,
    top: y - layout.fontSize * 0.8,
    bottom: y + layout.fontSize * 0.25,
  });
  return [
    ...layout.rows.map((row) => box(`row ${row.id}`, row.at, row.dx, textWidth(row.text, layout.fontSize), row.textY)),
    ...layout.marks.map((mark) => box(`mark ${mark.id}`, mark.at, mark.dx, mark.width, mark.y)),
    ...layout.ticks.map((tick) =>
      box(
        `tick ${tick.text}`,
        tick.at,
        tick.dx,
        textWidth(tick.text, layout.fontSize - 1),
        layout.axisY + layout.fontSize + 5,
      ),
    ),
  ];
};

function check(input: TimelineInput, size: TimelineSize, wider: number): void {
  const layout = limitTimelineLayout(input, size);
  const width = timelineSizes[size].width + wider;
  const all = boxes(layout, width);
  for (const [at, one] of all.entries()) {
    expect(one.left, `${one.id} leaves on the left`).toBeGreaterThanOrEqual(-0.01);
    expect(one.right, `${one.id} leaves on the right`).toBeLessThanOrEqual(width + 0.01);
    expect(one.top, `${one.id} leaves at the top`).toBeGreaterThanOrEqual(0);
    expect(one.bottom, `${one.id} leaves at the bottom`).toBeLessThanOrEqual(layout.height);
    for (const other of all.slice(at + 1))
      expect(
        one.left < other.right - 0.01 &&
          other.left < one.right - 0.01 &&
          one.top < other.bottom &&
          other.top < one.bottom,
        `${one.id} / ${other.id}`,
      ).toBe(false);
  }
  for (const row of layout.rows) {
    expect(row.barY - 6).toBeGreaterThan(row.textY + layout.fontSize * 0.25);
    expect(row.barY + 6).toBeLessThan(layout.axisY);
    for (const bar of row.bars) {
      expect(bar.from).toBeGreaterThanOrEqual(0);
      expect(bar.to).toBeLessThanOrEqual(1);
    }
    if (row.never !== null) {
      expect(row.never * width).toBeGreaterThan(6);
      expect(row.never * width).toBeLessThan(width - 6);
    }
  }
}

describe("nothing overlaps and nothing leaves the box", () => {
  test.each(["narrow", "wide"] as const)("any family, %s", (size) => {
    fc.assert(fc.property(anyInput, fc.integer({ min: 0, max: 900 }), (input, wider) => check(input, size, wider)));
  });
  test.each(["narrow", "wide"] as const)("every family of the registry, %s", (size) => {
    for (const family of new Set(listLimits().map((limit) => limit.family)))
      for (const language of languages)
        check(timelineInput(historyOf(family).map(publicLimit), "2026-11-24", language), size, 0);
  });
});

describe("what the bars say", () => {
  const rows = (family: string, today = "2026-11-24") =>
    limitTimelineLayout(timelineInput(historyOf(family).map(publicLimit), today, "en"), "wide").rows;

  test("children's products: three numbers one after the other, the last in force and open", () => {
    const [first, second, third] = rows("us-childrens-products-pb");
    expect([first, second, third].map((row) => row?.bars.map((bar) => bar.state))).toEqual([
      ["past"],
      ["past"],
      ["now"],
    ]);
    expect(first?.bars[0]?.to).toBeCloseTo(second?.bars[0]?.from ?? 0, 10);
    expect(second?.bars[0]?.to).toBeCloseTo(third?.bars[0]?.from ?? 0, 10);
    expect([second?.openRight, third?.openRight]).toEqual([false, true]);
  });
  test("cookware: a number that never took effect is a mark, the next is in force, the third is to come", () => {
    const cookware = rows("wa-cookware-pb");
    expect(cookware.map((row) => row.bars.map((bar) => bar.state))).toEqual([[], ["now"], ["coming"]]);
    expect(cookware[0]?.never).not.toBeNull();
    expect(cookware[0]?.text).toContain("never took effect");
  });
  test("dust: in effect since 2025, asked for from 2026: one bar in two parts", () => {
    const action = rows("us-clearance-floor")[2];
    expect(action?.bars.map((bar) => bar.state)).toEqual(["waiting", "now"]);
    expect(rows("us-clearance-floor", "2025-06-01")[2]?.bars.map((bar) => bar.state)).toEqual(["waiting", "coming"]);
  });
  test("a start that is not known leaves the bar open on the left", () => {
    const [row] = rows("us-ceramic-cd-flat");
    expect(row?.openLeft).toBe(true);
    expect(row?.bars[0]?.from).toBe(0);
  });
  test("longer in force is a longer bar", () => {
    const [floor2001, floor2019] = rows("us-dust-floor");
    const long = (row: typeof floor2001) => (row?.bars[0]?.to ?? 0) - (row?.bars[0]?.from ?? 0);
    // 6 880 days and 1 834 days (2001-03-06 to 2020-01-05; 2020-01-06 to 2025-01-12)
    expect(long(floor2001) / long(floor2019)).toBeCloseTo(6880 / 1834, 6);
  });
});
