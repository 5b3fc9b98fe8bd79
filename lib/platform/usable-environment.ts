import type { z } from "zod";

/** What was read of the environment, or the end of the start with a line for each variable: what was wrong, what was found. */
export function usable<T>(parsed: z.ZodSafeParseResult<T>, source: Record<string, string | undefined>): T {
  if (parsed.success) return parsed.data;
  const lines = parsed.error.issues.map(
    (i) => `  ${i.path.join(".")}: ${i.message}; found ${JSON.stringify(source[String(i.path[0])])}`,
  );
  throw new Error(`The environment is not usable:\n${lines.join("\n")}`);
}
