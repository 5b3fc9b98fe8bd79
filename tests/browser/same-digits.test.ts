import { readFileSync } from "node:fs";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { scenario } from "@/sample-data/scenario.ts";
import { inputsOf } from "../scenario/read-scenario.ts";
import { openBrowser } from "../support/browser.ts";
import { bundleForBrowser } from "../support/bundle.ts";
import { type Printed, printedDigits, type Work } from "../support/printed-digits.ts";

const parts = scenario.items.flatMap((item) =>
  item.specimens.flatMap((specimen, n) => specimen.components.flatMap(({ key }) => inputsOf(item.slug, n, key))),
);
const { cases } = JSON.parse(readFileSync(new URL("../published/data/cases.json", import.meta.url), "utf8")) as Pick<
  Work,
  "cases"
>;
// Through JSON on both sides, so that both are handed the very same inputs.
const work: Work = JSON.parse(JSON.stringify({ parts, cases }));

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

type Difference = { where: string; here: unknown; there: unknown; relative: number };

/** Every leaf in which two results differ; numbers with their relative distance, anything else (texts, codes, shape) as infinitely far. */
function differences(here: unknown, there: unknown, where = ""): Difference[] {
  if (Object.is(here, there)) return [];
  if (typeof here === "number" && typeof there === "number")
    return [{ where, here, there, relative: Math.abs(here - there) / Math.max(Math.abs(here), Math.abs(there)) }];
  if (typeof here !== "object" || typeof there !== "object" || here === null || there === null)
    return [{ where, here, there, relative: Infinity }];
  const keys = new Set([...Object.keys(here), ...Object.keys(there)]);
  return [...keys].flatMap((key) =>
    differences((here as Record<string, unknown>)[key], (there as Record<string, unknown>)[key], `${where}.${key}`),
  );
}

/**
 * Sums, quotients and square roots are fixed by IEEE 754, but ECMAScript leaves the last bit of Math.exp, Math.log and ** to the engine, and
 * versions of V8 differ in it. What is printed must not: texts, codes, flags, the digested inputs, and every number to
 * far more digits than any uncertainty has.
 */
const lastBits = 1e-11;

it("Chromium and Node print the same digits for every part of the scenario and every reference case", async () => {
  const { text } = await bundleForBrowser('export { printedDigits } from "./tests/support/printed-digits.ts";', {
    globalName: "assay",
  });
  const page = await browser.newPage();
  await page.addScriptTag({ content: text });
  const there: Printed[] = await page.evaluate((given) => {
    const { assay } = globalThis as unknown as { assay: { printedDigits: (work: unknown) => Printed[] } };
    return assay.printedDigits(given);
  }, work as unknown);
  const here = printedDigits(work);
  expect(parts.length).toBeGreaterThan(50);
  expect(here.length - parts.length).toBeGreaterThan(50);
  expect(there.map(({ name }) => name)).toEqual(here.map(({ name }) => name));

  const found = here.flatMap(({ name, digits }, i) =>
    digits === there[i]!.digits ? [] : [{ name, all: differences(JSON.parse(digits), JSON.parse(there[i]!.digits)) }],
  );
  const numbers = found.flatMap(({ name, all }) => all.map((one) => ({ ...one, where: name + one.where })));
  const worst = numbers.reduce((far, one) => Math.max(far, one.relative), 0);
  console.log(
    `Node ${process.versions.node} (V8 ${process.versions.v8}) and Chromium ${browser.version()}, ${parts.length} results of the scenario and ${here.length - parts.length} cases: ` +
      `${here.length - found.length} agree to the last bit; in the other ${found.length} the largest relative difference is ${worst.toExponential(1)}`,
  );
  expect(numbers.filter((one) => one.relative > lastBits)).toEqual([]);
});
