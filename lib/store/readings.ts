import type { ElementResult, Reading } from "../readings/reading.ts";
import type { Db } from "./database.ts";
import { parseColumns, type StoredColumn, unpackResults } from "./reading-results.ts";

/** Readings as the bench works on them. A reading itself never changes; where it belongs and its setting aside do. */
export type StoredReading = Omit<Reading, "spot" | "takenOn"> & {
  takenOn: string | null;
  id: string;
  batchId: string;
  fileName: string;
  fileSha256: string;
  source: "file" | "hand";
  createdById: string;
  spotText: string | null;
  spot: string | null; // label of the spot it is assigned to
  spotId: string | null;
  componentId: string | null;
  checkStandardId: string | null;
  sessionId: string | null;
  setAside: { reason: string; at: string } | null;
  instrumentId: string | null;
};

const include = {
  batch: { include: { rawFile: { select: { sha256: true } } } },
  spot: { select: { label: true } },
  checkReading: { select: { checkStandardId: true } },
} as const;

type Row = Awaited<ReturnType<typeof fetchRows>>[number];
const fetchRows = (db: Db, where: object, take?: number, skip?: number) =>
  db.reading.findMany({
    where: { ...where, batch: { state: "imported" } },
    include,
    orderBy: [{ batchId: "asc" }, { row: "asc" }],
    ...(take === undefined ? {} : { take }),
    ...(skip === undefined ? {} : { skip }),
  });

function readingsOf(rows: Row[]): StoredReading[] {
  const dictionaries = new Map<string, StoredColumn[]>();
  return rows.map((row) => {
    let columns = dictionaries.get(row.batchId);
    if (!columns) {
      columns = parseColumns(row.batch.columns);
      dictionaries.set(row.batchId, columns);
    }
    return readingOf(row, unpackResults(row.results, columns));
  });
}

function readingOf(row: Row, results: ElementResult[]): StoredReading {
  return {
    id: row.id,
    batchId: row.batchId,
    fileName: row.batch.fileName,
    fileSha256: row.batch.rawFile.sha256,
    source: row.batch.source === "hand" ? "hand" : "file",
    createdById: row.batch.createdById,
    instrumentId: row.batch.instrumentId,
    row: row.row,
    number: row.number,
    takenAtText: row.takenAtText,
    takenAt: row.takenAt,
    takenOn: row.takenOn,
    offsetMinutes: row.offsetMinutes,
    secondsCounted: row.secondsCounted,
    mode: row.mode,
    sample: row.sample,
    spotText: row.spotText,
    note: row.note,
    serial: row.serial,
    operator: row.operator,
    results,
    componentId: row.componentId,
    spotId: row.spotId,
    spot: row.spot?.label ?? null,
    checkStandardId: row.checkReading?.checkStandardId ?? null,
    sessionId: row.sessionId,
    setAside:
      row.asideReason === null ? null : { reason: row.asideReason, at: (row.asideAt ?? new Date(0)).toISOString() },
  };
}

export type ReadingFilter = {
  batchId?: string;
  sample?: string;
  unassigned?: boolean;
  componentId?: string;
  text?: string;
  sessionId?: string;
  /** Readings of check standards only: of this one, or of any. */
  checkStandardId?: string;
  check?: true;
};

function whereOf(filter: ReadingFilter): object {
  return {
    ...(filter.batchId ? { batchId: filter.batchId } : {}),
    ...(filter.sample !== undefined ? { sample: filter.sample } : {}),
    ...(filter.componentId ? { componentId: filter.componentId } : {}),
    ...(filter.sessionId ? { sessionId: filter.sessionId } : {}),
    ...(filter.checkStandardId ? { checkReading: { checkStandardId: filter.checkStandardId } } : {}),
    ...(filter.check ? { checkReading: { isNot: null } } : {}),
    ...(filter.unassigned ? { componentId: null, checkReading: null, asideReason: null } : {}),
    ...(filter.text
      ? { OR: ["sample", "note", "number", "spotText"].map((c) => ({ [c]: { contains: filter.text } })) }
      : {}),
  };
}

export async function listReadings(db: Db, filter: ReadingFilter, take = 500, skip = 0): Promise<StoredReading[]> {
  return readingsOf(await fetchRows(db, whereOf(filter), take, skip));
}

export const countReadings = (db: Db, filter: ReadingFilter): Promise<number> =>
  db.reading.count({ where: { ...whereOf(filter), batch: { state: "imported" } } });

export async function readingsByIds(db: Db, ids: string[]): Promise<StoredReading[]> {
  return readingsOf(await fetchRows(db, { id: { in: ids } }));
}

export async function readingsOfComponents(db: Db, componentIds: string[]): Promise<StoredReading[]> {
  return readingsOf(await fetchRows(db, { componentId: { in: componentIds } }));
}

/** How many readings each sample text names, for assigning a whole sample at once. */
export async function sampleGroups(
  db: Db,
  batchId?: string,
): Promise<{ batchId: string; sample: string | null; total: number; unassigned: number }[]> {
  const where = { batch: { state: "imported" }, ...(batchId ? { batchId } : {}) };
  const by = ["batchId", "sample"] as const;
  const all = await db.reading.groupBy({ by: [...by], where, _count: { _all: true }, _min: { row: true } });
  const open = await db.reading.groupBy({
    by: [...by],
    where: { ...where, componentId: null, checkReading: null, asideReason: null },
    _count: { _all: true },
  });
  const left = new Map(open.map((g) => [`${g.batchId}\n${g.sample}`, g._count._all]));
  return all
    .sort((a, b) => a.batchId.localeCompare(b.batchId) || (a._min.row ?? 0) - (b._min.row ?? 0))
    .map((g) => ({
      batchId: g.batchId,
      sample: g.sample,
      total: g._count._all,
      unassigned: left.get(`${g.batchId}\n${g.sample}`) ?? 0,
    }));
}

export type Assignment = { readingId: string; componentId: string | null; spotId: string | null };

export async function assignmentsOf(db: Db, ids: string[]): Promise<Assignment[]> {
  const rows = await db.reading.findMany({
    where: { id: { in: ids } },
    select: { id: true, componentId: true, spotId: true },
  });
  return rows.map((r) => ({ readingId: r.id, componentId: r.componentId, spotId: r.spotId }));
}

export async function writeAssignments(tx: Db, assignments: Assignment[]): Promise<void> {
  const groups = new Map<string, Assignment[]>();
  for (const a of assignments) {
    const key = `${a.componentId}\n${a.spotId}`;
    groups.set(key, [...(groups.get(key) ?? []), a]);
  }
  for (const [first, ...rest] of [...groups.values()] as [Assignment, ...Assignment[]][])
    await tx.reading.updateMany({
      where: { id: { in: [first, ...rest].map((a) => a.readingId) } },
      data: { componentId: first.componentId, spotId: first.spotId },
    });
}

/** The spot of that label on the component, made if it is new. */
export async function spotOf(tx: Db, componentId: string, label: string): Promise<string> {
  const where = { componentId_label: { componentId, label } };
  return (await tx.spot.upsert({ where, create: { componentId, label }, update: {} })).id;
}

export async function setReadingAside(
  tx: Db,
  ids: string[],
  aside: { reason: string; byId: string; at: Date } | null,
): Promise<void> {
  await tx.reading.updateMany({
    where: { id: { in: ids } },
    data: { asideReason: aside?.reason ?? null, asideById: aside?.byId ?? null, asideAt: aside?.at ?? null },
  });
}
