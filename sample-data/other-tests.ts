/** Invented results of other kinds of test, one of each, made before their item's page was published. */
export const otherTests = [
  {
    ...{ slug: "cut-crystal-tumbler", part: "crystal, wall" },
    kind: "leachate",
    element: "Pb",
    ...{ valueText: "2.6", unit: "µg/mL", uText: "0.4", sampleAreaCm2: null, blankText: "< 0.05 µg/mL" },
    ...{ laboratory: "Millpond Bench Laboratory (invented)", reportedOn: "2026-09-14" },
    method: "4 % acetic acid, 24 hours at room temperature; made up for the demonstration",
    note: "One tumbler, filled once.",
  },
  {
    ...{ slug: "wooden-stacking-rings", part: "yellow paint" },
    kind: "wipe",
    element: "Pb",
    ...{ valueText: "< 2.0", unit: "µg/wipe", uText: "", sampleAreaCm2: 100, blankText: "< 2.0 µg" },
    ...{ laboratory: "Millpond Bench Laboratory (invented)", reportedOn: "2026-10-20" },
    method: "one damp wipe over 10 cm by 10 cm; made up for the demonstration",
    note: "",
  },
  {
    ...{ slug: "pull-along-blue-train", part: "blue paint, engine" },
    kind: "laboratory",
    element: "Pb",
    ...{ valueText: "4480", unit: "mg/kg of a coating", uText: "610", sampleAreaCm2: null, blankText: null },
    ...{ laboratory: "Millpond Bench Laboratory (invented)", reportedOn: "2026-10-22" },
    method: "scraped, dissolved and read by plasma; made up for the demonstration",
    note: "38 mg scraped from one buffer.",
  },
] as const;
