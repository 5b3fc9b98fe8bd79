import { LimitTimeline } from "../limit-timeline.tsx";
import type { TimelineStep } from "../limit-timeline-layout.ts";
import { ScaleDrawing } from "../scale-drawing.tsx";
import { areaDrawing, type DrawingSize, grainDrawing } from "../scale-drawing-layout.ts";
import type { Example } from "./example.ts";

const today = "2026-11-24";
const step = (id: string, number: string, years: string, from: string | null, more: Partial<TimelineStep> = {}) => ({
  id,
  number,
  period: years,
  years,
  from,
  until: null,
  never: false,
  complianceFrom: null,
  ...more,
});
const timeline = (title: string, steps: TimelineStep[]) => (
  <LimitTimeline title={title} input={{ today, steps, marks: [{ id: "today", day: today, text: "today" }] }} />
);

const coins = [
  { id: "a", label: "small coin", diameterMm: 16.25 },
  { id: "b", label: "large coin", diameterMm: 24.26 },
];
const grains = (diameterMm: number) => {
  const make = (size: DrawingSize) =>
    grainDrawing(
      { grain: { label: "the ball", diameterMm }, coins, enlarged: (times) => `${times} times as large` },
      size,
    );
  return { narrow: make("narrow"), wide: make("wide") };
};
const areas = (m2: number, interval: readonly [number, number] | null) => {
  const make = (size: DrawingSize) =>
    areaDrawing(
      {
        area: { label: "this area", m2, interval },
        others: [
          { id: "court", label: "tennis court", sides: [23.77, 10.97] },
          { id: "room", label: "classroom floor", sides: [9.144, 9.144] },
        ],
      },
      size,
    );
  return { narrow: make("narrow"), wide: make("wide") };
};

/** A limit through time, and drawings to scale, in each state. Invented figures. */
export const scaleFigureExamples: Example[] = [
  {
    id: "timeline",
    title: "A limit through time: over, in force, to come",
    show: timeline("The number went from 300 to 100 mg/kg; 50 mg/kg from 1 January 2028", [
      step("1", "300 mg/kg", "2009 to 2011", "2009-08-14", { until: "2011-08-13" }),
      step("2", "100 mg/kg", "2011 to 2027", "2011-08-14", { until: "2027-12-31" }),
      step("3", "50 mg/kg", "from 2028", "2028-01-01"),
    ]),
  },
  {
    id: "timeline-unsure",
    title: "A limit whose start is not known, one that never took effect, one asked for later",
    show: timeline("90 mg/kg today", [
      step("1", "600 mg/kg", "until 2019", null, { until: "2019-12-31" }),
      step("2", "5 mg/kg", "never took effect", "2022-01-01", { until: "2021-12-31", never: true }),
      step("3", "90 mg/kg", "since 2022", "2022-01-01", { complianceFrom: "2024-01-01" }),
    ]),
  },
  {
    id: "grain",
    title: "A ball beside coins",
    show: <ScaleDrawing drawings={grains(8.8)} title="The ball would be 8.8 mm across." note="Life size on paper." />,
  },
  {
    id: "grain-tiny",
    title: "A ball too small to see",
    show: <ScaleDrawing drawings={grains(0.2)} title="The ball would be 0.2 mm across." />,
  },
  {
    id: "grain-huge",
    title: "A ball too large for the sheet",
    show: <ScaleDrawing drawings={grains(120)} title="The ball would be 120 mm across." note="Drawn smaller." />,
  },
  {
    id: "area",
    title: "An area with its range",
    show: <ScaleDrawing drawings={areas(334, [158, 630])} title="About 1.3 times a tennis court." />,
  },
];
