import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { z } from "zod";

const root = join(import.meta.dirname, "..", "..");
const read = (name: string) => readFileSync(join(root, name), "utf8");
const manifest = z
  .object({
    scripts: z.record(z.string(), z.string()),
    dependencies: z.record(z.string(), z.string()),
    devDependencies: z.record(z.string(), z.string()),
  })
  .parse(JSON.parse(read("package.json")));
const packages = { ...manifest.dependencies, ...manifest.devDependencies };

it.each(["README.md", "DEVELOPERS.md"])("every npm command in %s exists", (name) => {
  const named = [...read(name).matchAll(/npm (?:run )?(?!ci\b|start\b)([a-z-]+)/g)].map((m) => m[1] ?? "");
  expect(named.length).toBeGreaterThan(0);
  expect(named.filter((script) => !(script in manifest.scripts))).toEqual([]);
});

it("the README begins with the job, then the two commands, and its pictures exist", () => {
  const text = read("README.md");
  expect(text.indexOf("npm run demo")).toBeGreaterThan(text.indexOf("An independent tester"));
  expect(text.indexOf("npm test")).toBeLessThan(text.indexOf("## A reader"));
  const pictures = [...text.matchAll(/!\[[^\]]+\]\(([^)]+)\)/g)].map((m) => m[1] ?? "");
  expect(pictures).toHaveLength(3);
  expect(pictures.filter((path) => !existsSync(join(root, path)))).toEqual([]);
});

it("every script's file exists", () => {
  const files = Object.values(manifest.scripts).map((line) => line.replace(/^node /, "").split(" ")[0] ?? "");
  expect(files.filter((file) => !existsSync(join(root, file)))).toEqual([]);
});

it("every dependency earns its line in DEVELOPERS.md, and its version is exact", () => {
  const text = read("DEVELOPERS.md");
  const families = [...text.matchAll(/(@[\w-]+)\/…/g)].map((m) => `${m[1]}/`);
  const unnamed = Object.keys(packages).filter(
    (name) => !new RegExp(`(^|[ |,])${name}([ ,|]|$)`, "m").test(text) && !families.some((f) => name.startsWith(f)),
  );
  expect(unnamed).toEqual([]);
  expect(Object.entries(packages).filter(([, version]) => !/^\d/.test(version))).toEqual([]);
});

it("the lock file names no download address", () => {
  expect(read("package-lock.json")).not.toMatch(/"resolved": "https?:/);
});
