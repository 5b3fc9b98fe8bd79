import { isBuiltin } from "node:module";
import { describe, expect, it } from "vitest";
import { bundleForBrowser, pureRooms, wholeRooms } from "./support/bundle.ts";

const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;
const face = 'export * from "./lib/index.ts";';
const quantiles = ["@stdlib/*"];
const everythingElse = ["@stdlib/*", "zod", "papaparse", "canonicalize"];

/** What a package adds to a bundle when it stands in it alone. */
const packageParts = {
  "the distribution functions in use (@stdlib)": 'export * from "./lib/statistics/distributions.ts";',
  "zod, as the snapshot's schema uses it": 'export * from "./lib/publication/snapshot.ts";',
  papaparse: 'export * from "papaparse";',
  canonicalize: 'export { default } from "canonicalize";',
};

describe("the pure rooms in a browser", { timeout: 60_000 }, () => {
  it("bundle without any Node built-in, room by room and together", async () => {
    const rows: Record<string, { "gzipped, all in": string; "without the packages": string; minified: string }> = {};
    for (const [name, contents] of [
      ["lib/index.ts", face],
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

  it("keep the measurement under 60 kB gzipped, the quantiles loaded apart", async () => {
    const own = await bundleForBrowser(face, { apart: quantiles });
    const whole = await bundleForBrowser(face);
    console.log(
      `lib/index.ts: ${kB(own.gzipped)} gzipped with the quantiles apart, ${kB(whole.gzipped)} with them in (they cost ${kB(whole.gzipped - own.gzipped)})`,
    );
    const measuring = wholeRooms(["quantity", "statistics", "reconcile", "consistency", "amounts"]);
    const rooms = await bundleForBrowser(measuring, { apart: everythingElse });
    console.log(`quantity, statistics, reconcile, consistency and amounts whole: ${kB(rooms.gzipped)}, packages apart`);
    expect(own.gzipped).toBeLessThan(60_000);
    expect(rooms.gzipped).toBeLessThan(60_000);
  });

  it("pay this for the packages", async () => {
    for (const [name, contents] of Object.entries(packageParts)) {
      const { gzipped, bytes } = await bundleForBrowser(contents);
      console.log(`${name}: ${kB(gzipped)} gzipped, ${kB(bytes)} minified`);
      expect(gzipped).toBeGreaterThan(0);
    }
  });
});
