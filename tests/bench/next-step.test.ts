import { describe, expect, it } from "vitest";
import { nextStep, type Progress } from "@/app/bench/items/next-step.ts";

const ready: Progress = {
  state: "draft",
  objects: 1,
  parts: 2,
  partsWithoutResult: 0,
  reviewed: false,
  published: false,
  changed: false,
};

describe("the next step of an item", () => {
  it.each<[Partial<Progress>, string]>([
    [{ objects: 0, parts: 0 }, "add-object"],
    [{ parts: 0 }, "add-part"],
    [{ partsWithoutResult: 1 }, "assign-readings"],
    [{}, "submit-or-publish"],
    [{ state: "submitted" }, "wait-for-review"],
    [{ state: "approved", reviewed: true }, "publish"],
    [{ state: "approved", reviewed: false }, "review-again"],
    [{ state: "published", published: true }, "nothing-new"],
    [{ state: "published", published: true, changed: true }, "publish-again"],
    [{ state: "published", published: true, changed: true, partsWithoutResult: 1 }, "assign-readings"],
    [{ state: "submitted", published: true, changed: true }, "wait-for-review"],
    [{ state: "withdrawn", published: true, changed: true }, "withdrawn"],
  ])("%j: %s", (given, step) => expect(nextStep({ ...ready, ...given })).toBe(step));
});
