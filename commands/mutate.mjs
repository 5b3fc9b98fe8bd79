// node commands/mutate.mjs [--count 200] [--seed 1] [--workers 2] [--only PART-OF-A-FILE-NAME] [--from K] [--argued] [--list]
//
// Do the tests notice when the statistics are wrong? Changes one operator, comparison, constant, sign or returned value of
// lib/statistics at a time, in a copy of the repository, and runs the tests that reach the file: quick ones first. A mutant is
// caught when a test fails, or hangs: a run that takes over 20 s and four times as long as it did unchanged. Prints how many were caught
// and every survivor. mutate/equivalent.json says of some why nothing can show them (another route to the same maximum, a guard between two
// forms that agree there): the sample passes over them and says how many, and the share caught is printed without and with them.
// --argued runs those of that list instead: each must survive, or its argument is false. --from K goes on with the K-th of the sample.
import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { parseArgs } from "node:util";
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";
import { prepare, root } from "./prepare.mjs";

const folders = ["tests/statistics", "tests/published", "tests/properties"];
// Tests of the rooms downstream reach the statistics too, but take most of the time and are no check of a formula.
const leftOut = /properties\/(reconcile|limits|rows-conserved|publication)/;
const room = "lib/statistics";

const explained = JSON.parse(readFileSync(join(root, "commands", "mutate", "equivalent.json"), "utf8"));
const isThat = (one) => (mutant) =>
  one.file === mutant.named && one.before === mutant.before && one.after === mutant.after;
const reasonFor = (mutant) => explained.find((one) => isThat(one)(mutant))?.reason;

if (isMainThread) await main();
else await work();

async function main() {
  const { values } = parseArgs({
    options: {
      count: { type: "string", default: "200" },
      seed: { type: "string", default: "1" },
      workers: { type: "string", default: "2" },
      only: { type: "string", default: "" },
      from: { type: "string", default: "1" },
      argued: { type: "boolean", default: false },
      list: { type: "boolean", default: false },
    },
  });
  await prepare();
  const { findMutants, sample } = await import("./mutate/mutants.mjs");
  const { Copy, reach } = await import("./mutate/copy.mjs");
  const files = readdirSync(join(root, room))
    .filter((name) => name.endsWith(".ts") && name.includes(values.only))
    .map((name) => join(root, room, name));
  const all = findMutants(files).map((mutant) => ({ ...mutant, named: relative(root, mutant.file) }));
  for (const one of values.only === "" ? explained : [])
    if (!all.some(isThat(one))) console.log(`no such mutant any more: ${describe(one)}`);
  const drawn = values.argued
    ? { chosen: all.filter(reasonFor), passedOver: 0 }
    : sample(all, Number(values.count), values.seed, reasonFor);
  const chosen = drawn.chosen.slice(Number(values.from) - 1).map((mutant) => ({ ...mutant, file: mutant.named }));
  const which = values.argued ? "argued to change nothing that shows" : `seed ${values.seed}`;
  console.log(`${chosen.length} of ${all.length} possible mutants of ${files.length} files, ${which}`);
  if (drawn.passedOver > 0)
    console.log(`${drawn.passedOver} passed over in drawing them: argued to change nothing that shows`);
  if (values.list) return chosen.forEach((mutant) => void console.log(describe(mutant)));

  const reached = new Map([...reach(root, folders)].filter(([test]) => !leftOut.test(test)));
  const copies = Array.from({ length: Number(values.workers) }, () => new Copy(root));
  try {
    const durations = baseline(copies[0], [...reached.keys()]);
    const tasks = chosen.map((mutant) => ({ mutant, tests: testsFor(mutant.file, reached, durations) }));
    const outcomes = await share(tasks, copies);
    report(chosen, outcomes, drawn.passedOver);
  } finally {
    for (const copy of copies) copy.remove();
  }
}

