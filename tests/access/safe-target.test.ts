import { expect, it } from "vitest";
import { safeTarget } from "@/lib/access/safe-target.ts";

it("goes on to an address of ours, as it was asked for", () => {
  expect(safeTarget("/bench/items/x?state=all#part", "/bench")).toBe("/bench/items/x?state=all#part");
  expect(safeTarget("/items?q=a%2Fb", "/bench")).toBe("/items?q=a%2Fb");
});

it.each([
  "https://elsewhere.example/",
  "//elsewhere.example",
  "/\\elsewhere.example",
  "\\\\elsewhere.example",
  "/\t/elsewhere.example",
  "/\n/elsewhere.example",
  "/\r\n/elsewhere.example",
  "/./\\elsewhere.example",
  "javascript:alert(1)",
  "data:text/html,x",
  "bench",
  "",
])("never to another site: %j", (next) => {
  const target = safeTarget(next, "/bench");
  const seen = new URL(target, "https://shelf.example");
  expect(seen.origin).toBe("https://shelf.example");
  expect(target).not.toMatch(/^\/[/\\]/);
});
