import { describe, expect, it } from "vitest";
import { readRange, readShots } from "@/app/bench/readings/selection.ts";

describe("ranges of readings", () => {
  it.each([
    ["12-14, 2", [2, 12, 13, 14]],
    ["3–4;4", [3, 4]],
    ["1", [1]],
    ["0-3", null],
    ["14-12", null],
    ["19-21", null],
    ["twelve", null],
    ["", null],
  ])("%s of 20", (text, expected) => {
    expect(readRange(text, 20)).toEqual(expected);
  });
  it("by the analyser's own numbers", () => {
    const shots = ["#012", "13", "S14", "", "2026-15"].map((number) => ({ number }));
    expect(readShots("12-20", shots)?.map((s) => s.number)).toEqual(["#012", "13", "S14"]);
    expect(readShots("1", shots)).toBe(null);
    expect(readShots("x", shots)).toBe(null);
  });
});
