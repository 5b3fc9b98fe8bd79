import { controlExamples } from "./controls.tsx";
import type { Example } from "./example.ts";
import { figureExamples } from "./figures.tsx";
import { intervalStripExamples } from "./interval-strip.tsx";
import { pieceExamples } from "./pieces.tsx";

export const exampleGroups: { title: string; examples: Example[] }[] = [
  { title: "Interval strip", examples: intervalStripExamples },
  { title: "Figures and tables", examples: figureExamples },
  { title: "Controls", examples: controlExamples },
  { title: "Pieces of a page", examples: pieceExamples },
];
