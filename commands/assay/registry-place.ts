import { existsSync, mkdirSync, readdirSync, statSync } from "node:fs";
import { type Environment, environment } from "../../lib/platform/environment.ts";
import { UsageError } from "./usage-error.ts";

/** Where the registry lies, by the environment; a wrong setting is the person's to mend. */
export function place(): Environment {
  try {
    return environment();
  } catch (error) {
    throw new UsageError((error as Error).message.replace(/\s*\n\s*/g, " "));
  }
}

/** The same, with a database in it. A PostgreSQL server is asked only by what reads from it. */
export function registryPlace(): Environment {
  const found = place();
  if (found.databaseFile !== null && !existsSync(found.databaseFile))
    throw new UsageError(
      `There is no registry at "${found.databaseFile}"; say where it is with DATA_DIR or DATABASE_URL.`,
    );
  return found;
}

/** The one folder a command is given. */
export function oneFolder(args: string[], command: string): string {
  const [folder, ...others] = args;
  if (folder === undefined || folder.startsWith("-"))
    throw new UsageError(`Name the folder: npm run assay -- ${command} DIR.`);
  if (others.length > 0) throw new UsageError(`One folder at a time: "${others[0]}" came after "${folder}".`);
  return folder;
}

/** Makes the folder, or takes it where it is empty: nothing is ever written over. */
export function emptyFolder(folder: string, what: string, mode = 0o755): void {
  try {
    if (existsSync(folder)) {
      if (!statSync(folder).isDirectory()) throw new UsageError(`"${folder}" is a file; name a folder for ${what}.`);
      if (readdirSync(folder).length > 0)
        throw new UsageError(`"${folder}" is not empty; name a new folder for ${what}.`);
    } else mkdirSync(folder, { recursive: true, mode });
  } catch (error) {
    if (error instanceof UsageError) throw error;
    throw new UsageError(`The folder "${folder}" cannot be made: ${why(error)}.`);
  }
}

const reasons: Record<string, string> = {
  ENOENT: "there is no such file",
  EACCES: "it may not be opened",
  EPERM: "it may not be opened",
  ENOSPC: "the disk is full",
  EROFS: "the disk can only be read",
  EISDIR: "it is a folder",
  ENOTDIR: "a part of the path is a file",
};

/** Why the machine refused, in a few words. */
export const why = (error: unknown): string => {
  const { code, message } = error as NodeJS.ErrnoException;
  return (code === undefined ? undefined : reasons[code]) ?? message.split("\n")[0] ?? "unknown";
};
