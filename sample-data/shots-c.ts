import type { ShotGroup, ShotPlan } from "./shot-plan.ts";

/** Shots of "Shelf analyser C": one sitting by content, one of paint films by area. Invented. */

const amber = (spots: string[]): ShotGroup => ({
  sample: "Étalon Amber",
  mode: "plastique et bois",
  seconds: 60,
  spots,
  content: { Pb: 102, Cd: 96, Cr: 115 },
});
const fern = (spots: string[]): ShotGroup => ({
  sample: "Étalon Fougère",
  mode: "film",
  seconds: 60,
  spots,
  content: { Pb: 21.4, Cr: 9.8 },
});

export const frenchSitting: ShotPlan = {
  file: "carnet-c-2026-10-17.tsv",
  start: "2026-10-17T13:31:05",
  firstNumber: 871,
  response: 1.0,
  groups: [
    amber(["1", "2"]),
    {
      sample: "T13 lapin, impression oreille",
      mode: "plastique et bois",
      seconds: 60,
      spots: ["1", "2", "3", "4", "5"],
      content: { Pb: { mean: 3.4, spread: 0.45 }, Sb: { mean: 61, spread: 0.1 } },
    },
    {
      sample: "T13 lapin, tissu uni",
      mode: "plastique et bois",
      seconds: 60,
      spots: ["1", "2", "3"],
      content: { Sb: { mean: 148, spread: 0.05 } },
    },
    {
      sample: "T13 lapin, œil",
      mode: "plastique et bois",
      seconds: 30,
      spots: ["1", "2"],
      content: {},
      remarks: { "1": "œil bombé, 9 mm" },
    },
    {
      sample: "T14 puzzle, peinture rouge",
      mode: "plastique et bois",
      seconds: 60,
      spots: ["1", "2", "3", "4"],
      content: { Pb: { mean: 47, spread: 0.09 } },
      pauseMinutes: 4,
    },
    {
      sample: "T14 puzzle, peinture verte",
      mode: "plastique et bois",
      seconds: 30,
      spots: ["1", "2", "3", "4", "5"],
      content: { Pb: { mean: 2360, spread: 0.1 }, Cr: { mean: 590, spread: 0.1 } },
    },
    {
      sample: "T14 puzzle, bois nu",
      mode: "plastique et bois",
      seconds: 60,
      spots: ["1", "2"],
      content: {},
    },
    {
      sample: "T15 bateau de bain, coque",
      mode: "plastique et bois",
      seconds: 30,
      spots: ["1", "2", "3", "4"],
      perSpot: 2,
      content: { Pb: { mean: 545, spread: 0.03 }, Cd: { mean: 92, spread: 0.05 }, Sb: { mean: 310, spread: 0.05 } },
    },
    {
      sample: "T15 bateau de bain, pont",
      mode: "plastique et bois",
      seconds: 30,
      spots: ["1", "2", "3"],
      content: {},
    },
    {
      sample: "T16 train, peinture bleue",
      mode: "plastique et bois",
      seconds: 30,
      spots: ["1", "2", "3"],
      content: { Pb: { mean: 4250, spread: 0.07 } },
    },
    {
      sample: "T16 train, roue jaune",
      mode: "plastique et bois",
      seconds: 30,
      spots: ["1", "2", "3"],
      content: { Pb: { mean: 18, spread: 0.1 } },
    },
    {
      sample: "T16 train, essieu",
      mode: "métal",
      seconds: 20,
      spots: ["1", "2"],
      content: {},
    },
    { ...amber(["3", "4"]), pauseMinutes: 5 },
  ],
};

export const filmSitting: ShotPlan = {
  file: "carnet-c-2026-10-24.tsv",
  start: "2026-10-24T10:18:44",
  firstNumber: 934,
  response: 1.12,
  groups: [
    fern(["1", "2"]),
    {
      sample: "T16 train, peinture bleue",
      mode: "film",
      seconds: 40,
      spots: ["1", "2", "3", "4"],
      perSpot: 2,
      content: { Pb: { mean: 27.5, spread: 0.08 } },
    },
    {
      sample: "T14 puzzle, peinture verte",
      mode: "film",
      seconds: 40,
      spots: ["1", "2", "3", "4"],
      perSpot: 2,
      content: { Pb: { mean: 14.6, spread: 0.1 }, Cr: { mean: 3.9, spread: 0.1 } },
    },
    {
      sample: "S06 anneaux, peinture rouge",
      mode: "film",
      seconds: 60,
      spots: ["1", "2", "3"],
      content: { Pb: 0.35 },
    },
    {
      sample: "S06 anneaux, peinture jaune",
      mode: "film",
      seconds: 40,
      spots: ["1", "2", "3", "4"],
      content: { Pb: { mean: 8.9, spread: 0.4 }, Cr: { mean: 6.4, spread: 0.3 } },
    },
    { ...fern(["3"]), pauseMinutes: 4 },
  ],
};
