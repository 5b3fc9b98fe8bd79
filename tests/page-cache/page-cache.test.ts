import { spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, inject, it } from "vitest";
import { freshDatabase, onPostgres } from "../support/test-context.ts";

/** Runs lines against the page cache in a process of its own, since it keeps one state for each process. */
function ran(lines: string, database: string): unknown {
  const script = `
    import PageCache from ${JSON.stringify(join(import.meta.dirname, "..", "..", "page-cache.mjs"))};
    import { copyFileSync } from "node:fs";
    import Database from "better-sqlite3";
    const page = (text) => ({ kind: "APP_PAGE", html: text });
    const publish = (db, seq) => db.prepare("INSERT INTO Publication (seq, itemId, slug, revision, kind, publishedAt, snapshot, snapshotSha256, previousHash, hash, publishedById) VALUES (?, 'i', 's' || ?, 1, 'first', '2026-01-01', '{}', '', '', 'h' || ?, 'p')").run(seq, seq, seq);
    const open = () => { const db = new Database(process.env.DATABASE_URL.slice(5)); db.pragma("foreign_keys = OFF"); return db; };
    ${lines}`;
  const run = spawnSync(process.execPath, ["--input-type=module", "-e", script], {
    cwd: join(import.meta.dirname, "..", ".."),
    encoding: "utf8",
    env: { ...process.env, DATABASE_URL: database },
  });
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout);
}

const file = () => `file:${join(mkdtempSync(join(tmpdir(), "assay-page-cache-")), "registry.db")}`;

it("hands a page out again until anything is published, by whichever process", () => {
  expect(
    ran(
      `copyFileSync(${JSON.stringify(inject("baseDatabase"))}, process.env.DATABASE_URL.slice(5));
      const cache = new PageCache();
      const miss = await cache.get("/a");
      await cache.set("/a", page("one"));
      const hit = (await new PageCache().get("/a")).value.html;
      publish(open(), 1);
      const after = await cache.get("/a");
      console.log(JSON.stringify([miss, hit, after]));`,
      file(),
    ),
  ).toEqual([null, "one", null]);
});

it("does not keep a page that was made while something was published", () => {
  expect(
    ran(
      `copyFileSync(${JSON.stringify(inject("baseDatabase"))}, process.env.DATABASE_URL.slice(5));
      const cache = new PageCache();
      await cache.get("/a");
      publish(open(), 1);
      await cache.set("/a", page("made before"));
      const after = await cache.get("/a");
      await cache.set("/a", page("made after"));
      console.log(JSON.stringify([after, (await cache.get("/a")).value.html]));`,
      file(),
    ),
  ).toEqual([null, "made after"]);
});

it.runIf(onPostgres())("asks PostgreSQL as well, and answers with nothing old", () => {
  const { url } = freshDatabase();
  const answers = ran(
    `import pg from "pg";
      const client = new pg.Client(process.env.DATABASE_URL);
      await client.connect();
      const cache = new PageCache();
      const miss = await cache.get("/a");
      await cache.set("/a", page("one"));
      const hit = (await new PageCache().get("/a")).value.html;
      await client.query(\`INSERT INTO "Registry" (id, name) VALUES (1, 'Another name')\`);
      const after = await cache.get("/a");
      await cache.set("/a", page("two"));
      const again = (await cache.get("/a")).value.html;
      await client.end();
      console.log(JSON.stringify([miss, hit, after, again]));`,
    url,
  );
  expect(answers).toEqual([null, "one", null, "two"]);
});

it("keeps nothing where the database does not answer, and no more than it may", () => {
  expect(
    ran(
      `const cache = new PageCache();
      await cache.set("/a", page("one"));
      const without = await cache.get("/a");
      copyFileSync(${JSON.stringify(inject("baseDatabase"))}, process.env.DATABASE_URL.slice(5));
      for (let n = 0; n < 80; n++) { await cache.get("/" + n); await cache.set("/" + n, page("x".repeat(1024 * 1024))); }
      let kept = 0;
      for (let n = 0; n < 80; n++) if (await cache.get("/" + n)) kept += 1;
      console.log(JSON.stringify([without, kept <= 32 && kept > 20]));`,
      file(),
    ),
  ).toEqual([null, true]);
});

it("sends a page that is only read without the framework's scripts, and any other as it is", () => {
  const html = (mark: string) =>
    `<html><head><link rel="preload" as="script" href="/a.js"/><link rel="stylesheet" href="/a.css"/></head><body><article${mark}>1 &lt; 2</article><script type="application/ld+json">{"a":1}</script><script src="/a.js" async=""></script><script>self.__next_f.push([1,"</article>\n"])</script></body></html>`;
  const [read, other] = ran(
    `copyFileSync(${JSON.stringify(inject("baseDatabase"))}, process.env.DATABASE_URL.slice(5));
      const cache = new PageCache();
      const pages = ${JSON.stringify([html(" data-only-read"), html("")])}.map(page);
      for (const [n, one] of pages.entries()) { await cache.get("/" + n); await cache.set("/" + n, one); }
      console.log(JSON.stringify(pages.map((one) => one.html)));`,
    file(),
  ) as [string, string];
  expect(other).toBe(html(""));
  expect(read).toContain(
    '<article data-only-read>1 &lt; 2</article><script type="application/ld+json">{"a":1}</script>',
  );
  expect(read).toContain('<link rel="stylesheet" href="/a.css"/>');
  expect(read).not.toMatch(/a\.js|__next_f/);
  expect(read).toMatch(/<script type="module">.*offerSuggestions\(frame\)<\/script><\/body><\/html>$/s);
});
