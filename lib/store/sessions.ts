import { z } from "zod";
import type { StandardReading } from "../consistency/check-standard.ts";
import { grouped } from "../consistency/grouped.ts";
import { type Joined, joinSessions, type Sitting, shiftedTime } from "../consistency/join-sessions.ts";
import { type SessionFitness, sessionFitness } from "../consistency/session-fitness.ts";
import { type CheckStandard, checkReadingsOf, listCheckStandards } from "./check-standards.ts";
import type { Db } from "./database.ts";
import { objectRows } from "./dialect.ts";
import { listReadings, type StoredReading } from "./readings.ts";

export type SessionFields = {
  instrumentId: string;
  operatorId: string | null;
  operatorName: string | null;
  place: string | null;
  timeZone: string;
  startedAt: string;
  endedAt: string | null;
  conditions: string | null;
  trained: boolean;
  clockShiftMinutes: number;
  corrections: string[];
  inDoubtReason: string | null;
  note: string;
};
export type Session = SessionFields & {
  id: string;
  instrument: { name: string; serial: string };
  /** "Shelf analyser A, 2026-09-12" */
  label: string;
  readings: number;
  checks: number;
};

const include = {
  instrument: { select: { name: true, serial: true } },
  _count: { select: { readings: { where: { batch: { state: "imported" } } } } },
} as const;
const fetchSessions = (db: Db, where: object) =>
  db.session.findMany({ where, include, orderBy: [{ startedAt: "desc" }, { id: "asc" }] });
type Row = Awaited<ReturnType<typeof fetchSessions>>[number];

const sessionOf = (row: Row, checks: number): Session => ({
  id: row.id,
  instrumentId: row.instrumentId,
  instrument: row.instrument,
  label: `${row.instrument.name}, ${row.startedAt.slice(0, 10)}`,
  operatorId: row.operatorId,
  operatorName: row.operatorName,
  place: row.place,
  timeZone: row.timeZone,
  startedAt: row.startedAt,
  endedAt: row.endedAt,
  conditions: row.conditions,
  trained: row.trained,
  clockShiftMinutes: row.clockShiftMinutes,
  corrections: z.array(z.string()).parse(JSON.parse(row.corrections)),
  inDoubtReason: row.inDoubtReason,
  note: row.note,
  readings: row._count.readings,
  checks,
});

async function withChecks(db: Db, rows: Row[]): Promise<Session[]> {
  const counts = await db.reading.groupBy({
    by: ["sessionId"],
    where: { sessionId: { in: rows.map((r) => r.id) }, checkReading: { isNot: null }, batch: { state: "imported" } },
    _count: { _all: true },
  });
  const byId = new Map(counts.map((c) => [c.sessionId, c._count._all]));
  return rows.map((row) => sessionOf(row, byId.get(row.id) ?? 0));
}

/** The latest first. */
export const listSessions = async (db: Db): Promise<Session[]> => withChecks(db, await fetchSessions(db, {}));
export const sessionsByIds = async (db: Db, ids: string[]): Promise<Session[]> =>
  withChecks(db, await fetchSessions(db, { id: { in: ids } }));
export const findSession = async (db: Db, id: string): Promise<Session | null> =>
  (await sessionsByIds(db, [id]))[0] ?? null;

export async function saveSession(
  tx: Db,
  fields: SessionFields,
  by: { id?: string; personId: string; at: Date },
): Promise<string> {
  const data = { ...fields, corrections: JSON.stringify(fields.corrections) };
  if (by.id) return (await tx.session.update({ where: { id: by.id }, data, select: { id: true } })).id;
  const made = { ...data, createdById: by.personId, createdAt: by.at };
  return (await tx.session.create({ data: made, select: { id: true } })).id;
}

export async function deleteSession(tx: Db, id: string): Promise<void> {
  await tx.session.delete({ where: { id } });
}

/** The sessions that readings of one file belong to. */
export async function sessionIdsOfBatch(db: Db, batchId: string): Promise<string[]> {
  const rows = await db.reading.groupBy({ by: ["sessionId"], where: { batchId, sessionId: { not: null } } });
  return rows.flatMap((r) => r.sessionId ?? []);
}

const sittingsOf = async (db: Db): Promise<Sitting[]> =>
  db.session.findMany({
    select: { id: true, instrumentId: true, startedAt: true, endedAt: true, clockShiftMinutes: true },
  });

