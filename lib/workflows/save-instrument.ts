import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { elements } from "../readings/elements.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { calibratedRange, coverage, findInstrument, type Instrument, saveInstrument } from "../store/instruments.ts";

const zones = new Set(Intl.supportedValuesOf("timeZone"));
const symbols = new Set(elements.map((e) => e.symbol));
const mode = z.string().trim().min(1).max(80);

export const instrumentInput = z.object({
  name: z.string().trim().min(1).max(120),
  kind: z.string().trim().min(1).max(120),
  serial: z.string().trim().min(1).max(80),
  modes: z.array(mode).max(30).default([]),
  windowMm: z.number().positive().max(100).nullable().default(null),
  errorK: coverage.nullable().default(null),
  errorKByMode: z.record(mode, coverage).default({}),
  calibrationRel: z.number().min(0).max(1).nullable().default(null),
  timeZone: z
    .string()
    .refine((z) => z === "UTC" || zones.has(z))
    .nullable()
    .default(null),
  minimumSeconds: z.number().positive().nullable().default(null),
  calibratedRanges: z.array(calibratedRange).max(200).default([]),
});

/**
 * Adds an analyser or changes what is known of it; the serial number tells it apart.
 *
 * Refused: a serial number of another (`serial-taken`), a mode named below that is not among its modes (`unknown-mode`), a range of no
 * element (`unknown-element`) or whose upper end is not above the lower (`range-upside-down`).
 */
export async function saveInstrumentWorkflow(
  context: Context,
  input: z.input<typeof instrumentInput>,
  id?: string,
): Promise<Outcome<Instrument>> {
  const permitted = requirePermission(context.person, "manage-instruments");
  if (!permitted.ok) return permitted;
  const fields = instrumentInput.parse(input);
  const modes = [...Object.keys(fields.errorKByMode), ...fields.calibratedRanges.flatMap((r) => r.mode ?? [])];
  const strange = modes.filter((m) => !fields.modes.includes(m));
  if (strange.length > 0)
    return refused({
      code: "unknown-mode",
      where: { field: "modes" },
      found: strange[0]!,
      allowed: fields.modes.join(", "),
    });
  for (const { element, low, high } of fields.calibratedRanges) {
    const where = { field: "calibratedRanges" };
    if (!symbols.has(element)) return refused({ code: "unknown-element", where, found: element });
    if (high <= low) return refused({ code: "range-upside-down", where, found: `${element} ${low}–${high}` });
  }
  return inTransaction(context.db, async (tx) => {
    const same = await findInstrument(tx, { serial: fields.serial });
    if (same && same.id !== id)
      return refused({ code: "serial-taken", where: { field: "serial" }, found: fields.serial, allowed: same.name });
    const saved = await saveInstrument(tx, fields, id);
    const of = { record: "instrument", recordId: saved.id, detail: { name: saved.name } };
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: id ? "edit-instrument" : "add-instrument",
      ...of,
    });
    return done(saved);
  });
}
