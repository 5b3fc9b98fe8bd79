import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";

const folder = join(import.meta.dirname, "..", "..", "lib", "workflows");

/** Workflows that write nothing down, each with why. */
const silent: Record<string, string> = {
  "registry-files.ts": "only reads",
  "request-test.ts": "a reader's wish, kept without anything about the reader",
  "sign-log-head.ts": "the registry itself signs; the signed head is its own record",
};

it.each(readdirSync(folder).filter((file) => file.endsWith(".ts")))("%s writes down who did what", (file) => {
  const text = readFileSync(join(folder, file), "utf8");
  const acts = [...text.matchAll(/\brecord(?:Readings)?Act\(/g)].length;
  if (file in silent) expect(acts).toBe(0);
  else {
    expect(acts).toBeGreaterThan(0);
    // In the workflow's own transaction.
    expect(text).toContain("inTransaction(");
    expect(text).not.toMatch(/record(?:Readings)?Act\((?!\s*tx\b)/);
  }
});
