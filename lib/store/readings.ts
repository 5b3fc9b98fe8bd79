import type { ElementResult, Reading } from "../readings/reading.ts";
import type { Db } from "./database.ts";
import { holdsText } from "./dialect.ts";
import { parseColumns, type StoredColumn, unpackResults } from "./reading-results.ts";
import { hiddenFrom } from "./retests.ts";

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
  /** The note exactly as written; null: none. */
  note?: string | null;
  /** Where a reading stands: on a part, nowhere yet, set aside, of a check standard. */
  state?: ReadingState;
  /** A symbol: readings with a result for it. Resolve it by `withElement` first. */
  inColumns?: ElementColumns;
  /** Local dates, both included. */
  from?: string;
  to?: string;
  /** Readings of check standards only: of this one, or of any. */
  checkStandardId?: string;
  check?: true;
  /** For whom they are listed: left out is what this person re-tests blind and did not load. */
  viewerId?: string | null;
};

export const readingStates = ["unassigned", "assigned", "aside", "check"] as const;
export type ReadingState = (typeof readingStates)[number];
const stateWhere: Record<ReadingState, object> = {
  unassigned: { componentId: null, checkReading: null, asideReason: null },
  assigned: { componentId: { not: null } },
  aside: { asideReason: { not: null } },
  check: { checkReading: { isNot: null } },
};

/** In which columns of which imports an element has its results. */
export type ElementColumns = { batchId: string; columns: number[] }[];

/** Elements of the readings in force, and where each is found: results are stored by column of their import. */
export async function elementsMeasured(db: Db): Promise<Map<string, ElementColumns>> {
  const batches = await db.importBatch.findMany({ where: { state: "imported" }, select: { id: true, columns: true } });
  const found = new Map<string, ElementColumns>();
  for (const batch of batches)
    for (const [at, { element }] of parseColumns(batch.columns).entries()) {
      const places = found.get(element) ?? [];
      const own = places.find((place) => place.batchId === batch.id);
      if (own) own.columns.push(at);
      else found.set(element, [...places, { batchId: batch.id, columns: [at] }]);
    }
  return found;
}

const columnsWhere = (places: ElementColumns): object => ({
  OR: places.map(({ batchId, columns }) => ({
    batchId,
    // A stored result begins with its column: "[3,false,…" or "[3,true,…" (reading-results.ts).
    OR: columns.flatMap((at) => [
      { results: { contains: `[${at},false,` } },
      { results: { contains: `[${at},true,` } },
    ]),
  })),
});

function whereOf(db: Db, filter: ReadingFilter): object {
  const { inColumns, state, from, to } = filter;
  const AND = [
    ...(inColumns ? [columnsWhere(inColumns)] : []),
    ...(state ? [stateWhere[state]] : []),
    ...(from || to ? [{ takenOn: { ...(from ? { gte: from } : {}), ...(to ? { lte: to } : {}) } }] : []),
  ];
  return {
    ...(AND.length > 0 ? { AND } : {}),
    ...(filter.note !== undefined ? { note: filter.note } : {}),
    ...(filter.batchId ? { batchId: filter.batchId } : {}),
    ...(filter.sample !== undefined ? { sample: filter.sample } : {}),
    ...(filter.componentId ? { componentId: filter.componentId } : {}),
    ...(filter.sessionId ? { sessionId: filter.sessionId } : {}),
    ...(filter.checkStandardId ? { checkReading: { checkStandardId: filter.checkStandardId } } : {}),
    ...(filter.check ? { checkReading: { isNot: null } } : {}),
    ...(filter.unassigned ? stateWhere.unassigned : {}),
    ...(filter.text
      ? { OR: ["sample", "note", "number", "spotText"].map((c) => ({ [c]: holdsText(db, filter.text ?? "") })) }
      : {}),
  };
}

/** The same for a person, without what they must not see yet. */
async function whereFor(db: Db, filter: ReadingFilter): Promise<object> {
  const hidden = filter.viewerId ? await hiddenFrom(db, filter.viewerId) : {};
  return { ...whereOf(db, filter), ...hidden };
}

export async function listReadings(db: Db, filter: ReadingFilter, take = 500, skip = 0): Promise<StoredReading[]> {
  return readingsOf(await fetchRows(db, await whereFor(db, filter), take, skip));
}

export const countReadings = async (db: Db, filter: ReadingFilter): Promise<number> =>
  db.reading.count({ where: { ...(await whereFor(db, filter)), batch: { state: "imported" } } });

export async function readingsByIds(db: Db, ids: string[]): Promise<StoredReading[]> {
  return readingsOf(await fetchRows(db, { id: { in: ids } }));
}

export async function readingsOfComponents(db: Db, componentIds: string[]): Promise<StoredReading[]> {
  return readingsOf(await fetchRows(db, { componentId: { in: componentIds } }));
}

export type ReadingGroup = { text: string | null; count: number; firstRow: number };

/** Readings of a filter by what their file wrote as sample or as note, in the order in which they come. */
export async function readingGroups(db: Db, filter: ReadingFilter, by: "sample" | "note"): Promise<ReadingGroup[]> {
  const where = { ...(await whereFor(db, filter)), batch: { state: "imported" } };
  const count = { _count: { _all: true }, _min: { row: true } } as const;
  const rows =
    by === "sample"
      ? (await db.reading.groupBy({ by: ["sample"], where, ...count })).map((g) => ({ ...g, text: g.sample }))
      : (await db.reading.groupBy({ by: ["note"], where, ...count })).map((g) => ({ ...g, text: g.note }));
  return rows
    .map((g) => ({ text: g.text, count: g._count._all, firstRow: g._min.row ?? 0 }))
    .sort((a, b) => a.firstRow - b.firstRow || (a.text ?? "").localeCompare(b.text ?? ""));
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
