import { UsageError } from "./usage-error.ts";

/** Each subcommand is a file beside this one that exports `run(args)`; it resolves to the exit code. */
const subcommands: Record<string, () => Promise<{ run: (args: string[]) => Promise<number> }>> = {
  reconcile: () => import("./reconcile.ts"),
};

async function main(args: string[]): Promise<number> {
  const [name, ...rest] = args;
  const load = name === undefined ? undefined : subcommands[name];
  if (load === undefined) {
    const known = Object.keys(subcommands).join(", ");
    const what = name === undefined ? "No command was given" : `There is no command "${name}"`;
    throw new UsageError(`${what}; the commands are: ${known}.`);
  }
  return (await load()).run(rest);
}

main(process.argv.slice(2)).then(
  (code) => {
    process.exitCode = code;
  },
  (error: unknown) => {
    // Expected trouble is one sentence; anything else is a bug and keeps its trace.
    process.stderr.write(error instanceof UsageError ? `${error.message}\n` : `${(error as Error).stack ?? error}\n`);
    process.exitCode = error instanceof UsageError ? 2 : 1;
  },
);
