// Generates the Prisma clients: one for each database, from prisma/models and the database's own folder. Prisma wants
// one folder with one datasource, so the folder is assembled under .cache first.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");

function sourceDigest(folders) {
  const hash = createHash("sha256");
  for (const folder of folders)
    for (const name of readdirSync(folder)
      .filter((n) => n.endsWith(".prisma"))
      .sort())
      hash.update(name).update(readFileSync(join(folder, name)));
  return hash.digest("hex");
}

export function generateClient() {
  for (const database of ["sqlite", "postgres"]) generateFor(database);
}

function generateFor(database) {
  const folders = [join(root, "prisma", "models"), join(root, "prisma", database)];
  const assembled = join(root, ".cache", database);
  const stamp = join(root, "lib", "store", "generated", database, "source.sha256");
  const digest = sourceDigest(folders);
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === digest) return;
  rmSync(assembled, { recursive: true, force: true });
  mkdirSync(assembled, { recursive: true });
  for (const folder of folders)
    for (const name of readdirSync(folder).filter((n) => n.endsWith(".prisma")))
      cpSync(join(folder, name), join(assembled, name));
  // Prisma would download a schema engine; generating needs none, so it is given a file that exists and cannot serve.
  const noEngine = process.platform === "win32" ? process.execPath : "/bin/false";
  const cli = join(root, "node_modules", "prisma", "build", "index.js");
  const run = spawnSync(process.execPath, [cli, "generate", "--schema", assembled], {
    cwd: root,
    encoding: "utf8",
    env: {
      ...process.env,
      CHECKPOINT_DISABLE: "1",
      PRISMA_SCHEMA_ENGINE_BINARY: noEngine,
      PRISMA_HIDE_UPDATE_MESSAGE: "1",
    },
  });
  if (run.status !== 0) throw new Error(`The database client could not be generated.\n${run.stdout}\n${run.stderr}`);
  writeFileSync(stamp, digest);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) generateClient();
