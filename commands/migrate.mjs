// Applies the migrations of prisma/<database>/migrations with Prisma's own schema engine (WebAssembly, no download),
// so that `prisma migrate deploy` finds the same table of applied migrations wherever that engine can be had.
//   node commands/migrate.mjs [FILE | postgres://…]  apply what is missing; without an argument to the registry of the environment
//   node commands/migrate.mjs --draft NAME           write the difference between the models and the migrations as a new
//                                                    migration of each database (PostgreSQL needs its server's programs)

import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { PrismaBetterSqlite3 } from "@prisma/adapter-better-sqlite3";
import { PrismaPg } from "@prisma/adapter-pg";
import { bindMigrationAwareSqlAdapterFactory } from "@prisma/driver-adapter-utils";
import Database from "better-sqlite3";
import pg from "pg";
import { findPostgres, startPostgres } from "./postgres.mjs";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const migrationsOf = (kind) => join(root, "prisma", kind, "migrations");

// Tables of the search index, written by hand, which the models do not know. FTS5 keeps further tables of its own.
const searchTables = ["item_search", "item_listing", "item_facet", "item_facet_count", "item_word"];
const shadowsOf = (table) => ["", "_data", "_idx", "_content", "_docsize", "_config"].map((end) => `${table}${end}`);
const externalTables = {
  sqlite: [...searchTables, ...shadowsOf("item_search"), ...shadowsOf("item_word_trigrams")],
  postgres: searchTables.map((table) => `public.${table}`),
};

export const isPostgres = (target) => /^postgres(ql)?:\/\//.test(target);
const kindOf = (target) => (isPostgres(target) ? "postgres" : "sqlite");

let engineModule;
async function loadEngine() {
  if (engineModule) return engineModule;
  const bg = await import("@prisma/schema-engine-wasm/schema_engine_bg");
  const entry = createRequire(import.meta.url).resolve("@prisma/schema-engine-wasm");
  const bytes = readFileSync(join(dirname(entry), "schema_engine_bg.wasm"));
  const { instance } = await WebAssembly.instantiate(bytes, { "./schema_engine_bg.js": bg });
  bg.__wbg_set_wasm(instance.exports);
  instance.exports.__wbindgen_start();
  engineModule = bg.SchemaEngine;
  return engineModule;
}

function models(kind) {
  const files = [];
  for (const folder of ["models", kind])
    for (const name of readdirSync(join(root, "prisma", folder))
      .filter((n) => n.endsWith(".prisma"))
      .sort()) {
      const path = `${folder}/${name}`;
      files.push({ path, content: readFileSync(join(root, "prisma", path), "utf8") });
    }
  return files;
}

function migrationsList(kind) {
  const folder = migrationsOf(kind);
  const names = readdirSync(folder, { withFileTypes: true })
    .filter((e) => e.isDirectory())
    .map((e) => e.name)
    .sort();
  return {
    baseDir: folder,
    lockfile: { path: "migration_lock.toml", content: readFileSync(join(folder, "migration_lock.toml"), "utf8") },
    shadowDbInitScript: "",
    migrationDirectories: names.map((name) => ({
      path: name,
      migrationFile: {
        path: "migration.sql",
        content: { tag: "ok", value: readFileSync(join(folder, name, "migration.sql"), "utf8") },
      },
    })),
  };
}

/** The adapter for PostgreSQL with two mends: it knows no single-byte "char" (18), and it cuts scripts at every semicolon. */
function postgresFactory(url) {
  const pool = new pg.Pool({ connectionString: url, max: 4 });
  const ask = pool.query.bind(pool);
  pool.query = async (...args) => {
    const answer = await ask(...args);
    for (const field of answer.fields ?? []) if (field.dataTypeID === 18) field.dataTypeID = 25;
    return answer;
  };
  const factory = new PrismaPg(pool, { disposeExternalPool: true });
  const connect = factory.connect.bind(factory);
  // One script sent whole is one transaction: a migration happens or does not.
  factory.connect = async () =>
    Object.assign(await connect(), { executeScript: async (script) => void (await ask(script)) });
  return factory;
}

