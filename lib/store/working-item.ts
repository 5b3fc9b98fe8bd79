import type { AssessInput, AssessReading } from "../publication/assess-item.ts";
import type { Snapshot } from "../publication/snapshot.ts";
import type { Db } from "./database.ts";
import { type Instrument, listInstruments } from "./instruments.ts";
import { findItem, type ItemTree } from "./items.ts";
import { readingsOfComponents, type StoredReading } from "./readings.ts";

/** An item with everything that is on the bench for it, and the same in the shape that `assessItem` takes. */
export type WorkingRecord = {
  item: ItemTree;
  readings: StoredReading[];
  instruments: Instrument[]; // those that took the readings
  authors: string[]; // ids of the people who loaded the readings
  files: Snapshot["files"];
  assess: AssessInput;
};

export async function workingItem(db: Db, itemId: string, today: string): Promise<WorkingRecord | null> {
  const item = await findItem(db, itemId);
  if (!item) return null;
  const components = item.specimens.flatMap((s) => s.components);
  const readings = await readingsOfComponents(
    db,
    components.map((c) => c.id),
  );
  const known = new Map((await listInstruments(db)).map((i) => [i.id, i]));
  const instruments = [...new Set(readings.map((r) => r.instrumentId))].flatMap((id) =>
    id && known.has(id) ? [known.get(id)!] : [],
  );
  const assess = {
    item: itemWords(item),
    specimens: item.specimens.map(({ components: parts, itemId: _, ...specimen }) => ({
      ...specimen,
      parts: parts.map(({ specimenId: __, ...part }) => part),
    })),
    readings: readings.map((r) => assessReading(r, r.instrumentId ? known.get(r.instrumentId) : undefined)),
    testDay: lastDay(readings),
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
  };
}

// The day as the tester's own clock wrote it.
const lastDay = (readings: StoredReading[]): string | null =>
  readings.reduce<string | null>((last, r) => {
    const day = r.takenAt?.slice(0, 10) ?? r.takenOn;
    return day !== null && (last === null || day > last) ? day : last;
  }, null);

function filesOf(readings: StoredReading[]): Snapshot["files"] {
  const files = new Map<string, Snapshot["files"][number]>();
  for (const r of readings) {
    const file = files.get(r.fileSha256) ?? { name: r.fileName, sha256: r.fileSha256, rows: 0 };
    files.set(r.fileSha256, { ...file, rows: file.rows + 1 });
  }
  return [...files.values()].sort((a, b) => (a.sha256 < b.sha256 ? -1 : 1));
}
