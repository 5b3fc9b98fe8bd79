import { expect, it } from "vitest";
import { doors, hiddenActions } from "../support/route-doors.ts";
import { routeTable } from "./route-table.ts";

const listed = routeTable
  .trim()
  .split("\n")
  .map((line) =>
    line
      .slice(0, 65)
      .trim()
      .replace(/^(\w+)\s+/, "$1 "),
  );

it("every page, handler and action of app/ stands in the table of who may what, and nothing else does", () => {
  const there = doors().map(({ kind, at }) => `${kind} ${at}`);
  // A new one: run the scan (tests/browser/role-routes.test.ts), look at the line it prints, and put it into the table.
  expect(there.filter((door) => !listed.includes(door))).toEqual([]);
  expect(listed.filter((door) => !there.includes(door))).toEqual([]);
  expect(new Set(listed).size).toBe(listed.length);
});

it("no action hides inside another file", () => {
  expect(hiddenActions()).toEqual([]);
});

it("nobody and a made-up cookie reach no figure of the bench, the desk or the people", () => {
  const inside = routeTable
    .split("\n")
    .filter((line) => /^(?:page|GET|POST) +\/(?:bench|review|account\/(?:people|terms))/.test(line));
  expect(inside.length).toBeGreaterThan(30);
  for (const line of inside) expect(line.slice(66, 82)).toMatch(/^(?:sign in sign in |403 {5}403|404 {5}404)/);
});