async function engineFor(target) {
  const SchemaEngine = await loadEngine();
  const kind = kindOf(target);
  const factory = kind === "postgres" ? postgresFactory(target) : new PrismaBetterSqlite3({ url: `file:${target}` });
  return SchemaEngine.new(
    { datamodels: models(kind).map((m) => [m.path, m.content]) },
    () => {},
    bindMigrationAwareSqlAdapterFactory(factory),
  );
}

/** Brings a SQLite file or a PostgreSQL database up to date; returns the names of the migrations applied now. */
export async function migrate(target) {
  return isPostgres(target) ? oneAtATime(target, () => apply(target)) : apply(prepareFile(target));
}

async function apply(target) {
  const kind = kindOf(target);
  const engine = await engineFor(target);
  const { appliedMigrationNames } = await engine.applyMigrations({
    migrationsList: migrationsList(kind),
    filters: { externalTables: externalTables[kind], externalEnums: [] },
  });
  engine.free();
  return appliedMigrationNames;
}

function prepareFile(file) {
  mkdirSync(dirname(file), { recursive: true });
  const db = new Database(file, { timeout: 10_000 });
  db.pragma("journal_mode = WAL");
  db.close();
  return file;
}

/** Several processes may start over one database: the first brings it up to date, the others wait and find it so. */
async function oneAtATime(url, work) {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query("SELECT pg_advisory_lock(hashtext('cupboard-assay migrations'))");
    return await work();
  } finally {
    await client.end();
  }
}

/** What would have to be done to bring the target to the models, as SQL; "" where they agree. */
export async function difference(target, { fromEmpty = false } = {}) {
  const kind = kindOf(target);
  const engine = await engineFor(target);
  const files = models(kind);
  const result = await engine.diff({
    from: fromEmpty ? { tag: "empty" } : { tag: "schemaDatasource", files, configDir: root },
    to: { tag: "schemaDatamodel", files },
    script: true,
    exitCode: true,
    shadowDatabaseUrl: null,
    filters: { externalTables: externalTables[kind], externalEnums: [] },
  });
  engine.free();
  const sql = result.stdout ?? "";
  return sql.includes("This is an empty migration") ? "" : sql.trim();
}

async function draft(name, target) {
  const kind = kindOf(target);
  const first = migrationsList(kind).migrationDirectories.length === 0;
  // In a process of its own: the engine keeps its connection, and with it the lock, until the process ends.
  if (!first) spawnSync(process.execPath, [fileURLToPath(import.meta.url), target], { stdio: "inherit" });
  const sql = await difference(target, { fromEmpty: first });
  if (sql === "") return console.log(`${kind}: the models and the migrations agree.`);
  const stamp = new Date().toISOString().replace(/\D/g, "").slice(0, 14);
  const folder = join(migrationsOf(kind), `${stamp}_${name}`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "migration.sql"), `${sql}\n`);
  console.log(`Wrote prisma/${kind}/migrations/${stamp}_${name}/migration.sql — read it before you commit it.`);
}

async function draftBoth(name) {
  const scratch = mkdtempSync(join(tmpdir(), "assay-"));
  await draft(name, join(scratch, "scratch.db"));
  rmSync(scratch, { recursive: true, force: true });
  if (findPostgres() === null)
    return console.log("postgres: not drafted, since its server's programs are not on this machine.");
  const server = await startPostgres();
  try {
    await draft(name, server.admin);
  } finally {
    server.stop();
  }
}

/** The registry of the environment, as lib/platform/environment.ts reads it. */
const ownTarget = () =>
  process.env.DATABASE_URL?.replace(/^file:/, "") ?? join(process.env.DATA_DIR ?? "data", "registry.db");

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (process.argv[2] === "--draft") await draftBoth(process.argv[3] ?? "change");
  else
    console.log((await migrate(process.argv[2] ?? ownTarget())).map((n) => `applied ${n}`).join("\n") || "Up to date.");
  process.exit(0);
}
