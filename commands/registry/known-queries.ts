import { readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";

/** What people may type over the scenario, with the item each must find; and what must find nothing. */
export const knownQueries = z
  .object({ find: z.array(z.object({ q: z.string(), slug: z.string() })), none: z.array(z.string()) })
  .parse(JSON.parse(readFileSync(join(import.meta.dirname, "queries.json"), "utf8")));
