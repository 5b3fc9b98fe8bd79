import { requirePermission } from "../access/require-permission.ts";
import { namedStandard } from "../consistency/check-standard.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { answerQuestions } from "../readings/answer-questions.ts";
import { mappingFaults } from "../readings/column-index.ts";
import { type Mapping, mappingSchema } from "../readings/mapping.ts";
import { settleAndAsk } from "../readings/open-questions.ts";
import { asProblem, type ReadRows, readRowsAs } from "../readings/read-rows.ts";
import type { Reading, RowAccount } from "../readings/reading.ts";
import { isIdentified } from "../readings/reading-fingerprint.ts";
import { headerFingerprint, type Table } from "../readings/table.ts";
import { recordAct } from "../store/audit.ts";
import { batchTable } from "../store/batch-table.ts";
import { listCheckStandards, markCheckReadings } from "../store/check-standards.ts";
import { type Db, inTransaction } from "../store/database.ts";
import {
  type Batch,
  completeBatch,
  findBatch,
  insertAsideRows,
  insertReadings,
  knownFingerprints,
  type NewReading,
  rememberMapping,
} from "../store/imports.ts";
import { findInstrument, type Instrument, saveInstrument } from "../store/instruments.ts";
import { packReading, resultPacker, type StoredColumn } from "../store/reading-results.ts";
import { joinImported } from "../store/sessions.ts";

export type ImportProgress = { step: "reading" | "writing"; done: number; total: number };
export type ImportDone = { batchId: string; account: RowAccount; readings: number; repeated: number; checks: number };

/**
 * Reads every row of a waiting file by its mapping and writes the readings, the rows set aside and the account of rows.
 * One transaction: the import happens whole or not at all. A reading that stands in another file already is kept, but
 * set aside with where it stands. Readings of a check standard are known by its names and belong to it, never to an item;
 * every reading joins the session of its instrument and time, where there is one.
 *
 * Refused: no such import, one already loaded, an open question about the file (`ask-…`), a column that is missing.
 */
export async function importReadingsWorkflow(
  context: Context,
  input: { batchId: string; mapping: Mapping; instrumentId: string | null },
  onProgress: (progress: ImportProgress) => void = () => {},
): Promise<Outcome<ImportDone>> {
  const permitted = requirePermission(context.person, "import-readings");
  if (!permitted.ok) return permitted;
  const { db } = context;
  const batch = await findBatch(db, input.batchId);
  if (!batch) return refused({ code: "unknown-import", found: input.batchId });
  if (batch.state !== "uploaded")
    return refused({ code: "already-imported", where: { file: batch.fileName }, found: batch.state });
  const instrument = input.instrumentId ? await findInstrument(db, { id: input.instrumentId }) : null;
  const file = await readFile(context, batch, input.mapping, instrument, onProgress);
  if (!file.ok) return file;
  return inTransaction(db, (tx) =>
    write(tx, batch, file.value, instrument, permitted.value, context.clock(), onProgress),
  );
}

/** A reading as it will be stored, and whether its fingerprint can tell it from a repeat. */
type Packed = NewReading & { identified: boolean };
/** All that is left of a file once it is read: its cells are let go, since a long file's are hundreds of megabytes. So a caller hands none in. */
type FileRead = { rows: ReadRows<Packed>; columns: StoredColumn[]; headerFingerprint: string };

async function readFile(
  { db, clock }: Context,
  batch: Batch,
  mapping: Mapping,
  instrument: Instrument | null,
  onProgress: (progress: ImportProgress) => void,
): Promise<Outcome<FileRead>> {
  const opened = await batchTable(db, batch, mapping.sheet);
  if (!opened.ok) return opened;
  const table = opened.value;
  const settled = settle(table, mappingSchema.parse(mapping), instrument);
  if (!settled.ok) return inFile(batch, settled);
  const packer = resultPacker();
  const packed = (reading: Reading): Packed =>
    Object.assign(packReading(coveredByMode(reading, instrument), packer.pack), { identified: isIdentified(reading) });
  const rows = await readAll(readRowsAs(table, settled.value, { now: clock().getTime() }, packed), onProgress);
  return done({ rows, columns: packer.columns(), headerFingerprint: headerFingerprint(table) });
}

const inFile = (batch: Batch, outcome: { ok: false; problems: { where?: object | undefined; code: string }[] }) =>
  refused(...outcome.problems.map((p) => ({ ...p, where: { ...p.where, file: batch.fileName } })));

