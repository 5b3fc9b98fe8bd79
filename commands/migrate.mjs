// Applies the migrations of prisma/<database>/migrations with Prisma's own schema engine (WebAssembly, no download),
// so that `prisma migrate deploy` finds the same table of applied migrations wherever that engine can be had.
//   node commands/migrate.mjs FILE          apply what is missing to a SQLite file
//   node commands/migrate.mjs --draft NAME  write the difference between the models and the migrations as a new migration

import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { PrismaBetterSqlite3 } from "@prisma/adapter-better-sqlite3";
import { bindMigrationAwareSqlAdapterFactory } from "@prisma/driver-adapter-utils";
import Database from "better-sqlite3";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const migrationsDir = join(root, "prisma", "sqlite", "migrations");
// FTS5 keeps its index in tables of its own, which the models do not know.
const shadowsOf = (table) => ["", "_data", "_idx", "_content", "_docsize", "_config"].map((end) => `${table}${end}`);
const shadows = [
  ...shadowsOf("item_search"),
  ...shadowsOf("item_word_trigrams"),
  ...["item_listing", "item_facet", "item_facet_count", "item_word"],
];
const filters = { externalTables: shadows, externalEnums: [] };

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

function models() {
  const files = [];
  for (const folder of ["models", "sqlite"])
    for (const name of readdirSync(join(root, "prisma", folder))
      .filter((n) => n.endsWith(".prisma"))
      .sort()) {
      const path = `${folder}/${name}`;
      files.push({ path, content: readFileSync(join(root, "prisma", path), "utf8") });
    }
  return files;
}

function migrationsList() {
  const names = existsSync(migrationsDir)
    ? readdirSync(migrationsDir, { withFileTypes: true })
        .filter((e) => e.isDirectory())
        .map((e) => e.name)
        .sort()
    : [];
  return {
    baseDir: migrationsDir,
    lockfile: {
      path: "migration_lock.toml",
      content: readFileSync(join(migrationsDir, "migration_lock.toml"), "utf8"),
    },
    shadowDbInitScript: "",
    migrationDirectories: names.map((name) => ({
      path: name,
      migrationFile: {
        path: "migration.sql",
        content: { tag: "ok", value: readFileSync(join(migrationsDir, name, "migration.sql"), "utf8") },
      },
    })),
  };
}

async function engineFor(file) {
  const SchemaEngine = await loadEngine();
  const factory = bindMigrationAwareSqlAdapterFactory(new PrismaBetterSqlite3({ url: `file:${file}` }));
  return SchemaEngine.new({ datamodels: models().map((m) => [m.path, m.content]) }, () => {}, factory);
}

/** Brings the SQLite file up to date; returns the names of the migrations applied now. */
export async function migrate(file) {
  mkdirSync(dirname(file), { recursive: true });
  const db = new Database(file, { timeout: 10_000 });
  db.pragma("journal_mode = WAL");
  db.close();
  const engine = await engineFor(file);
  const { appliedMigrationNames } = await engine.applyMigrations({ migrationsList: migrationsList(), filters });
  engine.free();
  return appliedMigrationNames;
}

async function difference(file, from) {
  const engine = await engineFor(file);
  let sql = "";
  const files = models();
  const result = await engine.diff({
    from: from === "empty" ? { tag: "empty" } : { tag: "schemaDatasource", files, configDir: root },
    to: { tag: "schemaDatamodel", files },
    script: true,
    exitCode: true,
    shadowDatabaseUrl: null,
    filters,
  });
  sql = result.stdout ?? "";
  engine.free();
  return sql;
}

async function draft(name) {
  const scratch = mkdtempSync(join(tmpdir(), "assay-"));
  const file = join(scratch, "scratch.db");
  const first = migrationsList().migrationDirectories.length === 0;
  // In a process of its own: the engine keeps its connection, and with it the lock, until the process ends.
  if (!first) spawnSync(process.execPath, [fileURLToPath(import.meta.url), file], { stdio: "inherit" });
  const sql = await difference(file, first ? "empty" : "database");
  rmSync(scratch, { recursive: true, force: true });
  if (!sql.trim() || sql.includes("This is an empty migration"))
    return console.log("The models and the migrations agree.");
  const stamp = new Date().toISOString().replace(/\D/g, "").slice(0, 14);
  const folder = join(migrationsDir, `${stamp}_${name}`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "migration.sql"), sql);
  console.log(`Wrote prisma/sqlite/migrations/${stamp}_${name}/migration.sql — read it before you commit it.`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (process.argv[2] === "--draft") await draft(process.argv[3] ?? "change");
  else console.log((await migrate(process.argv[2])).map((n) => `applied ${n}`).join("\n") || "Up to date.");
  process.exit(0);
}
