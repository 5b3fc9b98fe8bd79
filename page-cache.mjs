// Where Next keeps rendered item pages: in memory, each with the state of the registry it was made from. A page is handed
// out again only while that state stands, whichever process changed it, so a correction is never answered with an older
// page. Plain JavaScript, since Next loads it by itself; the state is asked for through a connection of its own, in one question.
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import Database from "better-sqlite3";
import pg from "pg";

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

const mostBytes = 64 * 1024 * 1024;

/** Oldest use first. One for the process: Next makes a handler for each request. */
const kept = new Map();
let bytes = 0;
let question;
/** The state as it was when a page was asked for and had to be made: what is published while it is made makes it old. */
const asked = new Map();

const members = [
  `(SELECT max(seq) FROM "Publication")`,
  `(SELECT count(*) FROM "MakerAnswer")`,
  `(SELECT max("createdAt") FROM "MakerAnswer")`,
  `(SELECT JSON_OF(name, invented, licence, contact, "rightOfReply") FROM "Registry" WHERE id = 1)`,
].join(", ");
const asSql = (jsonOf) => `SELECT ${jsonOf}(${members.replace("JSON_OF", jsonOf)}) AS state`;

/**
 * What every item page depends on: the newest publication, makers' answers, the registry's own words, the day. Null where the
 * database does not answer, as while the product is being built: then nothing is kept and nothing handed out.
 */
async function state() {
  try {
    question ??= open();
    const answer = await question();
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
    return () =>
      pool.query(sql).then(
        ({ rows }) => JSON.stringify(rows[0].state),
        () => null,
      );
  }
  const file = url?.replace(/^file:/, "") ?? join(resolve(process.env.DATA_DIR ?? "./data"), "registry.db");
  const db = new Database(resolve(file), { readonly: true, timeout: 10_000 });
  const asked = db.prepare(asSql("json_array"));
  return async () => asked.get().state;
}

const sizeOf = (value) => (value?.html?.length ?? 0) * 2 + (value?.rscData?.length ?? 0);

function drop(key) {
  bytes -= kept.get(key)?.size ?? 0;
  kept.delete(key);
}

export default class PageCache {
  async get(key) {
    const entry = kept.get(key);
    const now = await state();
    if (now === null || entry?.state !== now) {
      drop(key);
      if (now !== null && !asked.has(key)) asked.set(key, now);
      return null;
    }
    kept.delete(key);
    kept.set(key, entry);
    return { value: entry.value, lastModified: entry.lastModified };
  }

  async set(key, value) {
    // The same object is answered with now, so the first reader gets what every later one gets.
    if (value?.kind === "APP_PAGE") value.html = onlyRead(value.html);
    const made = asked.get(key) ?? (await state());
    drop(key);
    asked.delete(key);
    if (value === null || made === null) return;
    const entry = { value, size: sizeOf(value), state: made, lastModified: Date.now() };
    kept.set(key, entry);
    bytes += entry.size;
    for (const oldest of kept.keys()) {
      if (bytes <= mostBytes && kept.size <= 5000) break;
      drop(oldest);
    }
  }

  async revalidateTag() {
    kept.clear();
    asked.clear();
    bytes = 0;
  }

  resetRequestCache() {}
}
