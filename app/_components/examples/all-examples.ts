import { controlExamples } from "./controls.tsx";
import { entryControlExamples } from "./entry-controls.tsx";
import type { Example } from "./example.ts";
import { figureExamples } from "./figures.tsx";
import { intervalStripExamples } from "./interval-strip.tsx";
import { liveFigureExamples } from "./live-figures.tsx";
import { pieceExamples } from "./pieces.tsx";
import { scaleFigureExamples } from "./scale-figures.tsx";

export const exampleGroups: { title: string; examples: Example[] }[] = [
  { title: "Interval strip", examples: intervalStripExamples },
  { title: "Figures and tables", examples: figureExamples },
  { title: "Through time and to scale", examples: scaleFigureExamples },
  { title: "Figures that answer", examples: liveFigureExamples },
  { title: "Controls", examples: controlExamples },
  { title: "Controls for entering data", examples: entryControlExamples },
  { title: "Pieces of a page", examples: pieceExamples },
];
