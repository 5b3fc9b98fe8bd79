import { expect, it } from "vitest";
import { fromOwnOrigin } from "@/lib/access/own-origin.ts";

const asked = (headers: Record<string, string>): boolean =>
  fromOwnOrigin(new Headers(headers), "https://shelf.example");

it("takes requests of its own pages, of links and of programs", () => {
  expect(asked({ host: "shelf.example", origin: "https://shelf.example" })).toBe(true);
  expect(asked({ host: "shelf.example" })).toBe(true);
  // Behind a proxy that hands on another name, and at the machine itself.
  expect(asked({ host: "127.0.0.1:3000", origin: "https://shelf.example" })).toBe(true);
  expect(asked({ host: "localhost:3000", origin: "http://localhost:3000" })).toBe(true);
});

it("takes none of a page of another site, whatever it looks like", () => {
  for (const origin of [
    "https://elsewhere.example",
    "https://shelf.example.elsewhere.example",
    "https://shelf.example:8443",
    "null",
    "",
    "shelf.example",
  ])
    expect(asked({ host: "shelf.example", origin }), origin).toBe(false);
});
