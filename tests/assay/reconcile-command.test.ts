import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { odsFile, xlsxFile } from "@/sample-data/workbook-files.ts";
import { assay, assayJson, assayProcess } from "./run-assay.ts";

/** Invented files, written for each test. */
const folder = mkdtempSync(join(tmpdir(), "assay-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = (name: string, text: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

const mug = [
  "Reading No,Sample,Spot,Pb (ppm),Pb 2σ,Cd (ppm),Cd 2σ",
  "1,mug,rim,412,18,<12,",
  "2,mug,handle,405,16,<10,",
  "3,mug,base,421,20,<11,",
  "4,bib,front,<9,,55,6",
  "",
  "5,bib,back,<8,,57,6",
].join("\n");

describe("assay reconcile on a file that says everything", async () => {
  const path = file("mug.csv", mug);
  const answer = await assayJson(path);
  const find = (sample: string, element: string) =>
    answer.results.find((row: { sample: string; element: string }) => row.sample === sample && row.element === element);
  it("accounts for every row", async () => {
    expect(answer.rows).toEqual({ total: 7, accepted: 5, setAside: 0, blank: 1, header: 1 });
    expect(answer.problems).toEqual([]);
    expect(answer.method).toEqual({ name: "cupboard-assay-reconcile", version: "2" });
  });
  it("reconciles each sample and element with k read from the header", async () => {
    const lead = find("mug", "Pb");
    expect(answer.results).toHaveLength(4);
    expect(lead).toMatchObject({
      verdict: "quantified",
      unit: "mg/kg",
      readings: 3,
      spots: 3,
      detected: 3,
      flags: [],
      below: null,
    });
    // inverse-variance mean of 412±9, 405±8, 421±10 (no scatter beyond counting): R
    // w <- 1/c(9,8,10)^2; sum(w*c(412,405,421))/sum(w) = 411.4897379
    expect(lead.value).toBeCloseTo(411.4897379, 3);
    expect(lead.highestSpot).toMatchObject({ spot: "base", value: 421 });
    expect(lead.interval).toHaveLength(2);
  });
  it("states a non-detect as below its limit and never as a number", async () => {
    expect(find("mug", "Cd")).toMatchObject({
      verdict: "not detected",
      value: null,
      U: null,
      interval: null,
      below: 12,
      detected: 0,
    });
    expect(find("bib", "Pb")).toMatchObject({ below: 9, value: null });
  });
  it("adds a calibration component only when it is given", async () => {
    const with5 = (await assayJson(path, "--calibration", "0.05")).results[0];
    expect(with5.u).toBeGreaterThan(answer.results[0].u);
    expect(with5.u).toBeCloseTo(Math.hypot(answer.results[0].u, 0.05 * answer.results[0].value), 9);
  });
  it("prints a table for people", async () => {
    const { code, stdout, stderr } = await assay("reconcile", path);
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout).toContain("Rows: 7 in the file = 5 accepted + 0 set aside + 1 blank + 1 header");
    expect(stdout).toMatch(/mug\s+lead\s+411 ± /);
    expect(stdout).toMatch(/mug\s+cadmium\s+< 12/);
  });
});

describe("assay reconcile asks for what the file does not say", () => {
  const bare = file("bare.csv", "item;lead;error\nmug;412,5;9,5\nmug;405,5;8,5\n");
  const oneSentence = (text: string): boolean => text.trim().split("\n").length === 1 && text.trim().endsWith(".");
  it.each([
    ["what the errors cover", [file("k.csv", "Sample,Pb (ppm),Pb error\nmug,412,9\nmug,405,8\n")], "--k"],
    ["the unit", [file("unit.csv", "Sample,Pb,Pb 1σ\nmug,412,9\nmug,405,8\n")], "--unit"],
    ["the decimal mark", [file("mark.csv", "Sample;Pb (ppm)\nmug;1,234\nmug;2,345\n")], "--decimal"],
    ["a bare zero", [file("zero.csv", "Sample,Pb (ppm)\nmug,0\nmug,405\n")], "--zero"],
    ["a dash", [file("dash.csv", "Sample,Pb (ppm)\nmug,-\nmug,405\n")], "--dash"],
    ["a column that is not there", [bare, "--sample", "thing"], "--sample"],
    ["a number of errors that is none", [bare, "--k", "4"], "--k"],
    ["an impossible calibration", [bare, "--calibration", "5"], "--calibration"],
    ["a file that is not there", [join(folder, "none.csv")], "no such file"],
    ["--k against the header", [file("both.csv", "Sample,Pb (ppm),Pb 2σ\nmug,412,9\nmug,405,8\n"), "--k", "1"], "--k"],
  ])("%s", async (_, args, names) => {
    const { code, stdout, stderr } = await assay("reconcile", ...args);
    expect(code).not.toBe(0);
    expect(stdout).toBe("");
    expect(stderr).toContain(names);
    expect(oneSentence(stderr), stderr).toBe(true);
  });
  it("answers with them", async () => {
    const answer = await assayJson(bare, "--unit", "ppm", "--k", "1");
    expect(answer.results).toHaveLength(1);
    expect(answer.results[0]).toMatchObject({ sample: "mug", element: "Pb", readings: 2 });
    expect(answer.results[0].value).toBeGreaterThan(405);
  });
  it("does the same as a command of its own", () => {
    const { code, stdout, stderr } = assayProcess("reconcile", bare, "--unit", "ppm", "--k", "1");
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout).toContain("lead");
    const asked = assayProcess("reconcile", bare, "--unit", "ppm");
    expect([asked.code, asked.stdout]).toEqual([2, ""]);
    expect(asked.stderr).toContain("--k");
  });
  it("says which commands there are", async () => {
    expect((await assay()).stderr).toContain("reconcile");
    expect((await assay("nonsense")).code).not.toBe(0);
  });
});

