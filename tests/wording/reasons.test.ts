import { describe, expect, it } from "vitest";
import { sharedReasons } from "@/lib/wording/reasons.ts";

const own = (text: string) => text;

describe("reasons that are said once", () => {
  it("no word is lost, and only whole sentences from the beginning are shared", () => {
    const all = [
      "It is on migration. It needs a laboratory. Here: in scope.",
      "It is on a coating. It needs a scraping.",
      "It is on migration. It needs a laboratory. There: in scope.",
      "It is on migration. It needs another one. There: in scope.",
    ];
    const groups = sharedReasons(all, own);
    expect(groups.map(({ shared, each }) => [shared, each.length])).toEqual([
      ["It is on migration.", 3],
      ["It is on a coating. It needs a scraping.", 1],
    ]);
    for (const { shared, each } of groups)
      for (const { of, own } of each) expect([shared, own].filter(Boolean).join(" ")).toBe(of);
  });
  it("does not cut at a number or inside a name", () => {
    const [group] = sharedReasons(["Over 1.5 mg/kg, e.g. in paint. A.", "Over 1.5 mg/kg, e.g. in paint. B."], own);
    expect(group?.shared).toBe("Over 1.5 mg/kg, e.g. in paint.");
    expect(sharedReasons([], own)).toEqual([]);
  });
});
