import { requirePermission } from "../access/require-permission.ts";
import { namedStandard } from "../consistency/check-standard.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { answerQuestions } from "../readings/answer-questions.ts";
import { mappingFaults } from "../readings/column-index.ts";
import { type Mapping, mappingSchema } from "../readings/mapping.ts";
import { settleAndAsk } from "../readings/open-questions.ts";
import { asProblem, type ReadRows, readRowsInChunks } from "../readings/read-rows.ts";
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
  rememberMapping,
} from "../store/imports.ts";
import { findInstrument, type Instrument, saveInstrument } from "../store/instruments.ts";
import { packReading, resultPacker } from "../store/reading-results.ts";
import { joinReadings } from "../store/sessions.ts";

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
  const table = await batchTable(db, batch, input.mapping.sheet);
  if (!table.ok) return table;
  const instrument = input.instrumentId ? await findInstrument(db, { id: input.instrumentId }) : null;
  const settled = settle(table.value, mappingSchema.parse(input.mapping), instrument);
  if (!settled.ok) return inFile(batch, settled);
  const rows = await readAll(table.value, settled.value, context.clock().getTime(), onProgress);
  return inTransaction(db, (tx) =>
    write(tx, batch, table.value, rows, instrument, permitted.value, context.clock(), onProgress),
  );
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
  table: Table,
  mapping: Mapping,
  now: number,
  onProgress: (p: ImportProgress) => void,
): Promise<ReadRows> {
  const reading = readRowsInChunks(table, mapping, { now });
  for (let step = reading.next(); ; step = reading.next()) {
    if (step.done) return step.value;
    onProgress({ step: "reading", ...step.value });
    await new Promise((resolve) => setImmediate(resolve));
  }
}

async function write(
  tx: Db,
  batch: Batch,
  table: Table,
  rows: ReadRows,
  instrument: Instrument | null,
  person: { id: string; name: string },
  at: Date,
  onProgress: (p: ImportProgress) => void,
): Promise<Outcome<ImportDone>> {
  // Looked at again inside the transaction: two loads of one file at once must not both win.
  if ((await findBatch(tx, batch.id))?.state !== "uploaded")
    return refused({ code: "already-imported", where: { file: batch.fileName } });
  const packer = resultPacker();
  const prepared = rows.readings.map((reading) => packReading(coveredByMode(reading, instrument), packer.pack));
  const identified = prepared.filter((_, i) => isIdentified(rows.readings[i]!));
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
    columns: JSON.stringify(packer.columns()),
    instrumentId: instrument?.id ?? null,
    account: rows.account,
    at,
  });
  const checks = await recogniseChecks(tx, prepared);
  await joinReadings(tx, { batchId: batch.id });
  const k = commonCoverage(rows.mapping);
  // Asked once for each instrument: what was answered here is the instrument's from now on.
  if (instrument && instrument.errorK === null && k !== null)
    await saveInstrument(tx, { ...instrument, errorK: k }, instrument.id);
  if (batch.source === "file")
    await rememberMapping(tx, headerFingerprint(table), JSON.stringify(rows.mapping), instrument?.id ?? null);
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
