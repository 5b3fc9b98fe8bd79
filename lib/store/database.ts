import { PrismaBetterSqlite3 } from "@prisma/adapter-better-sqlite3";
import { PrismaPg } from "@prisma/adapter-pg";
import { environment, isPostgresUrl } from "../platform/environment.ts";
import { isRefusal } from "../quantity/problem.ts";
import { PrismaClient as PostgresClient } from "./generated/postgres/client.ts";
import { PrismaClient } from "./generated/sqlite/client.ts";
import { TextClient } from "./text-client.ts";
import { watched, watchStatements } from "./watch-statements.ts";

/**
 * The door to the database. `Db` is what store functions take: the client itself or a transaction of it. Nothing
 * outside lib/store names Prisma. The models are the same for both databases, and so is the type: SQLite's.
 */
export type Database = PrismaClient;
export type Db = Omit<PrismaClient, "$connect" | "$disconnect" | "$on" | "$use" | "$extends" | "$transaction">;
export type Dialect = "sqlite" | "postgres";

const shared = globalThis as {
  cupboardAssayDb?: Database;
  cupboardAssayReadDb?: Database;
  cupboardAssayDialects?: WeakMap<object, Dialect>;
};
// Beside the connections it speaks of, since a bundler may load this file more than once.
shared.cupboardAssayDialects ??= new WeakMap();
const dialects = shared.cupboardAssayDialects;

/** Which database a connection or a transaction speaks to, for the few statements that differ (lib/store/dialect.ts). */
export function dialectOf(db: Db): Dialect {
  const dialect = dialects.get(db);
  if (dialect === undefined) throw new Error("This connection was not opened by openDatabase or inTransaction.");
  return dialect;
}

const known = <T extends object>(db: T, dialect: Dialect): T => {
  dialects.set(db, dialect);
  return db;
};

const busyTimeout = 10_000;
const transactionOptions = { maxWait: 30_000, timeout: 600_000 };

/**
 * Opens a SQLite file (its path, or file:PATH) or a PostgreSQL database (postgres://…). On SQLite WAL is set when the file
 * is migrated, and the busy timeout lets two processes take turns.
 */
export function openDatabase(where: string): Database {
  if (isPostgresUrl(where)) {
    const adapter = new PrismaPg({
      connectionString: where,
      Client: TextClient,
      connectionTimeoutMillis: 10_000,
      keepAlive: true,
      allowExitOnIdle: true,
    });
    const client = new PostgresClient({ adapter, transactionOptions, ...watched });
    return known(watchStatements(client) as unknown as Database, "postgres");
  }
  const adapter = new PrismaBetterSqlite3({
    url: where.startsWith("file:") ? where : `file:${where}`,
    timeout: busyTimeout,
  });
  const client = new PrismaClient({ adapter, transactionOptions, ...watched });
  return known(watchStatements(client) as unknown as Database, "sqlite");
}

/** The process's own connection, opened at first use (kept on globalThis so that a development reload reuses it). */
export function database(): Database {
  shared.cupboardAssayDb ??= openDatabase(environment().databaseUrl);
  return shared.cupboardAssayDb;
}

/** Where published snapshots are read from: a replica that DATABASE_READ_URL names, else the registry's own database. */
export function readDatabase(): Database {
  const { readUrl } = environment();
  if (readUrl === null) return database();
  shared.cupboardAssayReadDb ??= openDatabase(readUrl);
  return shared.cupboardAssayReadDb;
}

/**
 * Runs `work` in one transaction: all of it happens, or none; nothing where it throws, and nothing where it answers with a refusal
 * (`lib/quantity/problem.ts`). One writes at a time, in whichever process: each transaction
 * first takes the registry's one lock for writing. So a workflow may look, decide and write without another coming
 * between; readers never wait.
 */
export async function inTransaction<T>(
  db: Database,
  work: (tx: Db) => Promise<T>,
  options: { timeout?: number } = {},
): Promise<T> {
  const dialect = dialectOf(db);
  const waitUntil = performance.now() + transactionOptions.maxWait;
  for (;;) {
    try {
      return await db.$transaction(async (tx) => {
        known(tx, dialect);
        await lockForWriting(tx as Db);
        const answer = await work(tx as Db);
        if (isRefusal(answer)) throw new TakenBack(answer);
        return answer;
      }, options);
    } catch (error) {
      if (error instanceof TakenBack) return error.answer as T;
      if (!(error instanceof WriterBusy) || performance.now() > waitUntil) throw error;
      await new Promise((later) => setTimeout(later, 5 + Math.random() * 20));
    }
  }
}

class WriterBusy extends Error {}

/** Carries a refusal out of a transaction that is to leave nothing behind. */
class TakenBack extends Error {
  constructor(readonly answer: unknown) {
    super("refused");
  }
}

/**
 * PostgreSQL waits by itself. SQLite would wait too, but with the whole process standing still, and a transaction that has
 * read before it writes is refused at once: so the lock is asked for first, without waiting, and asked for again later.
 */
async function lockForWriting(tx: Db): Promise<void> {
  if (dialectOf(tx) === "postgres") {
    await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtext('cupboard-assay writer'))`;
    return;
  }
  await tx.$queryRaw`PRAGMA busy_timeout = 0`;
  try {
    await tx.$executeRaw`DELETE FROM "RateBucket" WHERE false`;
  } catch (error) {
    throw (error as { code?: string }).code === "P1008" ||
      /SQLITE_BUSY|database is locked|timed out/i.test(String(error))
      ? new WriterBusy("another process writes", { cause: error })
      : error;
  } finally {
    await tx.$queryRawUnsafe(`PRAGMA busy_timeout = ${busyTimeout}`);
  }
}

/** Reads as at one moment, for hours if need be, while others go on writing. */
export const atOneMoment = <T>(db: Database, work: (tx: Db) => Promise<T>): Promise<T> => {
  const dialect = dialectOf(db);
  // SQLite's reads always are; its type of the options knows no other level.
  const level: object = dialect === "postgres" ? { isolationLevel: "RepeatableRead" } : {};
  return db.$transaction((tx) => work(known(tx as Db, dialect)), { ...level, timeout: 21_600_000 });
};

/**
 * The same database with an interruption: `onCall` runs before every store call and may throw. Fault-injection tests
 * use it to show that a workflow stopped at any call leaves nothing half-written.
 */
export function withInterruption(db: Database, onCall: (callNumber: number) => void): Database {
  let calls = 0;
  const extended = db.$extends({
    query: {
      $allOperations({ args, query }) {
        calls += 1;
        onCall(calls);
        return query(args);
      },
    },
  }) as unknown as Database;
  return known(extended, dialectOf(db));
}
