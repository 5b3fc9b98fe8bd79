/**
 * What the invented objects are made of and how they were shot: the input of make-files.ts. Nothing here was measured.
 * The contents are ours to choose, so a test may ask whether a reported interval holds the content chosen here.
 */

/** Content at a spot, mg/kg (µg/cm² in film mode): one number, or a mean with a relative lognormal spread over spots. */
export type Content = number | { mean: number; spread: number };

export type ShotGroup = {
  sample: string; // text of the sample column
  mode: string;
  seconds: number;
  spots: string[];
  perSpot?: number; // shots at each spot, 1 if absent
  /** Elements of the mode that are absent here hold nothing and read as not detected. */
  content: Record<string, Content>;
  /** Remarks by spot, written on the first shot there. */
  remarks?: Record<string, string>;
  /** A shot that missed: what it read instead. */
  missed?: { spot: string; content: Record<string, Content> };
  /** The analyser reads this many times the content (a dirty window); 1 if absent. */
  response?: number;
  /** Minutes before the first shot of the group, 2 if absent. */
  pauseMinutes?: number;
};

export type ShotPlan = {
  file: string;
  start: string; // local clock, ISO without offset
  firstNumber: number;
  /** Overall factor of the analyser on this day, what a check standard is there to show. */
  response: number;
  groups: ShotGroup[];
};

/** Elements each mode reports, in column order, with the detection limit in 30 s on an empty matrix (mg/kg, µg/cm²). */
export const modes: Record<string, Record<string, number>> = {
  "glass and glaze": { Pb: 9, Cd: 16, As: 6, Sb: 21, Cr: 42, Hg: 8 },
  metal: { Pb: 26, Cd: 34, As: 18, Sb: 38, Cr: 60 },
  "plastic and wood": { Pb: 5, Cd: 11, As: 4, Sb: 17, Cr: 19, Hg: 6, Br: 3 },
  Glasur: { Pb: 10, Cd: 18, As: 7, Cr: 45 },
  Metall: { Pb: 28, Cd: 36, As: 20, Cr: 70, Sn: 45, Cu: 300 },
  Kunststoff: { Pb: 6, Cd: 12, As: 5, Cr: 22, Sn: 24 },
  "plastique et bois": { Pb: 5.5, Cd: 12, As: 4.5, Sb: 18, Cr: 21 },
  émail: { Pb: 10, Cd: 17, As: 7, Sb: 22, Cr: 44 },
  métal: { Pb: 27, Cd: 35, As: 19, Sb: 40, Cr: 65 },
  film: { Pb: 0.6, Cd: 1.1, Cr: 2.4 },
};
