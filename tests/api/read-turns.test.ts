import { beforeAll, expect, it } from "vitest";
import { answered } from "@/app/api/v1/reply.ts";
import { asked, publishedRegistry } from "../support/published-database.ts";

beforeAll(() => publishedRegistry());

it("an address that reads without end is asked to wait; others, and the machine itself, are not", async () => {
  const work = async () => new Response("read");
  const read = (from: string) => answered(asked("/api/v1/items", { "x-forwarded-for": from }), work);
  const many = await Promise.all(Array.from({ length: 601 }, () => read("198.51.100.77")));
  expect(many.filter((answer) => answer.status === 200)).toHaveLength(600);
  const refused = await read("198.51.100.77");
  expect(refused.status).toBe(429);
  expect(Number(refused.headers.get("retry-after"))).toBeGreaterThan(0);
  expect(await refused.json()).toMatchObject({ status: 429, title: "Too many requests" });
  expect((await read("198.51.100.78")).status).toBe(200);
  for (let n = 0; n < 700; n += 1) expect((await read("127.0.0.1")).status).toBe(200);
});
