import { IntervalStrip } from "../interval-strip.tsx";
import type { StripInput } from "../interval-strip-layout.ts";
import type { Example } from "./example.ts";

const paint = { id: "paint", value: 90, label: "paint on children’s goods, US" };
const child = { id: "child", value: 100, label: "children’s products, US" };
const plain: StripInput = {
  unit: "mg/kg",
  value: 412,
  interval: [377, 447],
  bound: null,
  range: null,
  worst: { value: 423, label: "highest spot 423" },
  limits: [child],
  label: "412 ± 35 mg/kg",
};

export const stripStates: { id: string; title: string; input: StripInput }[] = [
  { id: "above", title: "Above one limit", input: plain },
  {
    id: "too-close",
    title: "Too close to call, two limits close together",
    input: {
      ...plain,
      value: 92.1,
      interval: [84.6, 99.6],
      worst: null,
      limits: [paint, child],
      label: "92.1 ± 7.5 mg/kg",
    },
  },
  {
    id: "below",
    title: "Below",
    input: { ...plain, value: 22, interval: [19.3, 24.6], worst: null, label: "22.0 ± 2.7 mg/kg" },
  },
  {
    id: "not-detected",
    title: "Not detected: an open bar up to its bound",
    input: { ...plain, value: null, interval: null, bound: 5, worst: null, label: "not detected, below 5 mg/kg" },
  },
  {
    id: "not-quantified",
    title: "Found at one spot of three: an upper bound and the spot",
    input: {
      ...plain,
      value: null,
      interval: null,
      bound: 19.4,
      worst: { value: 14, label: "found at one spot: 14" },
      limits: [{ id: "cd", value: 1000, label: "cadmium in paints, EU" }],
      label: "below 19 mg/kg",
    },
  },
  {
    id: "uneven",
    title: "Uneven: range of the spots, worst spot, a lopsided interval",
    input: {
      ...plain,
      value: 102,
      interval: [73, 159],
      range: [61, 148],
      worst: { value: 148, label: "highest spot 148" },
      limits: [paint],
      label: "102 mg/kg (73 to 159)",
    },
  },
  {
    id: "many-limits",
    title: "Six limits, some nearly the same",
    input: {
      ...plain,
      value: 95,
      interval: [80, 110],
      worst: { value: 120, label: "highest spot 120" },
      limits: [
        paint,
        child,
        { id: "a", value: 93, label: "a guidance value" },
        { id: "b", value: 500, label: "jewellery, one region" },
        { id: "c", value: 75, label: "a very long name of a limit that will not fit a narrow page whatever is done" },
        { id: "d", value: 1000, label: "plastics" },
      ],
      label: "95 ± 15 mg/kg",
    },
  },
  {
    id: "off-right",
    title: "A fixed axis: the value lies beyond its right end, a limit beyond its left",
    input: {
      ...plain,
      value: 21000,
      interval: [19000, 23000],
      worst: { value: 23500, label: "highest spot 23 500" },
      limits: [{ id: "low", value: 0.5, label: "a low limit" }, child],
      label: "21 000 ± 2000 mg/kg",
      domain: [5, 5000],
    },
  },
  {
    id: "to-zero",
    title: "An interval that reaches down to zero",
    input: { ...plain, value: 8, interval: [0, 31], worst: null, label: "8 mg/kg (0 to 31)" },
  },
  {
    id: "far-apart",
    title: "Value and limit ten thousand times apart",
    input: {
      ...plain,
      value: 310000,
      interval: [290000, 330000],
      worst: null,
      limits: [paint],
      label: "310 000 ± 20 000 mg/kg",
    },
  },
  { id: "no-limit", title: "No limit to compare with", input: { ...plain, limits: [] } },
  {
    id: "nothing",
    title: "No readings",
    input: { ...plain, value: null, interval: null, worst: null, limits: [paint], label: "" },
  },
];

export const intervalStripExamples: Example[] = [
  ...stripStates.map(({ id, title, input }) => ({
    id: `strip-${id}`,
    title,
    show: (
      <IntervalStrip input={input} sentence={`Example: ${input.label}.`} axisNote="mg/kg; each step is a multiple" />
    ),
  })),
  ...stripStates.slice(0, 7).map(({ id, title, input }) => ({
    id: `strip-small-${id}`,
    title: `Small: ${title.toLowerCase()}`,
    show: <IntervalStrip input={input} sentence={`Example: ${input.label}.`} size="small" />,
  })),
];
