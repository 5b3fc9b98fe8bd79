import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { huberProposal2 } from "@/lib/statistics/huber-proposal-2.ts";
import { assayJson } from "../assay/run-assay.ts";

const folder = join(import.meta.dirname, "data");

/** The reference values stand in data/README.md, beside the R expressions that made them. */
const reference = new Map(
  readFileSync(join(folder, "README.md"), "utf8")
    .split("\n")
    .flatMap((line) => {
      const cells = line.split("|").map((cell) => cell.trim());
      const name = /^`((?:meuse\$)?[a-z]+)`$/.exec(cells[1] ?? "")?.[1];
      return name === undefined || cells.length < 10 ? [] : [[name, cells.slice(2, 10).map(Number)] as const];
    }),
);

const sets = [
  { name: "meuse$cadmium", file: "meuse.csv", element: "Cd", column: "cadmium", rows: 155 },
  { name: "meuse$copper", file: "meuse.csv", element: "Cu", column: "copper", rows: 155 },
  { name: "meuse$lead", file: "meuse.csv", element: "Pb", column: "lead", rows: 155 },
  { name: "meuse$zinc", file: "meuse.csv", element: "Zn", column: "zinc", rows: 155 },
  { name: "chem", file: "chem.csv", element: "Cu", column: "copper", rows: 24 },
  { name: "abbey", file: "abbey.csv", element: "Ni", column: "nickel", rows: 31 },
];
const answers = new Map<string, Awaited<ReturnType<typeof assayJson>>>();
for (const file of ["meuse.csv", "chem.csv", "abbey.csv"])
  answers.set(file, await assayJson(join(folder, file), "--unit", "ppm"));
const near = (found: number, expected: number | undefined, relative: number): void =>
  expect(Math.abs(found - (expected ?? Number.NaN)) / Math.abs(expected ?? Number.NaN)).toBeLessThan(relative);

/** One column of the file, read without any of the product's own code. */
function columnOf(file: string, column: string): number[] {
  const [header = "", ...lines] = readFileSync(join(folder, file), "utf8").trim().split("\n");
  const at = header.split(",").indexOf(column);
  return lines.map((line) => Number(line.split(",")[at]));
}

describe.each(sets)("open data $name (R packages sp 1.6.0 and MASS 7.3-58.2): the command against R 4.2.2", (set) => {
  const answer = answers.get(set.file);
  const row = answer.results.find((result: { element: string }) => result.element === set.element);
  const [n, mean, se, t, median, mad, huberMean, huberSd] = reference.get(set.name) ?? [];
  it("conserves the rows", () => {
    expect(n).toBe(set.rows);
    expect(answer.rows).toEqual({ total: set.rows + 1, accepted: set.rows, setAside: 0, blank: 0, header: 1 });
    expect(row).toMatchObject({ readings: set.rows, spots: set.rows, detected: set.rows, sample: null, unit: "mg/kg" });
    expect(columnOf(set.file, set.column)).toHaveLength(set.rows);
  });
  it("gives R's mean, standard error and t", () => {
    near(row.value, mean, 1e-12);
    near(row.u, se, 1e-12);
    near(row.k, t, 1e-12);
    near(row.U, (se ?? 0) * (t ?? 0), 1e-12);
    expect(row.nuEff).toBe(set.rows - 1);
    expect(row.flags).toContain("error-unknown");
  });
  it("gives R's median and MAD", () => {
    near(row.crossCheck.median, median, 1e-12);
    near(row.crossCheck.scaledMad, mad, 1e-9);
  });
  it("gives R's Huber proposal 2 (MASS::hubers)", () => {
    const huber = huberProposal2(columnOf(set.file, set.column));
    near(huber.mean, huberMean, 1e-8);
    near(huber.sd, huberSd, 1e-8);
  });
});
