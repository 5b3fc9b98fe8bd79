import { UsageError } from "./usage-error.ts";

/** Each subcommand is a file beside this one that exports `run(args)`; it resolves to the exit code. */
const subcommands: Record<string, () => Promise<{ run: (args: string[]) => Promise<number> }>> = {
  reconcile: () => import("./reconcile.ts"),
  "verify-log": () => import("./verify-log.ts"),
  "verify-files": () => import("./verify-files.ts"),
  "verify-all": () => import("./verify-all.ts"),
  reproduce: () => import("./reproduce.ts"),
  export: () => import("./export.ts"),
  import: () => import("./import.ts"),
  backup: () => import("./backup.ts"),
  restore: () => import("./restore.ts"),
  "remove-second-step": () => import("./remove-second-step.ts"),
  "new-password-link": () => import("./new-password-link.ts"),
};

async function run(args: string[]): Promise<number> {
  const [name, ...rest] = args;
  const load = name === undefined ? undefined : subcommands[name];
  if (load === undefined) {
    const known = Object.keys(subcommands).join(", ");
    const what = name === undefined ? "No command was given" : `There is no command "${name}"`;
    throw new UsageError(`${what}; the commands are: ${known}.`);
  }
  return (await load()).run(rest);
}

/** Runs one command and answers with its exit code. Expected trouble is one sentence on stderr; anything else is a bug and keeps its trace. */
export async function dispatch(args: string[]): Promise<number> {
  try {
    return await run(args);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    process.stderr.write(`${error.message}\n`);
    return 2;
  }
}
