import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { noteSentence } from "@/lib/wording/models.ts";

const folder = join(import.meta.dirname, "..", "..", "lib", "reconcile");

it("every note that reconcile writes has its sentence", () => {
  const notes = readdirSync(folder).flatMap((name) => {
    const text = readFileSync(join(folder, name), "utf8").replace(/\/\*[\s\S]*?\*\//g, "");
    return [...text.matchAll(/notes: [^\n]*\[[^\n]*/g)].flatMap((m) =>
      [...m[0].matchAll(/"([a-z-]+)"/g)].map((n) => n[1] ?? ""),
    );
  });
  expect([...new Set(notes)].sort()).toEqual(
    expect.arrayContaining(["interval-from-zero", "interval-to-whole", "no-upper-bound"]),
  );
  // A code without a sentence comes back as its own words and no more.
  expect([...new Set(notes)].filter((code) => noteSentence(code).length < code.length + 12)).toEqual([]);
});
