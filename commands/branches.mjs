// npm run branches [-- --room lib/statistics tests/statistics …]: how much of the pure rooms the tests reach, room by room, and every
// branch they do not. A branch that no test can reach stands in branches/explained.json with its reason; the command fails on a
// branch that is neither reached nor explained, and on an explanation whose branch is reached or gone.
import { readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { parseArgs } from "node:util";
import { packageScripts, prepare, root, runPackage } from "./prepare.mjs";

const pureRooms =
  "quantity statistics readings reconcile amounts attenuation limits consistency publication exports search wording".split(
    " ",
  );
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { room: { type: "string", multiple: true, default: pureRooms } },
});
const rooms = values.room.map((room) => room.replace(/^lib\//, ""));

await prepare();
const folder = join(root, "coverage");
const list = join(folder, "tests.json");
// Every test of npm test's unit stage, as vitest.config.ts has them, or those named on the command line.
const run = runPackage(packageScripts.vitest, [
  "run",
  ...positionals,
  "--coverage",
  "--coverage.provider=v8",
  "--coverage.reporter=json",
  "--coverage.reportOnFailure",
  `--coverage.reportsDirectory=${folder}`,
  ...rooms.map((room) => `--coverage.include=lib/${room}/**/*.ts`),
  "--reporter=dot",
  "--reporter=json",
  `--outputFile.json=${list}`,
  "--maxWorkers=2",
  // Counting makes tests slower.
  "--testTimeout=120000",
]);
const files = JSON.parse(readFileSync(join(folder, "coverage-final.json"), "utf8"));
const tests = JSON.parse(readFileSync(list, "utf8"));

const explained = JSON.parse(readFileSync(join(root, "commands", "branches", "explained.json"), "utf8"));
const isExplained = (one, { name, type, arm, text }) =>
  one.file === name && one.type === type && one.arm === arm && one.text === text;
const table = {};
const missed = [];
for (const room of rooms) {
  const tally = { statements: [0, 0], functions: [0, 0], branches: [0, 0] };
  for (const [path, file] of Object.entries(files)) {
    const name = relative(root, path);
    if (!name.startsWith(`lib/${room}/`)) continue;
    const count = (kind, hits) => {
      tally[kind][0] += hits.filter((hit) => hit > 0).length;
      tally[kind][1] += hits.length;
    };
    count("statements", Object.values(file.s));
    count("functions", Object.values(file.f));
    const branches = Object.entries(file.b).flatMap(([id, hits]) => hits.map((hit, arm) => ({ id, arm, hit })));
    count(
      "branches",
      branches.map(({ hit }) => hit),
    );
    for (const { id, arm, hit } of branches) {
      if (hit > 0) continue;
      const { type, loc, locations } = file.branchMap[id];
      const { start } = locations[arm]?.start?.line === undefined ? loc : locations[arm];
      const text = readFileSync(path, "utf8").split("\n")[start.line - 1]?.trim() ?? "";
      missed.push({ name, line: start.line, type, arm, text });
    }
  }
  const share = ([hit, all]) =>
    all === 0 ? "–" : `${((100 * hit) / all).toFixed(1)} % (${all - hit} of ${all} missed)`;
  table[`lib/${room}`] = Object.fromEntries(Object.entries(tally).map(([kind, pair]) => [kind, share(pair)]));
}
console.table(table);
const unexplained = missed.filter((branch) => !explained.some((one) => isExplained(one, branch)));
const outdated = explained.filter(
  (one) =>
    rooms.some((room) => one.file.startsWith(`lib/${room}/`)) && !missed.some((branch) => isExplained(one, branch)),
);
for (const { name, line, type, arm, text } of unexplained)
  console.log(`not reached: ${name}:${line} ${type} ${arm}   ${text}`);
for (const { file, text } of outdated) console.log(`explained, but reached or gone: ${file}   ${text}`);
console.log(
  `${missed.length} branches not reached, ${missed.length - unexplained.length} of them explained in commands/branches/explained.json`,
);
const countedFiles = tests.testResults.map(({ name }) => relative(root, name).replaceAll("\\", "/"));
const folders = countedFiles.map((name) => name.split("/").slice(0, -1).join("/"));
const inFolders = [...new Set(folders)].sort().map((one) => `${one} ${folders.filter((it) => it === one).length}`);
console.log(
  `Counted: ${tests.numPassedTests} tests that passed, in ${countedFiles.length} files: ${inFolders.join(", ")}`,
);
for (const { name, message, assertionResults } of tests.testResults) {
  const failing = assertionResults.filter(({ status }) => status === "failed").map(({ fullName }) => fullName);
  if (failing.length === 0 && message) failing.push(message.split("\n")[0]);
  for (const test of failing) console.log(`failed: ${relative(root, name)}   ${test}`);
}
if (run.status !== 0) console.log("Some tests failed or did not run: what they would have reached is missing above.");
process.exit(run.status !== 0 || unexplained.length > 0 || outdated.length > 0 ? 1 : 0);