describe("assay reconcile and rows that cannot be read", () => {
  it("sets them aside, names them, and keeps the books", async () => {
    const answer = await assayJson(file("bad.csv", "Sample,Pb (ppm),Pb 1σ\nmug,412,9\nmug,abc,9\nmug,405,8\n"));
    expect(answer.rows).toEqual({ total: 4, accepted: 2, setAside: 1, blank: 0, header: 1 });
    expect(answer.problems[0]).toMatchObject({ where: { row: 3 }, found: "abc" });
    expect(answer.results[0].readings).toBe(2);
  });
  it("prints no control character that a file brings", async () => {
    const { stdout } = await assay("reconcile", file("esc.csv", "Sample,Pb (ppm),Pb 1σ\nmug\u202e,412,9\n"));
    expect(stdout).toContain("Rows: 2 in the file");
    expect(stdout).not.toContain("\u202e");
  });
  it("keeps coating and bulk apart by the unit, and takes --kind for mass fractions", async () => {
    const path = file("kinds.csv", "Sample,Pb (mg/cm2),Pb 1σ\nrail,0.85,0.03\nrail,0.91,0.03\n");
    expect((await assayJson(path)).results[0]).toMatchObject({ quantity: "coating-areal", unit: "mg/cm²" });
    const ppm = file("ppm.csv", "Sample,Pb (ppm),Pb 1σ\nrail,85,3\nrail,91,3\n");
    expect((await assayJson(ppm)).results[0].quantity).toBe("bulk-mass-fraction");
    expect((await assayJson(ppm, "--kind", "coating")).results[0].quantity).toBe("coating-mass-fraction");
  });
});

describe("assay reconcile on a workbook", () => {
  const sheet = (name: string) => ({ name, rows: mug.split("\n").map((line) => line.split(",")) });
  it.each([
    ["mug.xlsx", xlsxFile([sheet("Readings")])],
    ["mug.ods", odsFile([sheet("Readings")])],
  ])("%s: the same answer as from CSV", async (name, bytes) => {
    const [fromText, fromBook] = [await assayJson(file("same.csv", mug)), await assayJson(file(name, bytes))];
    expect(fromBook.results).toEqual(fromText.results);
    expect(fromBook.rows).toEqual(fromText.rows);
  });
  it("several sheets with a table are asked for, never guessed", async () => {
    const path = file(
      "two.xlsx",
      xlsxFile([sheet("Monday"), { name: "Cover", rows: [["Invented"]] }, sheet("Tuesday")]),
    );
    const asked = await assay("reconcile", path);
    expect(asked).toMatchObject({ code: 2, stdout: "" });
    expect(asked.stderr).toBe(
      'This workbook has 2 sheets with a table ("Monday", "Tuesday"); say which with --sheet.\n',
    );
    expect((await assayJson(path, "--sheet", "Tuesday")).results).toHaveLength(4);
    expect((await assay("reconcile", path, "--sheet", "Friday")).stderr).toMatch(/no sheet called “Friday”/);
    expect((await assay("reconcile", file("text.csv", mug), "--sheet", "x")).stderr).toMatch(/is no workbook/);
  });
});
