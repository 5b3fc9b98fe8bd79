import { describe, expect, it } from "vitest";
import { dealToSpots, inOrderOfTime } from "@/lib/readings/in-order-of-time.ts";

const reading = (id: string, takenAt: string | null, batchId: string, row: number) => ({ id, takenAt, batchId, row });
const order = (...readings: ReturnType<typeof reading>[]) => inOrderOfTime(readings).map((r) => r.id);

describe("readings in the order of shooting", () => {
  it("by their moments, whatever their files and offsets", () => {
    expect(
      order(
        reading("c", "2026-05-02T10:05:00+02:00", "f", 2),
        reading("a", "2026-05-02T08:00:00Z", "g", 9),
        reading("b", "2026-05-02T09:01:00+01:00", "f", 3),
      ),
    ).toEqual(["a", "b", "c"]);
  });
  it("shots of one moment by file, then by row", () => {
    const at = "2026-05-02T10:00:00Z";
    expect(
      order(
        reading("d", at, "g", 1),
        reading("b", at, "f", 7),
        reading("c", at, "f", 8),
        reading("a", at, "e", 9),
        reading("e", at, "h", 1),
      ),
    ).toEqual(["a", "b", "c", "d", "e"]);
  });
  it("by the file throughout, where one of them has no moment", () => {
    expect(
      order(
        reading("c", "2026-05-02T08:00:00Z", "g", 2),
        reading("b", null, "f", 3),
        reading("a", "2026-05-02T10:00:00Z", "f", 2),
      ),
    ).toEqual(["a", "b", "c"]);
  });
});

describe("dealing readings to spots", () => {
  it("the same number on every spot, in order", () => {
    expect(dealToSpots([1, 2, 3, 4], ["A", "B"])).toEqual([
      ["A", [1, 2]],
      ["B", [3, 4]],
    ]);
  });
  it.each([
    ["no spots", [1, 2], []],
    ["fewer readings than spots", [1], ["A", "B"]],
    ["counts that do not go", [1, 2, 3], ["A", "B"]],
  ])("nothing where somebody has to say: %s", (_, readings, spots) => {
    expect(dealToSpots(readings, spots)).toBeNull();
  });
});
