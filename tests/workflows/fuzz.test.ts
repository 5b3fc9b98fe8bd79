import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { caseBytes } from "@/commands/fuzz/case-bytes.ts";
import { type Ending, runFile, runPicture } from "@/commands/fuzz/cases.ts";
import { createItemWorkflow } from "@/lib/workflows/create-item.ts";
import { mugWords, must } from "../support/bench-item.ts";
import { contextAs } from "../support/test-context.ts";

/** A small part of `npm run fuzz`, which sends thousands; what that finds is kept here by its case and seed. */
const bugs = (endings: readonly Ending[]) => endings.filter((ending) => ending.end === "bug");

it("mutated instrument files are taken in with every row accounted for, or refused with a sentence", async () => {
  const context = await contextAs("tester");
  const endings: Ending[] = [];
  for (let n = 0; n < 60; n += 1) endings.push(await runFile(context, await caseBytes({ kind: "files", seed: 7 }, n)));
  expect(bugs(endings)).toEqual([]);
  expect(endings.filter(({ end }) => end === "taken").length).toBeGreaterThan(5);
  expect(endings.filter(({ end }) => end === "refused").length).toBeGreaterThan(5);
}, 120_000);

it("mutated pictures are kept whole and bare, or refused with nothing left behind", async () => {
  const context = await contextAs("tester");
  const { id } = must(await createItemWorkflow(context, mugWords));
  const dataDir = mkdtempSync(join(tmpdir(), "assay-fuzz-test-"));
  const endings: Ending[] = [];
  for (let n = 0; n < 30; n += 1)
    endings.push(await runPicture(context, id, await caseBytes({ kind: "images", seed: 7 }, n), dataDir));
  expect(bugs(endings)).toEqual([]);
  expect(endings.filter(({ end }) => end === "taken").length).toBeGreaterThan(0);
}, 120_000);
