import type { RowAccount, SetAsideRow } from "../readings/reading.ts";
import type { Db } from "./database.ts";
import { objectRows, textRows } from "./dialect.ts";

export type BatchState = "uploaded" | "imported" | "undone";
export type Batch = {
  id: string;
  fileName: string;
  source: "file" | "hand";
  state: BatchState;
  rawFileId: string;
  sha256: string;
  size: number;
  mapping: string | null;
  instrumentId: string | null;
  account: RowAccount;
  createdById: string;
  createdAt: Date;
};
export type AsideRow = SetAsideRow & { id: string; mended: string[] | null };
/** A reading ready for the table: everything but its assignment. */
export type NewReading = {
  id: string;
  row: number;
  number: string | null;
  takenAtText: string | null;
  takenAt: string | null;
  takenOn: string | null;
  offsetMinutes: number | null;
  secondsCounted: number | null;
  mode: string | null;
  sample: string | null;
  spotText: string | null;
  note: string | null;
  serial: string | null;
  operator: string | null;
  results: string;
  fingerprint: string;
  /** Set where the same reading stands in another file already. */
  asideReason: string | null;
};

const include = { rawFile: { select: { sha256: true, size: true } } } as const;
const fetchBatch = (db: Db, id: string) => db.importBatch.findUnique({ where: { id }, include });
type Row = NonNullable<Awaited<ReturnType<typeof fetchBatch>>>;

const batchOf = (row: Row): Batch => ({
  id: row.id,
  fileName: row.fileName,
  source: row.source === "hand" ? "hand" : "file",
  state: row.state as BatchState,
  rawFileId: row.rawFileId,
  sha256: row.rawFile.sha256,
  size: row.rawFile.size,
  mapping: row.mapping,
  instrumentId: row.instrumentId,
  account: {
    total: row.rowsTotal,
    accepted: row.rowsAccepted,
    setAside: row.rowsSetAside,
    blank: row.rowsBlank,
    header: row.rowsHeader,
  },
  createdById: row.createdById,
  createdAt: row.createdAt,
});

/** Keeps the file byte for byte; a file already kept is not kept twice. */
export async function keepRawFile(tx: Db, file: { name: string; bytes: Uint8Array; sha256: string }): Promise<string> {
  const known = await tx.rawFile.findUnique({ where: { sha256: file.sha256 }, select: { id: true } });
  if (known) return known.id;
  const bytes = new Uint8Array(file.bytes);
  return (await tx.rawFile.create({ data: { name: file.name, bytes, size: bytes.length, sha256: file.sha256 } })).id;
}

export async function rawBytes(db: Db, rawFileId: string): Promise<Uint8Array> {
  return (await db.rawFile.findUniqueOrThrow({ where: { id: rawFileId }, select: { bytes: true } })).bytes;
}

export async function createBatch(
  tx: Db,
  input: { rawFileId: string; fileName: string; source: "file" | "hand"; createdById: string },
): Promise<Batch> {
  return batchOf(await tx.importBatch.create({ data: input, include }));
}

export async function findBatch(db: Db, id: string): Promise<Batch | null> {
  const row = await fetchBatch(db, id);
  return row ? batchOf(row) : null;
}

/** The import of these very bytes that is in force or still waiting, if there is one. */
export async function batchOfFile(db: Db, sha256: string): Promise<Batch | null> {
  const where = { rawFile: { sha256 }, state: { in: ["imported", "uploaded"] } };
  const rows = await db.importBatch.findMany({ where, include, orderBy: { createdAt: "asc" } });
  const row = rows.find((r) => r.state === "imported") ?? rows[0];
  return row ? batchOf(row) : null;
}

/** Files that were brought in, the newest first: all of them, or so many after so many. */
export async function listBatches(db: Db, { start, take }: { start?: number; take?: number } = {}): Promise<Batch[]> {
  const some = { ...(start ? { skip: start } : {}), ...(take === undefined ? {} : { take }) };
  return (await db.importBatch.findMany({ include, orderBy: [{ createdAt: "desc" }, { id: "asc" }], ...some })).map(
    batchOf,
  );
}

const chunked = <T>(rows: T[], size: number): T[][] =>
  Array.from({ length: Math.ceil(rows.length / size) }, (_, i) => rows.slice(i * size, (i + 1) * size));

/** Writes readings in chunks of one statement each: row-by-row inserts are a hundred times slower. */
export async function insertReadings(
  tx: Db,
  batchId: string,
  readings: NewReading[],
  by: { byId: string; at: Date },
  onProgress?: (done: number) => void,
): Promise<void> {
  let done = 0;
  for (const chunk of chunked(readings, 5_000)) {
    await tx.$executeRaw`
      INSERT INTO "Reading" (id, "batchId", "row", number, "takenAtText", "takenAt", "takenOn", "offsetMinutes",
        "secondsCounted", mode, sample, "spotText", note, serial, operator, results, fingerprint, "asideReason")
      SELECT value ->> 'id', ${batchId}, CAST(value ->> 'row' AS INTEGER), value ->> 'number', value ->> 'takenAtText',
        value ->> 'takenAt', value ->> 'takenOn', CAST(value ->> 'offsetMinutes' AS INTEGER),
        CAST(value ->> 'secondsCounted' AS DOUBLE PRECISION), value ->> 'mode', value ->> 'sample', value ->> 'spotText',
        value ->> 'note', value ->> 'serial', value ->> 'operator', value ->> 'results', value ->> 'fingerprint',
        value ->> 'asideReason'
      FROM ${objectRows(tx, chunk)} readings`;
    done += chunk.length;
    onProgress?.(done);
  }
  if (readings.some((reading) => reading.asideReason !== null))
    await tx.reading.updateMany({
      where: { batchId, asideReason: { not: null }, asideAt: null },
      data: { asideById: by.byId, asideAt: by.at },
    });
}

