import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Runs the command as a person would, in its own process. */
export function assay(...args: string[]): { code: number | null; stdout: string; stderr: string } {
  const run = spawnSync(process.execPath, ["commands/assay.mjs", ...args], { cwd: root, encoding: "utf8" });
  return { code: run.status, stdout: run.stdout, stderr: run.stderr };
}

// biome-ignore lint/suspicious/noExplicitAny: the tests read the JSON as an outsider would
export const assayJson = (...args: string[]): any => {
  const { code, stdout, stderr } = assay("reconcile", ...args, "--json");
  if (code !== 0) throw new Error(`exit ${code}: ${stderr}`);
  return JSON.parse(stdout);
};
