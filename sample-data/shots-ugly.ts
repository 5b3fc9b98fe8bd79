import type { ShotPlan } from "./shot-plan.ts";

/** The ugly day: analyser B's file after someone opened it in a spreadsheet, typed in it and saved it. Invented. */
export const uglySitting: ShotPlan = {
  file: "ugly-day.csv",
  start: "2026-11-07T14:03:20",
  firstNumber: 402,
  response: 0.99,
  groups: [
    {
      sample: "check Amber",
      mode: "Kunststoff",
      seconds: 60,
      spots: ["1", "2"],
      content: { Pb: 102, Cd: 96, Cr: 115 },
    },
    {
      sample: "R17 turmeric bowl, glaze inside",
      mode: "Glasur",
      seconds: 20,
      spots: ["1", "2", "3", "4", "5"],
      perSpot: 2,
      content: { Pb: { mean: 8700, spread: 0.06 }, Cd: { mean: 1880, spread: 0.05 } },
      missed: { spot: "4", content: { Pb: 640, Cd: 150 } },
      remarks: { "4": "bowl rolled away, first shot half in air" },
    },
    {
      sample: "R17 plum bowl, glaze inside",
      mode: "Glasur",
      seconds: 40,
      spots: ["1", "2", "3", "4", "5"],
      perSpot: 2,
      content: { Pb: { mean: 64, spread: 0.1 } },
    },
    {
      sample: "R17 sage bowl, glaze inside",
      mode: "Glasur",
      seconds: 40,
      spots: ["1", "2", "3", "4"],
      content: { Cr: { mean: 1240, spread: 0.06 } },
    },
    {
      sample: "R17 bowls, unglazed foot",
      mode: "Glasur",
      seconds: 40,
      spots: ["turmeric", "plum", "sage"],
      content: { Pb: { mean: 15, spread: 0.2 } },
    },
    {
      sample: "check Amber",
      mode: "Kunststoff",
      seconds: 60,
      spots: ["3"],
      content: { Pb: 102, Cd: 96, Cr: 115 },
    },
  ],
};