export async function insertAsideRows(tx: Db, batchId: string, rows: SetAsideRow[]): Promise<void> {
  for (const chunk of chunked(rows, 1_000))
    await tx.setAsideRow.createMany({
      data: chunk.map((r) => ({
        batchId,
        row: r.row,
        cells: JSON.stringify(r.cells),
        problems: JSON.stringify(r.problems),
      })),
    });
}

export async function asideRows(db: Db, batchId: string): Promise<AsideRow[]> {
  const rows = await db.setAsideRow.findMany({ where: { batchId }, orderBy: { row: "asc" } });
  return rows.map((r) => ({
    id: r.id,
    row: r.row,
    cells: JSON.parse(r.cells) as string[],
    problems: JSON.parse(r.problems) as SetAsideRow["problems"],
    mended: r.mended === null ? null : (JSON.parse(r.mended) as string[]),
  }));
}

export async function markMended(
  tx: Db,
  rowId: string,
  mended: { cells: string[]; byId: string; at: Date },
): Promise<void> {
  await tx.setAsideRow.update({
    where: { id: rowId },
    data: { mended: JSON.stringify(mended.cells), mendedAt: mended.at, mendedById: mended.byId },
  });
}

/** Fingerprints already in force elsewhere, with where they stand. */
export async function knownFingerprints(
  db: Db,
  fingerprints: string[],
): Promise<Map<string, { file: string; row: number }>> {
  const known = new Map<string, { file: string; row: number }>();
  for (const chunk of chunked(fingerprints, 5_000)) {
    const rows = await db.$queryRaw<{ fingerprint: string; fileName: string; row: number | bigint }[]>`
      SELECT r.fingerprint, b."fileName", r."row" FROM ${textRows(db, chunk)} f
      JOIN "Reading" r ON r.fingerprint = f.value
      JOIN "ImportBatch" b ON b.id = r."batchId" AND b.state = 'imported'`;
    for (const r of rows) known.set(r.fingerprint, { file: r.fileName, row: Number(r.row) });
  }
  return known;
}

export async function completeBatch(
  tx: Db,
  id: string,
  input: { mapping: string; columns: string; instrumentId: string | null; account: RowAccount; at: Date },
): Promise<void> {
  const { account, at, ...rest } = input;
  await tx.importBatch.update({
    where: { id },
    data: {
      ...rest,
      state: "imported",
      importedAt: at,
      rowsTotal: account.total,
      rowsAccepted: account.accepted,
      rowsSetAside: account.setAside,
      rowsBlank: account.blank,
      rowsHeader: account.header,
    },
  });
}

/** What has been said of a waiting file's columns so far; null forgets it. */
export async function writeDraftMapping(
  tx: Db,
  id: string,
  mapping: string | null,
  instrumentId: string | null,
): Promise<void> {
  await tx.importBatch.update({ where: { id }, data: { mapping, instrumentId } });
}

export async function countMended(tx: Db, id: string): Promise<void> {
  await tx.importBatch.update({
    where: { id },
    data: { rowsAccepted: { increment: 1 }, rowsSetAside: { decrement: 1 } },
  });
}

export async function writeColumns(tx: Db, id: string, columns: string): Promise<void> {
  await tx.importBatch.update({ where: { id }, data: { columns } });
}
export const readColumns = async (db: Db, id: string): Promise<string> =>
  (await db.importBatch.findUniqueOrThrow({ where: { id }, select: { columns: true } })).columns;

export async function setBatchState(tx: Db, id: string, state: BatchState, at: Date): Promise<void> {
  await tx.importBatch.update({ where: { id }, data: { state, undoneAt: state === "undone" ? at : null } });
}

/** Which published pages stand on this import, if any. */
export async function publicationsOnBatch(db: Db, batchId: string): Promise<{ slug: string; revision: number }[]> {
  const rows = await db.publicationSource.findMany({
    where: { batchId },
    include: { publication: { select: { slug: true, revision: true } } },
  });
  return rows.map((r) => r.publication);
}

export async function rememberMapping(
  tx: Db,
  headerFingerprint: string,
  mapping: string,
  instrumentId: string | null,
): Promise<void> {
  await tx.rememberedMapping.upsert({
    where: { headerFingerprint },
    create: { headerFingerprint, mapping, instrumentId },
    update: { mapping, instrumentId },
  });
}

export async function rememberedMapping(
  db: Db,
  headerFingerprint: string,
): Promise<{ mapping: string; instrumentId: string | null } | null> {
  return db.rememberedMapping.findUnique({
    where: { headerFingerprint },
    select: { mapping: true, instrumentId: true },
  });
}
