// Item pages as readers get them: made once by the framework, kept in memory with the state of what they tell, and handed out
// only while that state stands, whichever process changed it, so that a correction is never answered with an older page. Plain
// JavaScript before the framework (server.mjs); the state is asked for through a connection of its own, in one question.
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { ServerResponse } from "node:http";
import { join, resolve } from "node:path";
import { promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";
import Database from "better-sqlite3";
import pg from "pg";

/** An item's newest page and its revisions, in each language; not the pages that stand beside items under the same address. */
const keepable = /^(?:\/es)?\/items\/(?!(?:compare|suggestions)$)([a-z0-9-]+)(?:\/revisions\/\d+)?$/;

/** The item that an address is about, where its page may be kept. */
export const itemOfPath = (path) => keepable.exec(path)?.[1] ?? null;

/** What works on a kept page without the framework. */
const suggestions = readFileSync(new URL("./app/_components/search-suggestions.js", import.meta.url), "utf8")
  .replace(/^\s*(?:\/\/.*|\/\*\*.*\*\/|\/\*\*\n(?:\s*\*.*\n)+?\s*\*\/)\n/gm, "")
  .replace(/^\s+/gm, "");

/**
 * A page that asks for it (`data-only-read`) without the framework's scripts and without the second copy of all it says that
 * they would wake it from: it is read, not worked with, and its evidence is long. Data for machines stays.
 */
export function onlyRead(html) {
  if (!html?.includes("data-only-read")) return html;
  return html
    .replace(/<script\b(?![^>]*"application\/ld\+json")[^>]*>.*?<\/script>/gs, "")
    .replace(/<link\b[^>]*\bas="script"[^>]*>/g, "")
    .replace(
      "</body>",
      () =>
        `<script type="module">${suggestions}for(const frame of document.querySelectorAll("[data-suggestions]"))offerSuggestions(frame)</script></body>`,
    );
}

const members = [
  `(SELECT max(seq) FROM "Publication" WHERE slug = $1)`,
  `(SELECT count(*) FROM "MakerAnswer" a JOIN "Item" i ON i.id = a."itemId" WHERE i.slug = $1)`,
  `(SELECT max(a."createdAt") FROM "MakerAnswer" a JOIN "Item" i ON i.id = a."itemId" WHERE i.slug = $1)`,
  `(SELECT JSON_OF(name, invented, licence, contact, "rightOfReply") FROM "Registry" WHERE id = 1)`,
].join(", ");
const asSql = (jsonOf) => `SELECT ${jsonOf}(${members.replace("JSON_OF", jsonOf)}) AS state`;
let question;

/**
 * What an item's pages depend on: its newest publication, its maker's answers, the registry's own words, the day. Null where
 * the database does not answer: then nothing is kept and nothing handed out.
 */
async function stateOf(slug) {
  try {
    question ??= open();
    const answer = await question(slug);
    return answer === null ? null : `${answer} ${new Date().toISOString().slice(0, 10)}`;
  } catch {
    question = undefined;
    return null;
  }
}

/** A connection of its own to where pages are read from: of a replica its own state, so that no page is kept as newer than it is. */
function open() {
  const url = process.env.DATABASE_READ_URL || process.env.DATABASE_URL;
  if (url !== undefined && /^postgres(ql)?:/.test(url)) {
    const pool = new pg.Pool({ connectionString: url, max: 2, connectionTimeoutMillis: 10_000, allowExitOnIdle: true });
    // The pool mends itself: a connection that breaks is replaced at the next question.
    pool.on("error", () => {});
    const sql = asSql("jsonb_build_array");
    return (slug) =>
      pool.query({ name: "state-of-item", text: sql, values: [slug] }).then(
        ({ rows }) => JSON.stringify(rows[0].state),
        () => null,
      );
  }
  const file = url?.replace(/^file:/, "") ?? join(resolve(process.env.DATA_DIR ?? "./data"), "registry.db");
  const db = new Database(resolve(file), { readonly: true, timeout: 10_000 });
  const asked = db.prepare(asSql("json_array").replaceAll("$1", "@slug"));
  return async (slug) => asked.get({ slug }).state;
}

/** Oldest use first: path to { state, page }. */
const kept = new Map();
const mostBytes = 64 * 1024 * 1024;
let bytes = 0;

function drop(path) {
  bytes -= kept.get(path)?.page.size ?? 0;
  kept.delete(path);
}

function keep(path, state, page) {
  drop(path);
  kept.set(path, { state, page });
  bytes += page.size;
  for (const oldest of kept.keys()) {
    if (bytes <= mostBytes && kept.size <= 5000) break;
    drop(oldest);
  }
}

function keptPage(path, state) {
  const entry = kept.get(path);
  if (entry === undefined) return null;
  kept.delete(path);
  if (entry.state !== state) {
    bytes -= entry.page.size;
    return null;
  }
  kept.set(path, entry);
  return entry.page;
}

/** Takes an answer down instead of sending it. */
class Held extends ServerResponse {
  chunks = [];
  write(chunk, encoding, done) {
    this.chunks.push(typeof chunk === "string" ? Buffer.from(chunk, "utf8") : Buffer.from(chunk));
    (typeof encoding === "function" ? encoding : done)?.();
    return true;
  }
  end(chunk, encoding, done) {
    if (chunk && typeof chunk !== "function") this.write(chunk);
    this.finished = true;
    process.nextTick(() => {
      this.emit("finish");
      this.emit("close");
      [chunk, encoding, done].find((each) => typeof each === "function")?.();
    });
    return this;
  }
  writeHead(status, ...rest) {
    this.statusCode = status;
    for (const [name, value] of Object.entries(rest.at(-1) ?? {})) this.setHeader(name, value);
    return this;
  }
  flushHeaders() {}
}

/** Lines of an answer that are about how it was sent, or told what the framework kept. */
const ofTheWay = /^(?:content-length|content-encoding|transfer-encoding|connection|keep-alive|date|etag|x-nextjs-.*)$/;

/** The page at a path as the framework makes it for nobody in particular: neither cookies nor anything else of the asker's is shown to it. */
async function made(render, req, path) {
  const { method, url, headers } = req;
  const held = new Held(req);
  Object.assign(req, { method: "GET", url: path });
  req.headers = {
    host: headers.host,
    "user-agent": "page-cache",
    "x-request-id": headers["x-request-id"],
    "x-forwarded-for": headers["x-forwarded-for"],
  };
  try {
    await render(req, held);
  } finally {
    Object.assign(req, { method, url, headers });
  }
  const text = Buffer.concat(held.chunks).toString("utf8");
  const whole = held.statusCode === 200 && text.includes("data-only-read");
  const body = Buffer.from(onlyRead(text), "utf8");
  const etag = whole ? `W/"${createHash("sha256").update(body).digest("base64url").slice(0, 27)}"` : null;
  const sent = Object.entries(held.getHeaders()).filter(([name]) => !ofTheWay.test(name));
  const vary = new Set(`${held.getHeader("vary") ?? ""}, Accept-Encoding`.split(/\s*,\s*/).filter(Boolean));
  // Half as much again for what is kept compressed beside it.
  return {
    ...{
      status: held.statusCode,
      headers: [...sent.filter(([name]) => name !== "vary"), ["vary", [...vary].join(", ")]],
    },
    ...{ body, etag, whole, compressed: new Map(), size: body.length * 1.5 + 2000 },
  };
}

const compressors = {
  br: (body) =>
    promisify(brotliCompress)(body, {
      params: { [constants.BROTLI_PARAM_QUALITY]: 9, [constants.BROTLI_PARAM_SIZE_HINT]: body.length },
    }),
  gzip: (body) => promisify(gzip)(body, { level: 9 }),
};

/** The smallest way of sending that a reader takes. */
const encodingFor = (accepted = "") =>
  Object.keys(compressors).find((one) =>
    new RegExp(`(?:^|,)\\s*${one}\\s*(?:,|$|;(?!\\s*q=0(?:\\.0*)?\\s*(?:,|$)))`).test(accepted),
  );

const knows = (ifNoneMatch, etag) =>
  ifNoneMatch !== undefined &&
  (ifNoneMatch.trim() === "*" ||
    ifNoneMatch.split(",").some((one) => one.trim().replace(/^W\//, "") === etag.replace(/^W\//, "")));

async function send(req, res, page) {
  res.statusCode = page.status;
  for (const [name, value] of page.headers) res.setHeader(name, value);
  if (page.etag !== null) {
    res.setHeader("etag", page.etag);
    if (knows(req.headers["if-none-match"], page.etag)) {
      res.statusCode = 304;
      return res.end();
    }
  }
  const encoding = page.body.length > 1000 ? encodingFor(req.headers["accept-encoding"]) : undefined;
  let body = page.body;
  if (encoding !== undefined) {
    if (!page.compressed.has(encoding)) page.compressed.set(encoding, compressors[encoding](page.body));
    body = await page.compressed.get(encoding);
    res.setHeader("content-encoding", encoding);
  }
  res.setHeader("content-length", body.length);
  res.end(req.method === "HEAD" ? undefined : body);
}

/** Pages being made, by path and state: who asks for one meanwhile waits for it. */
const making = new Map();

/**
 * The framework's handler with the kept pages before it. Whatever is not a plain question for an item's page goes to it
 * unseen.
 */
export function withKeptPages(render) {
  return async (req, res) => {
    const path = (req.url ?? "").split("?")[0];
    const slug = itemOfPath(path);
    const plain = (req.method === "GET" || req.method === "HEAD") && req.headers.rsc === undefined;
    const state = plain && slug !== null ? await stateOf(slug) : null;
    if (state === null) return render(req, res);
    const known = keptPage(path, state);
    if (known !== null) return send(req, res, known);
    const name = `${path} ${state}`;
    if (!making.has(name)) {
      // The state is of before the page was made: what is published meanwhile makes it old.
      const work = made(render, req, path).finally(() => making.delete(name));
      making.set(name, work);
    }
    const page = await making.get(name);
    if (page.whole) keep(path, state, page);
    return send(req, res, page);
  };
}
