import { expect, test } from "vitest";
import { slugOf } from "@/lib/quantity/slug.ts";

test.each([
  ["Mug, Größe 2", "mug-grosse-2"],
  ["  Crème brûlée dish! ", "creme-brulee-dish"],
  ["ゆのみ", "item"],
  ["", "item"],
  ["x".repeat(100), "x".repeat(80)],
])("the address of %j is %s", (name, slug) => expect(slugOf(name)).toBe(slug));