/** Milliseconds each test file takes with nothing changed; all must pass. */
function baseline(copy, tests) {
  const file = join(copy.folder, ".cache", "baseline.json");
  const passed = copy.outcome(tests, { seconds: 600, report: file }) === "passed";
  const { testResults } = JSON.parse(readFileSync(file, "utf8"));
  if (!passed) {
    const failed = testResults
      .filter((result) => result.status === "failed")
      .map((result) => relative(copy.folder, result.name));
    throw new Error(`Tests must pass before anything is changed. Failing: ${failed.join(", ")}`);
  }
  return new Map(testResults.map((result) => [relative(copy.folder, result.name), result.endTime - result.startTime]));
}

/** The tests that reach a file: first the three nearest to it, then the quicker half of the others, then the rest. */
function testsFor(file, reached, durations) {
  const far = ([, steps]) => steps.get(file);
  const byNearness = [...reached]
    .filter(([, steps]) => steps.has(file))
    .sort((a, b) => far(a) - far(b) || durations.get(a[0]) - durations.get(b[0]))
    .map(([test]) => test);
  const others = byNearness.slice(3).sort((a, b) => durations.get(a) - durations.get(b));
  const half = Math.ceil(others.length / 2);
  const longest = byNearness.reduce((sum, test) => sum + durations.get(test), 0) / 1000;
  const stages = [byNearness.slice(0, 3), others.slice(0, half), others.slice(half)];
  return { stages: stages.filter((stage) => stage.length > 0), seconds: 20 + 4 * longest };
}

/** Deals the tasks out to one thread a copy, each taking the next when it is free. */
async function share(tasks, copies) {
  const outcomes = new Array(tasks.length);
  let next = 0;
  let done = 0;
  await Promise.all(
    copies.map(
      (copy) =>
        new Promise((resolve, reject) => {
          const worker = new Worker(new URL(import.meta.url), { workerData: { root, folder: copy.folder } });
          const give = () => {
            if (next < tasks.length) worker.postMessage({ index: next, ...tasks[next++] });
            else worker.postMessage(null);
          };
          worker.on("message", ({ index, outcome }) => {
            outcomes[index] = outcome;
            done += 1;
            const { mutant } = tasks[index];
            if (outcome === "passed") console.log(`  survived (${done} of ${tasks.length}): ${describe(mutant)}`);
            give();
          });
          worker.on("error", reject);
          worker.on("exit", resolve);
          give();
        }),
    ),
  );
  return outcomes;
}

async function work() {
  const { Copy } = await import("./mutate/copy.mjs");
  const copy = Object.assign(Object.create(Copy.prototype), { folder: workerData.folder });
  parentPort.on("message", (task) => {
    if (task === null) return parentPort.close();
    const { index, mutant, tests } = task;
    const original = readFileSync(join(workerData.root, mutant.file), "utf8");
    const inCopy = readFileSync(join(copy.folder, mutant.file), "utf8");
    if (inCopy !== original)
      process.emitWarning(`${mutant.file} changed while the mutants ran; the copy's text is used`);
    copy.write(mutant.file, inCopy.slice(0, mutant.start) + mutant.replacement + inCopy.slice(mutant.end));
    let outcome = "passed";
    for (const stage of tests.stages) {
      outcome = copy.outcome(stage, { seconds: tests.seconds });
      if (outcome !== "passed") break;
    }
    copy.write(mutant.file, inCopy);
    parentPort.postMessage({ index, outcome });
  });
}

function describe({ file, line, kind, before, after }) {
  return `${file}${line ? `:${line} ${kind}` : ""}\n      ${before}\n    → ${after}`;
}

function report(chosen, outcomes, passedOver) {
  const survivors = chosen.filter((_, index) => outcomes[index] === "passed");
  const caught = chosen.length - survivors.length;
  const hung = outcomes.filter((outcome) => outcome === "hung").length;
  for (const mutant of survivors) console.log(`survived: ${describe(mutant)}`);
  const share = (all) => `${((100 * caught) / all).toFixed(1)} % of ${all}`;
  console.log(`\n${caught} caught (${hung} of them by a hang), ${survivors.length} survived`);
  console.log(
    `${share(chosen.length)} caught; ${share(chosen.length + passedOver)} with those passed over counted as missed`,
  );
}
