import { shiftedTime } from "../consistency/join-sessions.ts";
import type { AssessInput, AssessReading } from "../publication/assess-item.ts";
import type { Snapshot } from "../publication/snapshot.ts";
import type { AssessSession } from "../publication/snapshot-sessions.ts";
import { assessSessions } from "./assess-sessions.ts";
import type { Db } from "./database.ts";
import { type Instrument, listInstruments } from "./instruments.ts";
import { findItem, type ItemTree } from "./items.ts";
import { testsOfItem } from "./other-tests.ts";
import { readingsOfComponents, type StoredReading } from "./readings.ts";
import { isBlindTo, keptApart } from "./retests.ts";

/** An item with everything that is on the bench for it, and the same in the shape that `assessItem` takes. */
export type WorkingRecord = {
  item: ItemTree;
  readings: StoredReading[];
  instruments: Instrument[]; // those that took the readings
  authors: string[]; // ids of the people who loaded the readings
  files: Snapshot["files"];
  assess: AssessInput;
};

/** `viewerId`: for whom it is shown; whoever re-tests the item blind gets their own readings only. */
export async function workingItem(
  db: Db,
  itemId: string,
  today: string,
  viewerId: string | null = null,
): Promise<WorkingRecord | null> {
  const item = await findItem(db, itemId);
  if (!item) return null;
  const components = item.specimens.flatMap((s) => s.components);
  const all = await readingsOfComponents(
    db,
    components.map((c) => c.id),
  );
  const readings = await keptApart(db, itemId, all, viewerId);
  const known = new Map((await listInstruments(db)).map((i) => [i.id, i]));
  const instruments = [...new Set(readings.map((r) => r.instrumentId))].flatMap((id) =>
    id && known.has(id) ? [known.get(id)!] : [],
  );
  const sessions = await assessSessions(
    db,
    readings.flatMap((r) => r.sessionId ?? []),
  );
  // A laboratory's value would tell a blind re-tester as much as a shot.
  const otherTests = viewerId !== null && (await isBlindTo(db, viewerId, itemId)) ? [] : await testsOfItem(db, itemId);
  const assess = {
    item: itemWords(item),
    specimens: item.specimens.map(({ components: parts, itemId: _, ...specimen }) => ({
      ...specimen,
      parts: parts.map(({ specimenId: __, ...part }) => part),
    })),
    readings: readings.map((r) => assessReading(r, r.instrumentId ? known.get(r.instrumentId) : undefined)),
    sessions,
    ...(otherTests.length > 0 ? { otherTests: otherTests.map(({ certificateKey: _, ...test }) => test) } : {}),
    testDay: lastDay(readings, sessions),
    today,
  };
  return {
    item,
    readings,
    instruments,
    authors: [...new Set(readings.map((r) => r.createdById))],
    files: filesOf(readings),
    assess,
  };
}

export function itemWords(item: ItemTree): Snapshot["item"] {
  const { name, aliases, marks, maker, gtin, category, ageGroup, foodContact, mouthable, description } = item;
  return { name, aliases, marks, maker, gtin, category, ageGroup, foodContact, mouthable, description };
}

function assessReading(r: StoredReading, instrument: Instrument | undefined): AssessReading {
  return {
    id: r.id,
    componentId: r.componentId ?? "",
    spot: r.spot,
    mode: r.mode,
    secondsCounted: r.secondsCounted,
    takenAt: r.takenAt,
    takenAtText: r.takenAtText,
    number: r.number,
    row: r.row,
    file: r.fileSha256,
    setAside: r.setAside ? { reason: r.setAside.reason } : null,
    results: r.results,
    instrument: instrument ?? null,
    sessionId: r.sessionId,
    serial: instrument?.serial ?? null,
  };
}

/** The day as the tester's own clock wrote it, put right where the session says that the clock was wrong. */
function lastDay(readings: StoredReading[], sessions: AssessSession[]): string | null {
  const shifts = new Map(sessions.map((s) => [s.id, s.clockShiftMinutes]));
  return readings.reduce<string | null>((last, r) => {
    const shift = shifts.get(r.sessionId ?? "") ?? 0;
    const day = (r.takenAt ? shiftedTime(r.takenAt, shift).slice(0, 10) : null) ?? r.takenOn;
    return day !== null && (last === null || day > last) ? day : last;
  }, null);
}

function filesOf(readings: StoredReading[]): Snapshot["files"] {
  const files = new Map<string, Snapshot["files"][number]>();
  for (const r of readings) {
    const file = files.get(r.fileSha256) ?? { name: r.fileName, sha256: r.fileSha256, rows: 0 };
    files.set(r.fileSha256, { ...file, rows: file.rows + 1 });
  }
  return [...files.values()].sort((a, b) => (a.sha256 < b.sha256 ? -1 : 1));
}
