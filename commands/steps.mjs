// The steps that `npm run check` and `npm test` share, each answering with how many checks passed and failed.
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
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
  return { passed, failed: run.status !== 0 && failed === 0 ? 1 : failed };
}

export function finish(results) {
  const passed = results.reduce((sum, r) => sum + r.passed, 0);
  const failed = results.reduce((sum, r) => sum + r.failed, 0);
  console.log(`\n${passed} passed, ${failed} failed`);
  process.exit(failed === 0 ? 0 : 1);
}
