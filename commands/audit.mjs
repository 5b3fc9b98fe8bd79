// Known weaknesses of the packages that run with the product, as the registry in use knows them; a step of `npm test`.
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { auditVerdict } from "./audit/verdict.mjs";
import { root } from "./prepare.mjs";

/** Passed, failed, or skipped with a plain sentence where the registry answers no such question. */
export function audit() {
  console.log("\n── Dependency audit");
  const run = spawnSync("npm", ["audit", "--omit=dev", "--json", "--fetch-retries=0", "--fetch-timeout=20000"], {
    cwd: root,
    encoding: "utf8",
    timeout: 60_000,
    shell: process.platform === "win32",
  });
  const accepted = JSON.parse(readFileSync(join(root, "commands", "audit", "accepted.json"), "utf8"));
  const verdict = auditVerdict(run.stdout ?? "", accepted, new Date().toISOString().slice(0, 10));
  for (const line of verdict.lines) console.log(line);
  console.log(`Dependency audit: ${verdict.state}`);
  return { passed: verdict.state === "passed" ? 1 : 0, failed: verdict.state === "FAILED" ? 1 : 0 };
}
