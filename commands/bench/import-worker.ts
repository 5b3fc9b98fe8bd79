/** One side of the import bench in a process of its own: `ours`, `theirs` or `theirs-batched`, a database's address, how many rows. */
import Sqlite from "better-sqlite3";
import Papa from "papaparse";
import pg from "pg";
import { answerQuestions } from "../../lib/readings/answer-questions.ts";
import { mappingFromUses, usesOf } from "../../lib/readings/column-uses.ts";
import { decodeBytes } from "../../lib/readings/decode-bytes.ts";
import type { Mapping } from "../../lib/readings/mapping.ts";
import { settleAndAsk } from "../../lib/readings/open-questions.ts";
import { proposeMapping } from "../../lib/readings/propose-mapping.ts";
import { batchTable } from "../../lib/store/batch-table.ts";
import { type Database, openDatabase } from "../../lib/store/database.ts";
import type { Batch } from "../../lib/store/imports.ts";
import { importReadingsWorkflow } from "../../lib/workflows/import-readings.ts";
import { receiveFileWorkflow } from "../../lib/workflows/receive-file.ts";
import { longFile } from "./long-file.ts";

const [side, url = "", rows = "0"] = process.argv.slice(2);
const count = Number(rows);

type Outcome<T> = { ok: true; value: T } | { ok: false; problems: unknown };
const must = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

const answers = { k: 2, timeZone: "Europe/Lisbon", quantity: "bulk-mass-fraction" } as const;

/** What the page of a waiting file does: opens it, and looks what it says and what it leaves open. */
async function asked(db: Database, batch: Batch): Promise<Mapping> {
  const table = must(await batchTable(db, batch));
  return settleAndAsk(table, proposeMapping(table).mapping).mapping;
}

/** What loading does first: opens it once more, since the form only says what its columns are. */
async function askedAgain(db: Database, batch: Batch, mapping: Mapping): Promise<Mapping> {
  const table = must(await batchTable(db, batch));
  return must(mappingFromUses(table, mapping, usesOf(table, mapping)));
}

/** As the import's pages do it: received, looked at and mapped, loaded. Answers with what took how long. */
async function ours(bytes: Uint8Array): Promise<string> {
  const db = openDatabase(url);
  const person = { id: "bench", name: "Bench", email: "bench@example.org", role: "tester" as const };
  await db.user.create({ data: person });
  const context = { db, person, clock: () => new Date("2026-11-24T12:00:00Z") };
  const times: string[] = [];
  let since = process.cpuUsage();
  const lap = (what: string) => {
    const { user, system } = process.cpuUsage(since);
    times.push(`${what} ${((user + system) / 1e6).toFixed(1)} s`);
    since = process.cpuUsage();
  };
  const { batch } = must(await receiveFileWorkflow(context, { name: "bench.csv", bytes }));
  lap("receiving");
  const settled = must(answerQuestions(await asked(db, batch), answers));
  lap("the mapping");
  const input = { batchId: batch.id, mapping: await askedAgain(db, batch, settled), instrumentId: null };
  const done = must(
    await importReadingsWorkflow(context, input, ({ step, done, total }) => {
      if (step === "reading" && done === total) lap("reading");
    }),
  );
  lap("writing");
  const stored = await db.reading.count({ where: { batch: { state: "imported" } } });
  if (done.readings !== count || stored !== count) throw new Error(`${stored} of ${count} readings are stored`);
  await db.$disconnect();
  return times.join(", ");
}

const cellsOf = (bytes: Uint8Array): string[][] =>
  Papa.parse<string[]>(must(decodeBytes(bytes)).text, { skipEmptyLines: true }).data;
const columnsOf = (header: string[]) => header.map((_, n) => `c${n} TEXT`).join(", ");

function theirsOnSqlite(bytes: Uint8Array): number {
  const [header = [], ...cells] = cellsOf(bytes);
  const db = new Sqlite(url.slice("file:".length));
  db.exec(`CREATE TABLE peer (${columnsOf(header)})`);
  const insert = db.prepare(`INSERT INTO peer VALUES (${header.map(() => "?").join(", ")})`);
  db.transaction(() => {
    for (const row of cells) insert.run(row);
  })();
  const { n } = db.prepare("SELECT count(*) AS n FROM peer").get() as { n: number };
  db.close();
  return n;
}

async function theirsOnPostgres(bytes: Uint8Array, together: number): Promise<number> {
  const [header = [], ...cells] = cellsOf(bytes);
  const client = new pg.Client(url);
  await client.connect();
  await client.query(`CREATE TABLE peer (${columnsOf(header)})`);
  const statement = (many: number) => {
    const place = (row: number) => `(${header.map((_, n) => `$${row * header.length + n + 1}`).join(", ")})`;
    return {
      name: `insert-${many}`,
      text: `INSERT INTO peer VALUES ${Array.from({ length: many }, (_, row) => place(row)).join(", ")}`,
    };
  };
  const full = statement(together);
  await client.query("BEGIN");
  for (let at = 0; at < cells.length; at += together) {
    const some = cells.slice(at, at + together);
    const { name, text } = some.length === together ? full : statement(some.length);
    await client.query({ name, text, values: together === 1 ? some[0]! : some.flat() });
  }
  await client.query("COMMIT");
  const { n } = (await client.query("SELECT count(*)::int AS n FROM peer")).rows[0] as { n: number };
  await client.end();
  return n;
}

async function theirs(bytes: Uint8Array): Promise<string> {
  const stored = url.startsWith("file:")
    ? theirsOnSqlite(bytes)
    : await theirsOnPostgres(bytes, side === "theirs-batched" ? 1_000 : 1);
  if (stored !== count) throw new Error(`${stored} of ${count} rows are stored`);
  return "";
}

const bytes = new TextEncoder().encode(longFile(count));
const start = performance.now();
const used = process.cpuUsage();
const note = await (side === "ours" ? ours(bytes) : theirs(bytes));
const { user, system } = process.cpuUsage(used);
const seconds = (performance.now() - start) / 1000;
const peak = process.resourceUsage().maxRSS / 1000;
console.log(JSON.stringify({ seconds, processor: (user + system) / 1e6, peak, note }));
process.exit(0);
