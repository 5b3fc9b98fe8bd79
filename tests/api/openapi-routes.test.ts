import { readdirSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, it } from "vitest";
import { GET as readOpenApi } from "@/app/api/v1/openapi.json/route.ts";
import { asked, publishedRegistry } from "../support/published-database.ts";

beforeAll(async () => {
  await publishedRegistry();
});

/** Routes that the interface document leaves out, each with its reason. One that ends in "/" covers what is under it. */
const leftOut: { address: string; why: string }[] = [
  { address: "/healthz", why: "for whoever runs the server" },
  { address: "/sitemap.xml", why: "for search engines, by a protocol of its own" },
  {
    address: "/items/suggestions",
    why: "what our own search field asks while someone types; no promise is made of it",
  },
  { address: "/requests/send", why: "where our own form for a test is sent; it answers with a page" },
  {
    address: "/es/",
    why: "the same feeds and pictures told in Spanish; they are for people, and their pages name them",
  },
  { address: "/amounts/", why: "pictures of the calculator's page, made from the page's own address" },
  { address: "/api/v1/{...rest}", why: "answers every address that is none" },
  { address: "/api/auth/", why: "signing in" },
  { address: "/bench/", why: "testers' work, behind signing in" },
  { address: "/review/", why: "reviewers' work, behind signing in" },
  { address: "/account/", why: "a person's own account" },
];

it("the OpenAPI document lists every public route, and no other", async () => {
  const app = join(import.meta.dirname, "..", "..", "app");
  const files = readdirSync(app, { recursive: true, encoding: "utf8" }).filter((file) => /[\\/]route\.ts$/.test(file));
  const addresses = files.map((file) =>
    `/${file.replaceAll("\\", "/")}`
      .replace(/\/route\.ts$/, "")
      .replace(/\/\([^)]+\)/g, "")
      .replace(/\[([^\]]+)\]/g, "{$1}"),
  );
  const isLeftOut = (address: string) =>
    leftOut.some((one) => address === one.address || (one.address.endsWith("/") && address.startsWith(one.address)));
  const document = (await (await readOpenApi(asked("/api/v1/openapi.json"))).json()) as { paths: object };
  expect(addresses.filter((address) => !isLeftOut(address)).sort()).toEqual(Object.keys(document.paths).sort());
  expect(addresses.length).toBeGreaterThan(15);
});
