import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { revisionDifference } from "@/lib/publication/revision-difference.ts";
import { logFaultCodes } from "@/lib/publication/verify-log.ts";
import { ageGroups, itemCategories, materials } from "@/lib/quantity/item-words.ts";
import { quantityKinds } from "@/lib/quantity/kinds.ts";
import { flagCodes } from "@/lib/reconcile/types.ts";
import { accessProblems } from "@/lib/wording/access-problems.ts";
import { contributionName, contributionSource, shareText } from "@/lib/wording/budget.ts";
import { changeSentence } from "@/lib/wording/changes.ts";
import { elementName, elementTitle } from "@/lib/wording/elements.ts";
import { flagWords, wordsForFlag } from "@/lib/wording/flags.ts";
import {
  ageGroupLabels,
  categoryLabels,
  labelOf,
  materialLabels,
  quantityLabels,
  unitWords,
} from "@/lib/wording/labels.ts";
import { logFaultSentence } from "@/lib/wording/log-faults.ts";
import { methodSteps } from "@/lib/wording/models.ts";
import { problemSentence, problemWords } from "@/lib/wording/problems.ts";
import { publicationProblems } from "@/lib/wording/publication-problems.ts";
import { readingProblems } from "@/lib/wording/reading-problems.ts";
import { workflowProblems } from "@/lib/wording/workflow-problems.ts";
import { samplePart, sampleSnapshot, sampleStates } from "../support/sample-snapshot.ts";

describe("every code has its words", () => {
  it.each(flagCodes)("flag %s", (code) => {
    expect(flagWords[code].sentence).toMatch(/^[A-Z].*\.$/);
    expect(flagWords[code].label.length).toBeLessThanOrEqual(30);
  });
  it("lists of item words", () => {
    for (const code of itemCategories) expect(categoryLabels[code]).toBeTruthy();
    for (const code of ageGroups) expect(ageGroupLabels[code]).toBeTruthy();
    for (const code of materials) expect(materialLabels[code]).toBeTruthy();
    for (const [kind, { unit }] of Object.entries(quantityKinds)) {
      expect(labelOf(quantityLabels, kind)).toBeTruthy();
      expect(unitWords[unit]).toBeTruthy();
    }
  });
  it.each(logFaultCodes)("log fault %s", (code) => {
    const sentence = logFaultSentence({
      code,
      seq: 3,
      slug: "mug",
      revision: 2,
      field: "kind",
      found: "a",
      expected: "b",
    });
    expect(sentence).toMatch(/3/);
    expect(sentence).toMatch(/\.$/);
  });
  it("a code from a newer version is shown as it stands, never hidden", () => {
    expect(wordsForFlag("wet-surface")).toEqual({ label: "Wet surface", sentence: "Wet surface." });
    expect(labelOf(categoryLabels, "tea-set")).toBe("Tea set");
    expect(labelOf(categoryLabels, "constructor")).toBe("Constructor");
    expect(contributionName("humidity-of-air")).toBe("Humidity of air");
  });
  it("names elements", () => {
    expect([elementName("Pb"), elementName("Pb+Cd"), elementName("Xx"), elementTitle("Cd")]).toEqual([
      "lead",
      "lead and cadmium",
      "Xx",
      "Cadmium (Cd)",
    ]);
  });
  it("names contributions and their shares", () => {
    expect(contributionName("calibration")).toBe("Calibration of the analyser");
    expect(contributionSource("instrument-default")).toContain("no check standard");
    expect(contributionSource("certificate 12")).toBe("certificate 12");
    expect([shareText(0.87), shareText(0.004), shareText(0)]).toEqual(["87 %", "under 1 %", "0 %"]);
  });
});

describe("problems", () => {
  const asked =
    "not-signed-in not-allowed not-found unknown-item slug-taken already-imported same-reading import-published nothing-to-publish no-readings part-without-result too-large invalid-form stale-draft wrong-token owner-exists rate-limited unknown-revision file-unreadable".split(
      " ",
    );
  it.each(asked)("%s has a sentence of its own", (code) => {
    const sentence = problemSentence({
      code,
      where: { field: "name", file: "a.csv", row: 3 },
      found: "x",
      allowed: "y",
    });
    expect(Object.hasOwn(problemWords, code)).toBe(true);
    expect(sentence).toMatch(/^[A-Z“].*\.$/s);
    expect(problemSentence({ code })).not.toMatch(/undefined|null/);
  });
  it("a code without one still tells where, what was found and what is allowed", () => {
    expect(
      problemSentence({
        code: "mode-unknown",
        where: { file: "a.csv", row: 3, column: "Mode" },
        found: "Soil 7",
        allowed: "Soil, Alloy",
      }),
    ).toBe("In a.csv, row 3, column “Mode”: mode unknown. Found: “Soil 7”. Allowed: Soil, Alloy.");
    expect(problemSentence({ code: "toString" })).toBe("ToString.");
  });
  it("takes direction and control marks out of what it quotes", () => {
    expect(problemSentence({ code: "unknown-item", found: "mug\u202Egnp\u0000.exe" })).toContain("“mug gnp .exe”");
  });
  it("no code is worded in two files", () => {
    const files = [accessProblems, workflowProblems, publicationProblems, readingProblems].flatMap((f) =>
      Object.keys(f),
    );
    expect(files.filter((code, i) => files.indexOf(code) !== i)).toEqual([]);
  });
  it("every code that a workflow or the access room can return has a sentence", () => {
    const missing = ["access", "workflows", "publication", "files", "platform"].flatMap((room) =>
      readdirSync(new URL(`../../lib/${room}/`, import.meta.url))
        .filter((name) => name.endsWith(".ts") && name !== "verify-log.ts")
        .flatMap((name) => {
          const text = readFileSync(new URL(`../../lib/${room}/${name}`, import.meta.url), "utf8");
          return [...text.matchAll(/code: "([a-z-]+)"/g)]
            .map((m) => m[1]!)
            .filter((code) => !Object.hasOwn(problemWords, code));
        }),
    );
    expect([...new Set(missing)]).toEqual([]);
  });
});

describe("the method in words", () => {
  it.each(sampleStates)("%s: every step is a sentence", (state) => {
    const steps = methodSteps(samplePart(state).results[0]!);
    expect(steps.length).toBeGreaterThan(3);
    for (const step of steps) expect(step).toMatch(/^[A-Z].*\.$/);
  });
  it("says how many were set aside", () => {
    expect(methodSteps(samplePart("above").results[0]!)[1]).toBe(
      "A person set 1 reading aside and wrote down why. It is listed all the same.",
    );
  });
});

it("a difference between revisions as a sentence", () => {
  const after = structuredClone(sampleSnapshot());
  after.item.name = "Bluebell mug";
  after.specimens[0]!.parts[0]!.results[0]!.stated.U = "36";
  after.specimens[0]!.parts.pop();
  expect(revisionDifference(sampleSnapshot(), after).map((change) => changeSentence(change))).toEqual([
    "Changed: item, name. Before: “Bluebell child's mug”. Now: “Bluebell mug”.",
    "Changed: object “mug 1”, part “glaze, outside”, lead, stated, expanded uncertainty. Before: “35”. Now: “36”.",
    "Taken away: object “mug 1”, part “printed decal on the handle side”.",
  ]);
});
