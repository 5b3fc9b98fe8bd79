import { isBuiltin } from "node:module";
import { describe, expect, it } from "vitest";
import { bundleForBrowser, pureRooms, wholeRooms } from "./support/bundle.ts";

const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;
const wholeFace = 'export * from "./lib/index.ts";';
const packagesButQuantiles = ["zod", "papaparse", "canonicalize", "@e965/xlsx"];
const everythingElse = ["@stdlib/*", ...packagesButQuantiles];

/** The rooms between readings and a decision; a reader of files, pages and exports are no part of the measurement. */
const measurement = ["quantity", "statistics", "reconcile", "limits", "consistency"];
/** Rows of law and coefficients of absorption: data, which a page loads when it needs them. */
const isTable = (file: string): boolean => /^lib\/(limits|attenuation)\/tables\//.test(file);

/** What a package adds to a bundle when it stands in it alone. */
const packageParts = {
  "the distribution functions in use (@stdlib)": 'export * from "./lib/statistics/distributions.ts";',
  "zod, as the snapshot's schema uses it": 'export * from "./lib/publication/snapshot.ts";',
  papaparse: 'export * from "papaparse";',
  "@e965/xlsx": 'export * from "@e965/xlsx";',
  canonicalize: 'export { default } from "canonicalize";',
};

describe("the pure rooms in a browser", { timeout: 60_000 }, () => {
  it("bundle without any Node built-in, room by room and together", async () => {
    const rows: Record<string, { "gzipped, all in": string; "without the packages": string; minified: string }> = {};
    for (const [name, contents] of [
      ["lib/index.ts", wholeFace],
      ...pureRooms.map((room) => [`lib/${room}`, wholeRooms([room])] as const),
      ["all pure rooms", wholeRooms(pureRooms)],
    ] as const) {
      const whole = await bundleForBrowser(contents);
      const own = await bundleForBrowser(contents, { apart: everythingElse });
      expect(whole.warnings, name).toEqual([]);
      expect(whole.inputs.filter((input) => isBuiltin(input) || input.startsWith("node:"))).toEqual([]);
      const outside = Object.values(whole.meta.outputs).flatMap((output) => output.imports.map((one) => one.path));
      expect(outside, `${name} asks for something that no browser has`).toEqual([]);
      rows[name] = {
        "gzipped, all in": kB(whole.gzipped),
        "without the packages": kB(own.gzipped),
        minified: kB(whole.bytes),
      };
    }
    console.table(rows);
  });

  it("keep the measurement under 60 kB gzipped, the quantiles and the tables of data loaded apart", async () => {
    const rows: Record<string, { "own code": string; "its tables of data": string; "code and quantiles": string }> = {};
    const measure = async (name: string, rooms: readonly string[], others: (file: string) => boolean) => {
      const code = wholeRooms(rooms, isTable);
      const codeOnly = (file: string) => isTable(file) || others(file);
      const own = await bundleForBrowser(code, { apart: everythingElse, filesWhere: codeOnly });
      const withTables = await bundleForBrowser(wholeRooms(rooms), { apart: everythingElse, filesWhere: others });
      const whole = await bundleForBrowser(code, { apart: packagesButQuantiles, filesWhere: codeOnly });
      rows[name] = {
        "own code": kB(own.gzipped),
        "its tables of data": kB(Math.max(0, withTables.gzipped - own.gzipped)),
        "code and quantiles": kB(whole.gzipped),
      };
      return own.gzipped;
    };
    for (const room of pureRooms) await measure(`lib/${room}`, [room], (file) => !file.startsWith(`lib/${room}/`));
    const together = await measure(measurement.join(", "), measurement, () => false);
    await measure("and amounts, attenuation", [...measurement, "amounts", "attenuation"], () => false);
    const face = await bundleForBrowser(wholeFace, { apart: everythingElse });
    const faceWhole = await bundleForBrowser(wholeFace);
    console.table(rows);
    console.log(
      `lib/index.ts: ${kB(face.gzipped)} gzipped with the quantiles apart, ${kB(faceWhole.gzipped)} with them in (they cost ${kB(faceWhole.gzipped - face.gzipped)})`,
    );
    expect(together).toBeLessThan(60_000);
    expect(face.gzipped).toBeLessThan(24_000);
  });

  it("pay this for the packages", async () => {
    for (const [name, contents] of Object.entries(packageParts)) {
      const { gzipped, bytes } = await bundleForBrowser(contents);
      console.log(`${name}: ${kB(gzipped)} gzipped, ${kB(bytes)} minified`);
      expect(gzipped).toBeGreaterThan(0);
    }
  });
});
