import { expect, it } from "vitest";
import { benchHref, benchQuery } from "@/app/bench/bench-query.ts";
import { narrowings, readingQuery } from "@/app/bench/readings/reading-filters.ts";

it("reads what the bench is asked for, and takes what cannot be read as not asked", () => {
  expect(benchQuery({})).toEqual({ start: 0, files: 0 });
  expect(benchQuery({ find: " mug ", state: "draft", start: "50", files: "100" })).toEqual({
    ...{ find: "mug", state: "draft", start: 50, files: 100 },
  });
  expect(benchQuery({ find: "  ", state: "lost", start: "-1", files: ["1", "2"] })).toEqual({ start: 0, files: 0 });
});

it("leads to another page of one list and leaves the other and what was asked as they were", () => {
  const query = benchQuery({ find: "mug & jar", state: "draft", start: "50", files: "100" });
  expect(benchHref(query, { start: 100 })).toBe("/bench?find=mug+%26+jar&state=draft&start=100&files=100");
  expect(benchHref(query, { start: 0, files: 0 })).toBe("/bench?find=mug+%26+jar&state=draft");
  expect(benchHref(benchQuery({}), {})).toBe("/bench");
});

it("which items' parts are offered narrows no list of readings", () => {
  expect(narrowings(readingQuery.parse({ partsOf: "mug" }))).toBe(0);
  expect(narrowings(readingQuery.parse({ partsOf: "mug", find: "a", file: "f" }))).toBe(2);
});
