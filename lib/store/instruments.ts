import { z } from "zod";
import { units } from "../quantity/units.ts";
import type { Db } from "./database.ts";

export const coverage = z.union([z.literal(1), z.literal(2), z.literal(3)]);
export const calibratedRange = z.object({
  mode: z.string().nullable(), // null: any
  element: z.string(),
  low: z.number().min(0),
  high: z.number().positive(),
  unit: z.enum(units as [(typeof units)[number], ...typeof units]),
});

export type Instrument = {
  id: string;
  name: string;
  kind: string;
  serial: string;
  modes: string[];
  windowMm: number | null;
  errorK: 1 | 2 | 3 | null;
  /** What its errors cover in a mode where that differs. */
  errorKByMode: Record<string, 1 | 2 | 3>;
  calibrationRel: number | null;
  timeZone: string | null;
  minimumSeconds: number | null;
  calibratedRanges: z.infer<typeof calibratedRange>[];
};

type Row = Awaited<ReturnType<Db["instrument"]["findFirstOrThrow"]>>;

export const instrumentOf = (row: Row): Instrument => ({
  id: row.id,
  name: row.name,
  kind: row.kind,
  serial: row.serial,
  modes: z.array(z.string()).parse(JSON.parse(row.modes)),
  windowMm: row.windowMm,
  errorK: coverage.nullable().parse(row.errorK),
  errorKByMode: z.record(z.string(), coverage).parse(JSON.parse(row.errorKByMode)),
  calibrationRel: row.calibrationRel,
  timeZone: row.timeZone,
  minimumSeconds: row.minimumSeconds,
  calibratedRanges: z.array(calibratedRange).parse(JSON.parse(row.calibratedRanges)),
});

export async function listInstruments(db: Db): Promise<Instrument[]> {
  return (await db.instrument.findMany({ orderBy: { name: "asc" } })).map(instrumentOf);
}

export async function findInstrument(db: Db, where: { id: string } | { serial: string }): Promise<Instrument | null> {
  const row = await db.instrument.findUnique({ where });
  return row ? instrumentOf(row) : null;
}

export async function saveInstrument(tx: Db, input: Omit<Instrument, "id">, id?: string): Promise<Instrument> {
  const { name, kind, serial, windowMm, errorK: k, calibrationRel, timeZone, minimumSeconds } = input;
  const data = {
    name,
    kind,
    serial,
    windowMm,
    errorK: k,
    calibrationRel,
    timeZone,
    minimumSeconds,
    modes: JSON.stringify(input.modes),
    errorKByMode: JSON.stringify(input.errorKByMode),
    calibratedRanges: JSON.stringify(input.calibratedRanges),
  };
  return instrumentOf(id ? await tx.instrument.update({ where: { id }, data }) : await tx.instrument.create({ data }));
}
