import { expect, it } from "vitest";
import { isIdentified, readingFingerprint } from "@/lib/readings/reading-fingerprint.ts";
import { readText, usual } from "./read-text.ts";

const first = (text: string) => readText(text, { ...usual, k: 1, noLimit: "keep" }).readings[0]!;
const base = "Reading,Date,Sample,Pb (ppm),Cd (ppm)\n7,2026-05-01 10:00,mug,12.50,<3\n";

it.each([
  ["columns in another order", "Date,Cd (ppm),Reading,Pb (ppm),Sample\n2026-05-01 10:00,<3,7,12.50,mug\n"],
  [
    "another name of the sample, and a note",
    "Reading,Date,Sample,Note,Pb (ppm),Cd (ppm)\n7,2026-05-01 10:00,Mug 2,x,12.50,<3\n",
  ],
  ["other rows before it", "Reading,Date,Sample,Pb (ppm),Cd (ppm)\n7,01.05.2026 10:00,mug,12.50,<3\n"],
  [
    "a row for each element",
    "Reading,Date,Element,Result (ppm)\n7,2026-05-01 10:00,Pb,12.50\n7,2026-05-01 10:00,Cd,<3\n",
  ],
])("the same reading in another file is recognised: %s", (_, text) => {
  expect(readingFingerprint(first(text))).toBe(readingFingerprint(first(base)));
});

it.each([
  ["number", base.replace("7,2026", "8,2026")],
  ["time", base.replace("10:00", "10:01")],
  ["value, even in its last zero", base.replace("12.50", "12.5")],
  ["limit", base.replace("<3", "<4")],
  ["unit", base.replace("Pb (ppm)", "Pb (%)")],
])("another %s is another reading", (_, text) => {
  expect(readingFingerprint(first(text))).not.toBe(readingFingerprint(first(base)));
});

it("without number and time a reading cannot be told from a repeat", () => {
  expect([isIdentified(first(base)), isIdentified(first("Sample,Pb (ppm)\nmug,12\n"))]).toEqual([true, false]);
});
