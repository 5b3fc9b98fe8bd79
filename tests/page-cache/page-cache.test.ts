import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, inject, it } from "vitest";
import { itemOfPath } from "../../page-cache.mjs";
import { freshDatabase, onPostgres } from "../support/test-context.ts";

const root = join(import.meta.dirname, "..", "..");

/**
 * Runs lines against a server with the kept pages before it, in a process of its own, since it keeps one state for each
 * process. `framework` stands for what makes a page; `made` counts how often it was asked.
 */
function ran(lines: string, database: string): unknown {
  const script = `
    import { copyFileSync } from "node:fs";
    import { createServer, request } from "node:http";
    import Database from "better-sqlite3";
    import { withReadersPages } from ${JSON.stringify(join(root, "page-cache.mjs"))};
    let made = 0;
    let text = "one";
    let status = 200;
    let meanwhile = async () => {};
    let seen;
    const whole = (words) => "<html><body><article>" + words + "</article></body></html>";
    const framework = async (req, res) => {
      made += 1;
      seen = { method: req.method, url: req.url, headers: req.headers };
      const page = whole(text);
      await meanwhile();
      res.setHeader("content-type", "text/html; charset=utf-8");
      res.setHeader("content-security-policy", "default-src 'self'");
      res.setHeader("cache-control", "public, max-age=0, must-revalidate");
      res.statusCode = req.url.includes("no-such") ? 404 : status;
      res.write(page.slice(0, 20));
      res.end(page.slice(20));
    };
    const server = createServer(withReadersPages(framework));
    await new Promise((done) => server.listen(0, done));
    const ask = (path, headers = {}, method = "GET") => new Promise((resolve) => {
      request({ port: server.address().port, path, headers, method, agent: false }, (answer) => {
        const parts = [];
        answer.on("data", (part) => parts.push(part));
        answer.on("end", () => resolve({ status: answer.statusCode, headers: answer.headers, body: Buffer.concat(parts) }));
      }).end();
    });
    const words = async (path) => /<article>(.*)<\\/article>/.exec((await ask(path)).body.toString())?.[1];
    const prepare = () => copyFileSync(${JSON.stringify(inject("baseDatabase"))}, process.env.DATABASE_URL.slice(5));
    const open = () => { const db = new Database(process.env.DATABASE_URL.slice(5)); db.pragma("foreign_keys = OFF"); return db; };
    const publish = (db, slug, seq) => db.prepare("INSERT INTO Publication (seq, itemId, slug, revision, kind, publishedAt, snapshot, snapshotSha256, previousHash, hash, publishedById) VALUES (?, 'i', ?, ?, 'first', '2026-01-01', '{}', '', '', 'h' || ?, 'p')").run(seq, slug, seq, seq);
    ${lines}
    process.exit(0);`;
  const run = spawnSync(process.execPath, ["--input-type=module", "-e", script], {
    cwd: root,
    encoding: "utf8",
    env: { ...process.env, DATABASE_URL: database },
  });
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout);
}

const file = () => `file:${join(mkdtempSync(join(tmpdir(), "assay-page-cache-")), "registry.db")}`;

it("hands a page out again until something is published about its item, by whichever process", () => {
  expect(
    ran(
      `prepare();
      const db = open();
      publish(db, "poppy-mug", 1);
      const first = await words("/items/poppy-mug");
      text = "two";
      const again = await words("/items/poppy-mug");
      publish(db, "another-mug", 2);
      const other = await words("/items/poppy-mug");
      publish(db, "poppy-mug", 3);
      const after = await words("/items/poppy-mug");
      text = "three";
      const inSpanish = await words("/es/items/poppy-mug");
      const older = await words("/items/poppy-mug/revisions/1");
      const stays = await words("/items/poppy-mug");
      console.log(JSON.stringify([first, again, other, after, inSpanish, older, stays, made]));`,
      file(),
    ),
  ).toEqual(["one", "one", "one", "two", "three", "three", "two", 4]);
});

it("makes a page anew for a maker's answer and for the registry's own words", () => {
  expect(
    ran(
      `prepare();
      const db = open();
      publish(db, "poppy-mug", 1);
      db.prepare("INSERT INTO Item (id, slug, name, category, createdById, updatedAt) VALUES ('i', 'poppy-mug', 'Mug', 'toy', 'p', 0)").run();
      await words("/items/poppy-mug");
      text = "two";
      db.prepare("INSERT INTO MakerAnswer (id, itemId, receivedOn, fromWhom, text, addedById) VALUES ('a', 'i', '2026-01-01', 'M', 'T', 'p')").run();
      const answered = await words("/items/poppy-mug");
      text = "three";
      db.prepare("INSERT OR REPLACE INTO Registry (id, name) VALUES (1, 'Another name')").run();
      console.log(JSON.stringify([answered, await words("/items/poppy-mug")]));`,
      file(),
    ),
  ).toEqual(["two", "three"]);
});

