import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { notHerePages, withNotHere } from "@/not-here.mjs";

const pages = {
  en: Buffer.from("<main>This page is not here</main>"),
  es: Buffer.from("<main>Aquí no hay nada</main>"),
};
const blank = "<html><body></body></html>";

let server: Server;
let base: string;
beforeAll(async () => {
  server = createServer(
    withNotHere(
      (req: IncomingMessage, res: ServerResponse) => {
        const url = req.url ?? "/";
        const html = url.includes("data") ? "application/json" : "text/html; charset=utf-8";
        res.statusCode = url.includes("there") ? 200 : 404;
        res.setHeader("content-type", html);
        if (url.includes("packed")) {
          res.setHeader("content-encoding", "gzip");
          res.setHeader("etag", '"blank"');
          res.write(gzipSync(blank));
          res.end();
        } else if (url.includes("headed")) {
          res.writeHead(res.statusCode);
          res.end(blank);
        } else res.end(blank);
      },
      (language: "en" | "es") => pages[language],
    ),
  );
  await new Promise<void>((resolve) => server.listen(0, resolve));
  base = `http://localhost:${(server.address() as AddressInfo).port}`;
});
afterAll(() => server.close());

const asked = async (path: string, method = "GET") => {
  const answer = await fetch(base + path, { method });
  return { status: answer.status, headers: answer.headers, body: await answer.text() };
};

describe("an address at which there is nothing", () => {
  it.each(["/items/nothing", "/packed", "/headed?q=1"])(
    "%s is told in full, whatever stood in the framework's answer",
    async (path) => {
      const { status, headers, body } = await asked(path);
      expect(status).toBe(404);
      expect(body).toBe(String(pages.en));
      expect(headers.get("content-encoding")).toBeNull();
      expect(headers.get("etag")).toBeNull();
      expect(headers.get("content-type")).toBe("text/html; charset=utf-8");
    },
  );
  it("is told in the language of the address", async () => {
    expect((await asked("/es/items/nothing")).body).toBe(String(pages.es));
    expect((await asked("/essays")).body).toBe(String(pages.en));
  });
  it("is told in size alone to who asks for the head", async () => {
    const { status, headers, body } = await asked("/items/nothing", "HEAD");
    expect([status, headers.get("content-length"), body]).toEqual([404, String(pages.en.length), ""]);
  });
  it("is left as it is among signed-in pages, data, forms, and where there is something", async () => {
    for (const path of ["/bench/items/nothing", "/account", "/api/data", "/there"])
      expect((await asked(path)).body, path).toBe(blank);
    expect((await asked("/items/nothing", "POST")).body).toBe(blank);
  });
  it("is left as it is where the page itself cannot be had, which is asked for again a minute later at the earliest", async () => {
    let asked = 0;
    const failing = createServer((_, res) => {
      asked += 1;
      res.writeHead(503).end();
    });
    await new Promise<void>((resolve) => failing.listen(0, resolve));
    const { ask, pageOf } = notHerePages(`http://localhost:${(failing.address() as AddressInfo).port}`);
    await ask();
    expect([pageOf("en"), pageOf("es"), asked]).toEqual([undefined, undefined, 2]);
    failing.close();
  });
});
