import { PrismaBetterSqlite3 } from "@prisma/adapter-better-sqlite3";
import { environment } from "../platform/environment.ts";
import { PrismaClient } from "./generated/sqlite/client.ts";

/**
 * The door to the database. `Db` is what store functions take: the client itself or a transaction of it. Nothing
 * outside lib/store names Prisma.
 */
export type Database = PrismaClient;
export type Db = Omit<PrismaClient, "$connect" | "$disconnect" | "$on" | "$use" | "$extends" | "$transaction">;

/** Opens a SQLite file. WAL is set when the file is migrated; the busy timeout lets two processes take turns. */
export function openDatabase(file: string): Database {
  return new PrismaClient({
    adapter: new PrismaBetterSqlite3({ url: `file:${file}`, timeout: 10_000 }),
    transactionOptions: { maxWait: 30_000, timeout: 600_000 },
  });
}

const shared = globalThis as { cupboardAssayDb?: Database };

/** The process's own connection, opened at first use (kept on globalThis so that a development reload reuses it). */
export function database(): Database {
  shared.cupboardAssayDb ??= openDatabase(environment().databaseFile);
  return shared.cupboardAssayDb;
}

/** Runs `work` in one transaction: all of it happens, or none. */
export const inTransaction = <T>(db: Database, work: (tx: Db) => Promise<T>): Promise<T> =>
  db.$transaction((tx) => work(tx as Db));

/**
 * The same database with an interruption: `onCall` runs before every store call and may throw. Fault-injection tests
 * use it to show that a workflow stopped at any call leaves nothing half-written.
 */
export function withInterruption(db: Database, onCall: (callNumber: number) => void): Database {
  let calls = 0;
  return db.$extends({
    query: {
      $allOperations({ args, query }) {
        calls += 1;
        onCall(calls);
        return query(args);
      },
    },
  }) as unknown as Database;
}