it("does not keep a page that was made while something was published", () => {
  expect(
    ran(
      `prepare();
      const db = open();
      meanwhile = async () => publish(db, "poppy-mug", 1);
      const before = await words("/items/poppy-mug");
      meanwhile = async () => {};
      text = "two";
      console.log(JSON.stringify([before, await words("/items/poppy-mug"), await words("/items/poppy-mug"), made]));`,
      file(),
    ),
  ).toEqual(["one", "two", "two", 2]);
});

it("makes a page once for all who ask for it at the same time", () => {
  expect(
    ran(
      `prepare();
      meanwhile = () => new Promise((done) => setTimeout(done, 200));
      const all = await Promise.all(Array.from({ length: 10 }, () => words("/items/poppy-mug")));
      console.log(JSON.stringify([new Set(all).size, made]));`,
      file(),
    ),
  ).toEqual([1, 1]);
});

it.runIf(onPostgres())("asks PostgreSQL as well, and answers with nothing old", () => {
  const { url } = freshDatabase();
  const answers = ran(
    `import pg from "pg";
      const client = new pg.Client(process.env.DATABASE_URL);
      await client.connect();
      const first = await words("/items/poppy-mug");
      text = "two";
      const again = await words("/items/poppy-mug");
      await client.query(\`INSERT INTO "Registry" (id, name) VALUES (1, 'Another name')\`);
      const after = await words("/items/poppy-mug");
      text = "three";
      const kept = await words("/items/poppy-mug");
      await client.end();
      console.log(JSON.stringify([first, again, after, kept]));`,
    url,
  );
  expect(answers).toEqual(["one", "one", "two", "two"]);
});

it("keeps nothing where the database does not answer, and no more than it may", () => {
  expect(
    ran(
      `await ask("/items/poppy-mug");
      await ask("/items/poppy-mug");
      const without = made;
      prepare();
      text = "x".repeat(1024 * 1024);
      for (let n = 0; n < 80; n++) await ask("/items/mug-" + n);
      const before = made;
      for (let n = 79; n >= 0; n--) await ask("/items/mug-" + n);
      const anew = made - before;
      console.log(JSON.stringify([without, anew < 60 && anew > 20]));`,
      file(),
    ),
  ).toEqual([2, true]);
});

it("answers HEAD, a page already known and compressed pages with the framework's own headers", () => {
  const [get, head, known, star, other, zipped, none, refused] = ran(
    `import { brotliDecompressSync, gunzipSync } from "node:zlib";
      prepare();
      text = "a word ".repeat(500);
      const get = await ask("/items/poppy-mug");
      const { etag } = get.headers;
      const head = await ask("/items/poppy-mug", {}, "HEAD");
      const known = await ask("/items/poppy-mug", { "if-none-match": '"else", ' + etag.slice(2) });
      const star = await ask("/items/poppy-mug", { "if-none-match": "*" });
      const other = await ask("/items/poppy-mug", { "if-none-match": '"else"' });
      const gzip = await ask("/items/poppy-mug", { "accept-encoding": "deflate, gzip" });
      const br = await ask("/items/poppy-mug", { "accept-encoding": "gzip, deflate, br" });
      const none = await ask("/items/no-such-mug");
      await ask("/items/no-such-mug");
      const refused = await ask("/items/poppy-mug", { "accept-encoding": "br;q=0, gzip;q=0.0" });
      const told = ({ status, headers: { date, connection, ...headers }, body }) => ({ status, headers, bytes: body.length });
      console.log(JSON.stringify([told(get), told(head), told(known), told(star), told(other),
        [gzip.headers["content-encoding"], gunzipSync(gzip.body).equals(get.body), gzip.body.length < get.body.length / 2,
         br.headers["content-encoding"], brotliDecompressSync(br.body).equals(get.body), br.headers.etag === etag],
        [told(none), made], told(refused)]));`,
    file(),
    // biome-ignore lint/suspicious/noExplicitAny: what the lines above print
  ) as any;
  expect(get.status).toBe(200);
  expect(get.headers).toEqual({
    "content-type": "text/html; charset=utf-8",
    "content-security-policy": "default-src 'self'",
    "cache-control": "public, max-age=0, must-revalidate",
    "content-length": String(get.bytes),
    etag: expect.stringMatching(/^W\/"[\w-]{27}"$/),
    vary: "Accept-Encoding",
  });
  expect(head).toEqual({ ...get, bytes: 0 });
  const { "content-length": _, ...unsent } = get.headers;
  expect([known, star]).toEqual(Array(2).fill({ status: 304, headers: unsent, bytes: 0 }));
  expect([other, refused]).toEqual([get, get]);
  expect(zipped).toEqual(["gzip", true, true, "br", true, true]);
  // What is not there is asked for anew each time.
  expect([none[0].status, none[0].headers.etag, none[1]]).toEqual([404, undefined, 3]);
});

