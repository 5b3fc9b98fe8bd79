import { Spectral } from "@stoplight/spectral-core";
import { oas } from "@stoplight/spectral-rulesets";
import { beforeAll, expect, it } from "vitest";
import { GET as readOpenApi } from "@/app/api/v1/openapi.json/route.ts";
import { asked, publishedRegistry } from "../support/published-database.ts";

beforeAll(async () => {
  const { db } = await publishedRegistry();
  const words = { name: "Elm Street Lending Shelf", licence: "CC-BY-4.0", contact: "corrections@shelf.example" };
  await db.registry.upsert({ where: { id: 1 }, create: words, update: words });
});

/** The linter's own rules for OpenAPI documents (spectral:oas, all of them), over the document as it is sent. */
const lint = async (document: unknown) => {
  const spectral = new Spectral();
  spectral.setRuleset({ extends: [[oas as never, "all"]] });
  const found = await spectral.run(JSON.parse(JSON.stringify(document)));
  return found.map(({ code, path, message }) => `${code} at ${path.join(".")}: ${message}`);
};
const sent = async () => (await (await readOpenApi(asked("/api/v1/openapi.json"))).json()) as Record<string, unknown>;

it("the OpenAPI document passes a linter's rules", async () => {
  expect(await lint(await sent())).toEqual([]);
}, 60_000);

it("which do find what is wrong", async () => {
  const document = await sent();
  const paths = document["paths"] as Record<string, { get: Record<string, unknown> }>;
  delete paths["/api/v1/items"]!.get["operationId"];
  paths["/api/v1/limits"]!.get["responses"] = { 200: { content: {} } };
  const found = await lint({ ...document, openapi: "3.1.0", info: { title: "x", version: "1" } });
  expect(found.map((one) => one.split(" ")[0])).toEqual(
    expect.arrayContaining(["operation-operationId", "oas3-schema"]),
  );
}, 60_000);
