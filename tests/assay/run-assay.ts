import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { vi } from "vitest";
import { dispatch } from "@/commands/assay/dispatch.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
type Run = { code: number | null; stdout: string; stderr: string };

/** Runs the command as a person would, in a process of its own. */
export const assayProcess = (...args: string[]): Run => assayProcessOf({}, ...args);

/** As somebody whose settings name another registry. */
export function assayProcessOf(settings: Record<string, string>, ...args: string[]): Run {
  const env = { ...process.env, ...settings };
  const run = spawnSync(process.execPath, ["commands/assay.mjs", ...args], { cwd: root, encoding: "utf8", env });
  return { code: run.status, stdout: run.stdout, stderr: run.stderr };
}

/** The same without the second that a new process takes. */
export async function assay(...args: string[]): Promise<Run> {
  const written = { stdout: "", stderr: "" };
  const keep = (name: "stdout" | "stderr") =>
    vi.spyOn(process[name], "write").mockImplementation((text) => {
      written[name] += String(text);
      return true;
    });
  const spies = [keep("stdout"), keep("stderr")];
  try {
    return { code: await dispatch(args), ...written };
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}

// biome-ignore lint/suspicious/noExplicitAny: the tests read the JSON as an outsider would
export async function assayJson(...args: string[]): Promise<any> {
  const { code, stdout, stderr } = await assay("reconcile", ...args, "--json");
  if (code !== 0) throw new Error(`exit ${code}: ${stderr}`);
  return JSON.parse(stdout);
}
