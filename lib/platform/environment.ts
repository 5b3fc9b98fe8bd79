import { isAbsolute, join, resolve } from "node:path";
import { z } from "zod";

/** The environment, read once and checked; a wrong value stops the start with a sentence that names it. */
const schema = z.object({
  PORT: z.coerce.number().int().min(1).max(65535).default(3000),
  DATA_DIR: z.string().min(1).default("./data"),
  DATABASE_URL: z.string().optional(),
  BASE_URL: z.url({ protocol: /^https?$/ }).optional(),
});

export type Environment = { port: number; dataDir: string; databaseFile: string; baseUrl: string };

export function readEnvironment(source: Record<string, string | undefined>): Environment {
  const parsed = schema.safeParse(source);
  if (!parsed.success) {
    const lines = parsed.error.issues.map(
      (i) => `  ${i.path.join(".")}: ${i.message}; found ${JSON.stringify(source[String(i.path[0])])}`,
    );
    throw new Error(`The environment is not usable:\n${lines.join("\n")}`);
  }
  const e = parsed.data;
  const dataDir = resolve(/* turbopackIgnore: true */ e.DATA_DIR);
  const url = e.DATABASE_URL ?? `file:${join(dataDir, "registry.db")}`;
  if (!url.startsWith("file:"))
    throw new Error(
      `DATABASE_URL: expected file:PATH to a SQLite file; found ${url.split(":")[0]}:… (other databases are not built yet).`,
    );
  const path = url.slice("file:".length);
  const databaseFile = isAbsolute(path) ? path : resolve(/* turbopackIgnore: true */ path);
  return {
    port: e.PORT,
    dataDir,
    databaseFile,
    baseUrl: (e.BASE_URL ?? `http://localhost:${e.PORT}`).replace(/\/$/, ""),
  };
}

let cached: Environment | undefined;
export function environment(): Environment {
  cached ??= readEnvironment(process.env);
  return cached;
}