it("shows the framework nothing of who asks, and leaves to it what is no plain question for a reader's page", () => {
  const [seen, passed] = ran(
    `prepare();
      await ask("/items/poppy-mug?from=a-letter", { cookie: "session=1", authorization: "Bearer 1", "x-forwarded-host": "elsewhere.example", "accept-language": "es" }, "HEAD");
      const first = seen;
      const passed = [];
      for (const [path, headers, method] of [["/items/poppy-mug?_rsc=1", { rsc: "1" }], ["/items/poppy-mug", {}, "POST"], ["/items/suggestions?q=a", {}], ["/scan", { cookie: "c" }], ["/bench", { cookie: "c" }], ["/items/poppy-mug/revisions/1/recompute", {}]]) {
        const before = made;
        await ask(path, headers, method);
        await ask(path, headers, method);
        passed.push(made - before === 2 && seen.url === path && seen.method === (method ?? "GET") && (seen.headers.cookie === headers.cookie));
      }
      console.log(JSON.stringify([first, passed]));`,
    file(),
    // biome-ignore lint/suspicious/noExplicitAny: what the lines above print
  ) as any;
  expect([seen.method, seen.url]).toEqual(["GET", "/items/poppy-mug"]);
  expect(Object.keys(seen.headers).sort()).toEqual(["host", "user-agent"]);
  expect(passed).toEqual(Array(6).fill(true));
});

it("makes every other reader's page anew, with all its address asks and nothing of who asks", () => {
  const [bodies, first, twice, known, broken] = ran(
    `import { gunzipSync } from "node:zlib";
      prepare();
      const answer = await ask("/items?q=mug&sort=name", { cookie: "session=1", "accept-language": "es", "accept-encoding": "gzip" });
      const first = seen;
      text = "two";
      const second = await ask("/items?q=mug&sort=name", {});
      const twice = made;
      const known = (await ask("/items?q=mug&sort=name", { "if-none-match": second.headers.etag })).status;
      text = "<script src=/a.js></script>";
      status = 500;
      const broken = await ask("/limits");
      const bodyOf = ({ body, headers }) => String(headers["content-encoding"] ? gunzipSync(body) : body);
      console.log(JSON.stringify([[bodyOf(answer), bodyOf(second)], first, twice, known, [broken.status, bodyOf(broken)]]));`,
    file(),
    // biome-ignore lint/suspicious/noExplicitAny: what the lines above print
  ) as any;
  expect(bodies[0]).toMatch(/<article>one<\/article><script type="module">/);
  expect(bodies[1]).toMatch(/<article>two<\/article><script type="module">/);
  expect([first.method, first.url, Object.keys(first.headers).sort()]).toEqual([
    "GET",
    "/items?q=mug&sort=name",
    ["host", "user-agent"],
  ]);
  expect([twice, known]).toEqual([2, 304]);
  // What failed keeps the scripts that say so.
  expect(broken).toEqual([500, "<html><body><article><script src=/a.js></script></article></body></html>"]);
});

it("takes no page that stands beside items for an item", () => {
  for (const folder of ["(catalogue)", "es"]) {
    const beside = readdirSync(join(root, "app", folder, "items"), { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !/^[[_(]/.test(entry.name))
      .map(({ name }) => name);
    expect(beside.map((name) => itemOfPath(`/items/${name}`))).toEqual(beside.map(() => null));
  }
  expect(["/items/poppy-mug", "/es/items/poppy-mug/revisions/2"].map(itemOfPath)).toEqual(["poppy-mug", "poppy-mug"]);
});