/** Readings in force as joining takes them: of one file, of one instrument, or all. */
async function looseReadings(db: Db, of: { batchId?: string; instrumentId?: string }) {
  const rows = await db.reading.findMany({
    where: { batch: { state: "imported" }, ...(of.batchId ? { batchId: of.batchId } : {}) },
    select: { id: true, takenAt: true, serial: true, sessionId: true, batch: { select: { instrumentId: true } } },
  });
  const bySerial = new Map(
    (await db.instrument.findMany({ select: { id: true, serial: true } })).map((i) => [i.serial, i.id]),
  );
  return rows
    .map(({ batch, serial, ...reading }) => ({
      ...reading,
      instrumentId: (serial ? bySerial.get(serial) : undefined) ?? batch.instrumentId,
    }))
    .filter((r) => !of.instrumentId || r.instrumentId === of.instrumentId);
}

/** Puts the readings of a file just loaded into their sessions. Where nobody has written down a session, none is looked for. */
export async function joinImported(tx: Db, batchId: string): Promise<void> {
  const sittings = await sittingsOf(tx);
  if (sittings.length === 0) return;
  await writeSessions(tx, joinSessions(await looseReadings(tx, { batchId }), sittings).moves);
}

/** Looks, without changing anything: what has no session, what two claim, and what a shifted clock would bring in. */
export async function joinedAsItStands(db: Db, of: { batchId?: string; instrumentId?: string } = {}): Promise<Joined> {
  return joinSessions(await looseReadings(db, of), await sittingsOf(db));
}

/** Puts every reading into the session it belongs to, and answers with what is left over. */
export async function joinReadings(tx: Db, of: { batchId?: string; instrumentId?: string }): Promise<Joined> {
  const joined = await joinedAsItStands(tx, of);
  await writeSessions(tx, joined.moves);
  return joined;
}

export async function writeSessions(tx: Db, moves: Joined["moves"]): Promise<void> {
  for (let at = 0; at < moves.length; at += 5_000) {
    const chunk = objectRows(tx, moves.slice(at, at + 5_000));
    await tx.$executeRaw`
      UPDATE "Reading" SET "sessionId" = m.value ->> 'sessionId' FROM ${chunk} m WHERE "Reading".id = m.value ->> 'id'`;
  }
}

/** What a session's check standards show, and the readings it was worked out from. */
export type CheckedSession = {
  session: Session;
  fitness: SessionFitness;
  checkReadings: StoredReading[];
  standards: CheckStandard[];
};

export async function checkedSessions(db: Db, ids: string[]): Promise<CheckedSession[]> {
  if (ids.length === 0) return [];
  const [sessions, standards] = await Promise.all([sessionsByIds(db, ids), listCheckStandards(db)]);
  return Promise.all(
    sessions.map(async (session) => {
      const checkReadings = await listReadings(db, { sessionId: session.id, check: true }, 5_000);
      const checks = checkReadings
        .filter((r) => r.setAside === null)
        .map((r) => standardReading(r, session.clockShiftMinutes));
      const fitness = sessionFitness({ standards, checks, corrections: session.corrections });
      return { session, fitness, checkReadings, standards };
    }),
  );
}

/** All readings of one standard over time, apart for each instrument, whether or not they belong to a session. */
export async function checksOverTime(
  db: Db,
  standard: CheckStandard,
): Promise<{ instrumentId: string | null; fitness: SessionFitness }[]> {
  const readings = (await checkReadingsOf(db, standard.id)).filter((r) => r.setAside === null);
  const sessions = await sessionsByIds(db, [...new Set(readings.flatMap((r) => r.sessionId ?? []))]);
  const byId = new Map(sessions.map((session) => [session.id, session]));
  const sessionOfReading = (r: StoredReading) => byId.get(r.sessionId ?? "");
  return [...grouped(readings, (r) => sessionOfReading(r)?.instrumentId ?? r.instrumentId)].map(
    ([instrumentId, own]) => {
      const checks = own.map((r) => standardReading(r, sessionOfReading(r)?.clockShiftMinutes ?? 0));
      return { instrumentId, fitness: sessionFitness({ standards: [standard], checks }) };
    },
  );
}

export const standardReading = (r: StoredReading, clockShiftMinutes: number): StandardReading => ({
  id: r.id,
  standardId: r.checkStandardId ?? "",
  takenAt: r.takenAt === null ? null : shiftedTime(r.takenAt, clockShiftMinutes),
  mode: r.mode,
  results: r.results,
});
