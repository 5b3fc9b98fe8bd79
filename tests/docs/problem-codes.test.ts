import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { describe, expect, it } from "vitest";
import { noticeWords } from "@/lib/wording/mapping-words.ts";
import { problemWords } from "@/lib/wording/problems.ts";

const root = join(import.meta.dirname, "..", "..");

/** Rooms where `code` means something else, or whose problems are not for people: each with why. */
const apart: Record<string, string> = {
  "lib/consistency/session-state.ts": "codes of contributions to a budget; worded in budget.ts",
  "lib/wording": "holds the sentences",
  "lib/reconcile": "codes of contributions to the budget",
  "lib/store/generated": "made by Prisma",
  "lib/publication/verify-log.ts": "worded in log-faults.ts, a record that the compiler keeps whole",
  "lib/readings/propose-mapping.ts": "notices, worded in mapping-words.ts; the last test here holds them",
  "lib/exports": "codes of properties in machine-readable texts; its problems are worded by the API",
};

const sources = (folder: string): string[] =>
  readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (path in apart) return [];
    return entry.isDirectory() ? sources(path) : path.endsWith(".ts") ? [path] : [];
  });

/** Every code that a source text gives a problem: `code: "x"`, `code: a ? "x" : "y"`, `const code = …`, and zod-like unions. */
function codesIn(text: string): string[] {
  const plain = text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/^\s*\/\/.*$/gm, "");
  const givings = [...plain.matchAll(/\bcode(?:\s*=(?!=)|:)\s*([^,;}]*)/g)].map((m) =>
    (m[1] ?? "").replace(/[!=]==\s*"[^"]*"/g, ""),
  );
  return givings.flatMap((giving) => [...giving.matchAll(/"([a-z][a-z0-9]*(?:-[a-z0-9]+)+)"/g)].map((m) => m[1] ?? ""));
}

const found = new Map<string, string>();
for (const path of sources("lib"))
  for (const code of codesIn(readFileSync(join(root, path), "utf8"))) if (!found.has(code)) found.set(code, path);

describe("codes of problems", () => {
  it("are found in the sources at all", () => {
    expect(found.size).toBeGreaterThan(40);
    expect(codesIn('refused({ code: "unknown-item" })')).toEqual(["unknown-item"]);
    expect(codesIn('{ code: a === null\n ? "column-one"\n : "column-two", where }')).toEqual([
      "column-one",
      "column-two",
    ]);
  });

  it.each([...found])("%s, given by %s, has a sentence", (code, path) => {
    expect(Object.keys(problemWords), `${code} in ${relative(root, path)}`).toContain(code);
    const sentence = problemWords[code]?.({ code, where: { row: 3, column: "Pb" }, found: "x", allowed: "y" }) ?? "";
    expect(sentence.length).toBeGreaterThan(12);
    expect(sentence).toMatch(/[.?!]$/);
    expect(sentence).not.toMatch(/undefined|\[object/);
  });

  it("of notices beside a proposed mapping have their words too", () => {
    const codes = codesIn(readFileSync(join(root, "lib/readings/propose-mapping.ts"), "utf8"));
    expect(codes).toContain("relative-error");
    expect(Object.keys(noticeWords)).toEqual(expect.arrayContaining(codes));
  });
});