/** What the instrument's record says once, the file need not say again: what errors cover, the zone of its clock. */
function settle(table: Table, mapping: Mapping, instrument: Instrument | null): Outcome<Mapping> {
  const known = answerQuestions(mapping, {
    ...(instrument?.errorK ? { k: instrument.errorK } : {}),
    ...(instrument?.timeZone && mapping.timeZone === null ? { timeZone: instrument.timeZone } : {}),
  });
  if (!known.ok) return known;
  const faults = mappingFaults(table, known.value);
  if (faults.length > 0) return refused(...faults);
  const { mapping: settled, questions } = settleAndAsk(table, known.value);
  const open = questions.filter((question) => question.blocking);
  return open.length > 0 ? refused(...open.map(asProblem)) : done(settled);
}

/** Reads in chunks and lets other requests through between them: a long file does not stop the server. */
async function readAll(
  reading: ReturnType<typeof readRowsAs<Packed>>,
  onProgress: (p: ImportProgress) => void,
): Promise<ReadRows<Packed>> {
  for (let step = reading.next(); ; step = reading.next()) {
    if (step.done) return step.value;
    onProgress({ step: "reading", ...step.value });
    await new Promise((resolve) => setImmediate(resolve));
  }
}

async function write(
  tx: Db,
  batch: Batch,
  { rows, columns, headerFingerprint }: FileRead,
  instrument: Instrument | null,
  person: { id: string; name: string },
  at: Date,
  onProgress: (p: ImportProgress) => void,
): Promise<Outcome<ImportDone>> {
  // Looked at again inside the transaction: two loads of one file at once must not both win.
  if ((await findBatch(tx, batch.id))?.state !== "uploaded")
    return refused({ code: "already-imported", where: { file: batch.fileName } });
  const prepared = rows.readings;
  const identified = prepared.filter((reading) => reading.identified);
  const known = await knownFingerprints(
    tx,
    identified.map((r) => r.fingerprint),
  );
  for (const reading of identified) {
    const elsewhere = known.get(reading.fingerprint);
    if (elsewhere) reading.asideReason = `The same reading stands in ${elsewhere.file}, row ${elsewhere.row}.`;
  }
  await insertReadings(tx, batch.id, prepared, { byId: person.id, at }, (n) =>
    onProgress({ step: "writing", done: n, total: prepared.length }),
  );
  await insertAsideRows(tx, batch.id, rows.setAside);
  await completeBatch(tx, batch.id, {
    mapping: JSON.stringify(rows.mapping),
    columns: JSON.stringify(columns),
    instrumentId: instrument?.id ?? null,
    account: rows.account,
    at,
  });
  const checks = await recogniseChecks(tx, prepared);
  await joinImported(tx, batch.id);
  const k = commonCoverage(rows.mapping);
  // Asked once for each instrument: what was answered here is the instrument's from now on.
  if (instrument && instrument.errorK === null && k !== null)
    await saveInstrument(tx, { ...instrument, errorK: k }, instrument.id);
  if (batch.source === "file")
    await rememberMapping(tx, headerFingerprint, JSON.stringify(rows.mapping), instrument?.id ?? null);
  const repeated = identified.filter((r) => r.asideReason !== null).length;
  await recordAct(tx, {
    at,
    actor: person,
    action: "import-readings",
    record: "batch",
    recordId: batch.id,
    detail: { file: batch.fileName, readings: prepared.length, setAside: rows.setAside.length, repeated },
  });
  return done({ batchId: batch.id, account: rows.account, readings: prepared.length, repeated, checks });
}

/** What the instrument's record says of a mode holds for the readings taken in it. */
function coveredByMode(reading: Reading, instrument: Instrument | null): Reading {
  const k = reading.mode === null ? undefined : instrument?.errorKByMode[reading.mode];
  if (!k) return reading;
  return { ...reading, results: reading.results.map((r) => (r.error === null ? r : { ...r, k })) };
}

/** Marks what the file itself calls by the name of a check standard in use. */
async function recogniseChecks(tx: Db, readings: { id: string; sample: string | null }[]): Promise<number> {
  const inUse = (await listCheckStandards(tx)).filter((standard) => standard.retiredAt === null);
  const named = new Map([...new Set(readings.map((r) => r.sample))].map((s) => [s, namedStandard(s, inUse)]));
  let marked = 0;
  for (const { id } of inUse) {
    const own = readings.filter((r) => named.get(r.sample) === id).map((r) => r.id);
    if (own.length > 0) await markCheckReadings(tx, own, id);
    marked += own.length;
  }
  return marked;
}

/** What every error figure of the mapping covers, where they all cover the same. */
function commonCoverage(mapping: Mapping): 1 | 2 | 3 | null {
  const figures = mapping.long ? [mapping.long] : mapping.elements;
  const [first, ...rest] = [...new Set(figures.flatMap((figure) => (figure.k === null ? [] : [figure.k])))];
  return first !== undefined && rest.length === 0 ? first : null;
}
