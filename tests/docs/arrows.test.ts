import { readdirSync, readFileSync } from "node:fs";
import { join, relative, resolve, sep } from "node:path";
import { describe, expect, it } from "vitest";
import { importsOf } from "../support/imports.ts";

/**
 * The rules of the arrows: which room may import which. A room is a folder of lib; the table below is the whole law.
 * A file listed in `open` may be imported by anyone (pure words or types that are nobody's secret).
 */
const root = resolve(import.meta.dirname, "..", "..");
const pure = [
  "quantity",
  "statistics",
  "readings",
  "reconcile",
  "amounts",
  "attenuation",
  "limits",
  "consistency",
  "publication",
];
const leftOf = (room: string): string[] => ["quantity", "statistics", ...pure.slice(2, pure.indexOf(room))];
const allowed: Record<string, string[]> = {
  quantity: [],
  statistics: ["quantity"],
  ...Object.fromEntries(pure.slice(2).map((room) => [room, leftOf(room)])),
  search: ["quantity"],
  exports: pure.concat("wording"),
  wording: pure,
  platform: pure,
  store: pure.concat("platform", "search"),
  files: pure.concat("platform"),
  access: pure.concat("platform", "store"),
  workflows: pure.concat("exports", "wording", "search", "store", "files", "access", "platform"),
};
const open = new Set(["lib/platform/paths.ts", "lib/platform/sha256.ts", "lib/access/permissions.ts"]);
/** Type-only imports that close no circle at run time: what a workflow is handed names the database and the person. */
const typesOnly = new Set(["lib/platform/context.ts"]);
const pureRooms = new Set([...pure, "search", "exports", "wording"]);

const filesUnder = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name) && !entry.parentPath.includes("generated"))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join("/"));

const roomOf = (file: string): string | null => /^lib\/([^/]+)\//.exec(file)?.[1] ?? null;
const libFiles = filesUnder("lib");

describe("arrows", () => {
  it("every room of lib has its row in the law", () => {
    expect([...new Set(libFiles.map(roomOf))].filter((room) => room !== null && !(room in allowed))).toEqual([]);
  });

  it("a room imports only the rooms it may", () => {
    const crossed = libFiles.flatMap((file) => {
      const room = roomOf(file);
      if (room === null) return [];
      return importsOf(file)
        .filter(({ target, typeOnly }) => {
          const other = roomOf(target);
          if (target.startsWith("app/")) return true;
          if (other === null || other === room || open.has(target)) return false;
          if (typeOnly && (typesOnly.has(file) || typesOnly.has(target))) return false;
          return !allowed[room]?.includes(other);
        })
        .map(({ target }) => `${file} → ${target}`);
    });
    expect(crossed).toEqual([]);
  });

  it("workflows never import each other", () => {
    const crossed = filesUnder("lib/workflows").flatMap((file) =>
      importsOf(file)
        .filter(({ target }) => target.startsWith("lib/workflows/"))
        .map(({ target }) => `${file} → ${target}`),
    );
    expect(crossed).toEqual([]);
  });

  it("pure rooms import only each other and packages that run in a browser", () => {
    const packages = new Set(["zod", "papaparse", "canonicalize", "@e965/xlsx"]);
    const foreign = libFiles
      .filter((file) => pureRooms.has(roomOf(file) ?? ""))
      .flatMap((file) => importsOf(file).map(({ target }) => ({ file, target })))
      .filter(({ target }) => !target.startsWith("lib/") && !packages.has(target) && !target.startsWith("@stdlib/"));
    expect(foreign).toEqual([]);
  });

  it("pure rooms ask for no time, chance, process or network", () => {
    const forbidden = /\bprocess\.|\bDate\.now\(|\bnew Date\(\)|\bMath\.random\(|\bfetch\(|\bglobalThis\.crypto\b/;
    const asking = libFiles
      .filter((file) => pureRooms.has(roomOf(file) ?? ""))
      .filter((file) =>
        forbidden.test(readFileSync(join(root, file), "utf8").replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, "")),
      );
    expect(asking).toEqual([]);
  });

  it("only the store names Prisma", () => {
    const naming = [...libFiles, ...filesUnder("app")].filter(
      (file) =>
        roomOf(file) !== "store" &&
        importsOf(file).some(({ target }) => /prisma/i.test(target) && !target.startsWith("better-auth/")),
    );
    expect(naming).toEqual([]);
  });

  it("there is one barrel: lib/index.ts", () => {
    expect(libFiles.filter((file) => /(^|\/)index\.tsx?$/.test(file) && file !== "lib/index.ts")).toEqual([]);
  });

  it("no file is named utils, common or misc, and all names are kebab-case", () => {
    const names = [...libFiles, ...filesUnder("app"), ...filesUnder("tests"), ...filesUnder("sample-data")];
    expect(names.filter((file) => /(^|\/)(utils?|common|misc|helpers?)\.tsx?$/.test(file))).toEqual([]);
    expect(names.filter((file) => !/^[a-z0-9-]+(\.(test|d))?\.tsx?$/.test(file.split("/").at(-1) ?? ""))).toEqual([]);
  });
});
