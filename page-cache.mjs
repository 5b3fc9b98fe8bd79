// Item pages as readers get them: made once by the framework, kept in memory with the state of what they tell, and handed out
// only while that state stands, whichever process changed it, so that a correction is never answered with an older page. Plain
// JavaScript before the framework (server.mjs); the state is asked for through a connection of its own, in one question.
import { join, resolve } from "node:path";
import Database from "better-sqlite3";
import pg from "pg";
import { isOnlyRead, made, send } from "./only-read.mjs";

/** An item's newest page and its revisions, in each language; not the pages that stand beside items under the same address. */
const keepable = /^(?:\/es)?\/items\/(?!(?:compare|suggestions)$)([a-z0-9-]+)(?:\/revisions\/\d+)?$/;

/** The item that an address is about, where its page may be kept. */
export const itemOfPath = (path) => keepable.exec(path)?.[1] ?? null;

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

/** Pages being made, by path and state: who asks for one meanwhile waits for it. */
const making = new Map();

/**
 * The framework's handler with readers' pages before it: those about an item kept, the others made for each who asks. Whatever
 * is not a plain question for one of them goes to the framework unseen.
 */
export function withReadersPages(render) {
  return async (req, res) => {
    const path = (req.url ?? "").split("?")[0];
    const plain = (req.method === "GET" || req.method === "HEAD") && req.headers.rsc === undefined;
    if (!plain || !isOnlyRead(path)) return render(req, res);
    const slug = itemOfPath(path);
    const state = slug === null ? null : await stateOf(slug);
    if (state === null) return send(req, res, await made(render, req, req.url));
    const known = keptPage(path, state);
    if (known !== null) return send(req, res, known, true);
    const name = `${path} ${state}`;
    if (!making.has(name)) {
      // The state is of before the page was made: what is published meanwhile makes it old.
      const work = made(render, req, path).finally(() => making.delete(name));
      making.set(name, work);
    }
    const page = await making.get(name);
    if (page.whole) keep(path, state, page);
    return send(req, res, page, true);
  };
}
