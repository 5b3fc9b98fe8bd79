// The steps that `npm run check` and `npm test` share, each answering with how many checks passed and failed.
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join, relative } from "node:path";
import { packageScripts, root, runPackage } from "./prepare.mjs";

const heading = (text) => console.log(`\n── ${text}`);

function one(title, script, args) {
  heading(title);
  const ok = runPackage(script, args).status === 0;
  console.log(ok ? `${title}: passed` : `${title}: FAILED`);
  return { passed: ok ? 1 : 0, failed: ok ? 0 : 1 };
}

export const lint = () => one("Lint", packageScripts.biome, ["check", "--error-on-warnings", "."]);
export const types = () => one("Types", packageScripts.tsc, ["--noEmit", "-p", "."]);

export function vitest(title, args, env = {}) {
  heading(title);
  const folder = join(root, ".cache", "results");
  mkdirSync(folder, { recursive: true });
  const file = join(folder, `${title.toLowerCase().replace(/\W+/g, "-")}.json`);
  rmSync(file, { force: true });
  const run = runPackage(
    packageScripts.vitest,
    ["run", ...args, "--reporter=default", "--reporter=json", `--outputFile.json=${file}`],
    { env },
  );
  let report;
  try {
    report = JSON.parse(readFileSync(file, "utf8"));
  } catch {
    console.log(`${title}: the test runner left no report`);
    return { passed: 0, failed: 1 };
  }
  const { numPassedTests: passed, numFailedTests, testResults } = report;
  // A file that fails before its first test counts as one failure.
  const broken = testResults.filter(
    (f) => f.status === "failed" && f.assertionResults.every((a) => a.status !== "failed"),
  ).length;
  const failed = numFailedTests + broken;
  const files = testResults.map(({ name, assertionResults }) => ({
    file: relative(root, name).replaceAll("\\", "/"),
    passed: assertionResults.filter((a) => a.status === "passed").length,
  }));
  return { passed, failed: run.status !== 0 && failed === 0 ? 1 : failed, files };
}

/** The suites that work on a real database, and so run on each. What is about SQLite's own file stays with SQLite. */
export const integrationSuites = [
  ...["tests/workflows", "tests/store", "tests/api", "tests/access", "tests/page-cache"].map((folder) => `${folder}/`),
  ...["reproduce", "move"].map((name) => `tests/assay/${name}.test.ts`),
];

/** How many of a step's tests belong to those suites. */
export const countIntegration = ({ files = [] }) =>
  files
    .filter(({ file }) => integrationSuites.some((suite) => file.startsWith(suite)))
    .reduce((sum, { passed }) => sum + passed, 0);

/**
 * The same suites on PostgreSQL, over a server of the run's own; null with a plain message where that is not to be or
 * cannot be had.
 */
export async function postgres() {
  const { findPostgres } = await import("./postgres.mjs");
  const title = "Integration tests on PostgreSQL";
  const why =
    process.env.CI || process.env.ASSAY_TEST_POSTGRES === "no"
      ? "left out here, as CI or ASSAY_TEST_POSTGRES=no asks"
      : findPostgres() === null
        ? "not run, since no PostgreSQL server is installed on this machine (POSTGRES_BIN names its folder)"
        : null;
  if (why === null) return vitest(title, integrationSuites, { ASSAY_TEST_DATABASE: "postgres" });
  console.log(`\n── ${title}: ${why}`);
  return null;
}

export function finish(results) {
  const passed = results.reduce((sum, r) => sum + r.passed, 0);
  const failed = results.reduce((sum, r) => sum + r.failed, 0);
  console.log(`\n${passed} passed, ${failed} failed`);
  process.exit(failed === 0 ? 0 : 1);
}
