import { z } from "zod";
import type { Db } from "./database.ts";

export type Instrument = {
  id: string;
  name: string;
  kind: string;
  serial: string;
  modes: string[];
  windowMm: number | null;
  errorK: 1 | 2 | 3 | null;
  calibrationRel: number | null;
  timeZone: string | null;
  minimumSeconds: number | null;
};

type Row = Awaited<ReturnType<Db["instrument"]["findFirstOrThrow"]>>;
const errorK = z.union([z.literal(1), z.literal(2), z.literal(3)]).nullable();

export const instrumentOf = (row: Row): Instrument => ({
  id: row.id,
  name: row.name,
  kind: row.kind,
  serial: row.serial,
  modes: z.array(z.string()).parse(JSON.parse(row.modes)),
  windowMm: row.windowMm,
  errorK: errorK.parse(row.errorK),
  calibrationRel: row.calibrationRel,
  timeZone: row.timeZone,
  minimumSeconds: row.minimumSeconds,
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
  };
  return instrumentOf(id ? await tx.instrument.update({ where: { id }, data }) : await tx.instrument.create({ data }));
}
