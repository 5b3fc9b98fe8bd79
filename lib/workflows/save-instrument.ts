import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { inTransaction } from "../store/database.ts";
import { findInstrument, type Instrument, saveInstrument } from "../store/instruments.ts";

const zones = new Set(Intl.supportedValuesOf("timeZone"));

export const instrumentInput = z.object({
  name: z.string().trim().min(1).max(120),
  kind: z.string().trim().min(1).max(120),
  serial: z.string().trim().min(1).max(80),
  modes: z.array(z.string().trim().min(1).max(80)).max(30).default([]),
  windowMm: z.number().positive().max(100).nullable().default(null),
  errorK: z
    .union([z.literal(1), z.literal(2), z.literal(3)])
    .nullable()
    .default(null),
  calibrationRel: z.number().min(0).max(1).nullable().default(null),
  timeZone: z
    .string()
    .refine((z) => z === "UTC" || zones.has(z))
    .nullable()
    .default(null),
  minimumSeconds: z.number().positive().nullable().default(null),
});

/** Adds an analyser or changes what is known of it; the serial number tells it apart. */
export async function saveInstrumentWorkflow(
  context: Context,
  input: z.input<typeof instrumentInput>,
  id?: string,
): Promise<Outcome<Instrument>> {
  const permitted = requirePermission(context.person, "manage-instruments");
  if (!permitted.ok) return permitted;
  const fields = instrumentInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    const same = await findInstrument(tx, { serial: fields.serial });
    if (same && same.id !== id)
      return refused({ code: "serial-taken", where: { field: "serial" }, found: fields.serial, allowed: same.name });
    return done(await saveInstrument(tx, fields, id));
  });
}
