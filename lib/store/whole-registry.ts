import { sha256 } from "../platform/sha256.ts";
import { type Db, dialectOf } from "./database.ts";
import { Prisma } from "./generated/sqlite/client.ts";

/**
 * A whole registry as plain rows, the same from either database: what `export` writes and `import` reads. Parents come
 * before their children. What is left out is told below, each with its reason; a test holds that every table is in one list.
 */
export const movedTables = {
  User: ["id"],
  AuthAccount: ["id"],
  Invitation: ["id"],
  Registry: ["id"],
  Instrument: ["id"],
  CheckStandard: ["id"],
  Item: ["id"],
  Specimen: ["id"],
  Component: ["id"],
  Photo: ["id"],
  PhotoFile: ["photoId", "key"],
  Spot: ["id"],
  OtherTest: ["id"],
  Session: ["id"],
  RawFile: ["id"],
  RememberedMapping: ["headerFingerprint"],
  ImportBatch: ["id"],
  Reading: ["id"],
  CheckReading: ["id"],
  SetAsideRow: ["id"],
  ReportedValue: ["id"],
  Review: ["id"],
  ReviewClaim: ["id"],
  ReviewComment: ["id"],
  Retest: ["id"],
  MakerAnswer: ["id"],
  TestRequest: ["id"],
  StartedRevision: ["itemId"],
  Publication: ["seq"],
  PublicationSource: ["publicationSeq", "batchId"],
  LogHead: ["seq"],
  AuditEntry: ["id"],
  SentOnce: ["id"],
} as const satisfies Partial<Record<Prisma.ModelName, readonly string[]>>;
export type MovedTable = keyof typeof movedTables;
export const movedTableNames = Object.keys(movedTables) as MovedTable[];

export const leftBehind = {
  AuthSession: "people sign in anew at the new place: a session is good only with the secret it was signed with",
  AuthTwoFactor:
    "keys of the second step, encrypted with a secret that stays: people turn it on again at the new place",
  AuthVerification: "codes that are waiting to be used, good for minutes",
  SetUpToken: "a start without an owner prints a new one",
  RateBucket: "counts of the last minutes",
} as const satisfies Partial<Record<Prisma.ModelName, string>>;

export const everyTable: readonly string[] = Object.values(Prisma.ModelName);

/** Columns that stay with a table that stays. */
const leftColumns: Partial<Record<MovedTable, Record<string, true>>> = { User: { twoFactorEnabled: true } };

type Value = string | number | boolean | null | Date | Uint8Array;
export type Row = Record<string, Value>;
type Delegate = {
  findMany: (args: object) => Promise<Row[]>;
  createMany: (args: { data: Row[] }) => Promise<unknown>;
  count: () => Promise<number>;
};
const delegateOf = (db: Db, table: MovedTable): Delegate =>
  (db as unknown as Record<string, Delegate>)[`${table.charAt(0).toLowerCase()}${table.slice(1)}`]!;

/** Every row of a table in the order of its key, some at a time. */
export async function* rowsOf(db: Db, table: MovedTable): AsyncGenerator<Row> {
  const key: readonly string[] = movedTables[table];
  const take = table === "RawFile" ? 4 : 500;
  const orderBy = key.map((name) => ({ [name]: "asc" }));
  const omit = leftColumns[table] ?? {};
  let from = {};
  for (;;) {
    const rows = await delegateOf(db, table).findMany({ take, orderBy, omit, ...from });
    yield* rows;
    const last = rows.at(-1);
    if (!last || rows.length < take) return;
    const values = Object.fromEntries(key.map((name) => [name, last[name]]));
    from = { skip: 1, cursor: key.length === 1 ? values : { [key.join("_")]: values } };
  }
}

export const insertRows = async (tx: Db, table: MovedTable, rows: Row[]): Promise<void> => {
  await delegateOf(tx, table).createMany({ data: rows });
};

/** The first table that holds a row; null for a registry that nothing has been written to. */
export async function firstUsedTable(db: Db): Promise<MovedTable | null> {
  for (const table of movedTableNames) if ((await delegateOf(db, table).count()) > 0) return table;
  return null;
}

/** Numbers that a database gives by itself go on after the ones that came in: SQLite sees to it, PostgreSQL is told. */
export async function continueNumbers(tx: Db): Promise<void> {
  if (dialectOf(tx) === "sqlite") return;
  await tx.$executeRaw`SELECT setval(pg_get_serial_sequence('"AuditEntry"', 'id'), max(id)) FROM "AuditEntry" HAVING max(id) IS NOT NULL`;
}

/** A row as one line of JSON, members by name: a time as { date }, bytes as { bytes } in base64. */
export function rowLine(row: Row): string {
  const plain = Object.keys(row)
    .sort()
    .map((name) => [name, plainValue(row[name] ?? null)]);
  // Two signs that end a line for some readers, and may stand in a person's text.
  return JSON.stringify(Object.fromEntries(plain))
    .replace(/\u2028/g, "\\u2028")
    .replace(/\u2029/g, "\\u2029");
}

const plainValue = (value: Value): unknown => {
  if (value instanceof Date) return { date: value.toISOString() };
  return value instanceof Uint8Array ? { bytes: Buffer.from(value).toString("base64") } : value;
};

/** The row again; null for a line that is none. */
export function readRowLine(line: string): Row | null {
  let read: unknown;
  try {
    read = JSON.parse(line);
  } catch {
    return null;
  }
  if (typeof read !== "object" || read === null || Array.isArray(read)) return null;
  const row: Row = {};
  for (const [name, value] of Object.entries(read)) {
    const known = readValue(value);
    if (known === undefined) return null;
    row[name] = known;
  }
  return row;
}

function readValue(value: unknown): Value | undefined {
  if (value === null || ["string", "number", "boolean"].includes(typeof value)) return value as Value;
  const { date, bytes } = value as { date?: unknown; bytes?: unknown };
  if (typeof date === "string" && !Number.isNaN(Date.parse(date))) return new Date(date);
  return typeof bytes === "string" ? new Uint8Array(Buffer.from(bytes, "base64")) : undefined;
}

/**
 * What a table holds in one figure: the SHA-256 of its rows' sorted SHA-256s, so that the order in which a database hands
 * them out does not matter.
 */
export function tableDigest(): { add: (line: string) => void; done: () => { rows: number; sha256: string } } {
  const hashes: string[] = [];
  return {
    add: (line) => void hashes.push(sha256(line)),
    done: () => ({ rows: hashes.length, sha256: sha256(hashes.sort().join("\n")) }),
  };
}
