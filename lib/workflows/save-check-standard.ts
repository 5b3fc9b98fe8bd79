import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { materials } from "../quantity/item-words.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { elements } from "../readings/elements.ts";
import { recordAct } from "../store/audit.ts";
import {
  type CheckStandard,
  certifiedValues,
  findCheckStandard,
  listCheckStandards,
  saveCheckStandard,
  setRetired,
} from "../store/check-standards.ts";
import { inTransaction } from "../store/database.ts";

const symbols = new Set(elements.map((e) => e.symbol));
const short = z.string().trim().min(1).max(120);

export const checkStandardInput = z.object({
  name: short,
  matrix: z.string().trim().min(1).max(200),
  material: z.enum(materials).default("other"),
  modes: z.array(short).max(30).default([]),
  otherNames: z.array(short).max(30).default([]),
  certified: certifiedValues,
  certificate: z.string().trim().max(400).nullable().default(null),
  expiresOn: z.iso.date().nullable().default(null),
});

/**
 * Adds a check standard or changes what is known of it. A certificate that states no uncertainty is taken as such (U null): its checks are
 * judged, and nothing is corrected by them.
 *
 * Refused: a name that is another's, or another's other name (`standard-name-taken`), no certified element (`nothing-certified`), what is no
 * element (`unknown-element`), an element with neither a value nor a bound, or with both (`certified-value-missing`).
 */
export async function saveCheckStandardWorkflow(
  context: Context,
  input: z.input<typeof checkStandardInput>,
  id?: string,
): Promise<Outcome<CheckStandard>> {
  const permitted = requirePermission(context.person, "manage-instruments");
  if (!permitted.ok) return permitted;
  const fields = checkStandardInput.parse(input);
  const certified = Object.entries(fields.certified);
  if (certified.length === 0) return refused({ code: "nothing-certified", where: { field: "certified" } });
  for (const [element, { value, below }] of certified) {
    const where = { field: "certified" };
    if (!symbols.has(element)) return refused({ code: "unknown-element", where, found: element });
    if ((value === null) === (below === null))
      return refused({ code: "certified-value-missing", where, found: element });
  }
  return inTransaction(context.db, async (tx) => {
    if (id && !(await findCheckStandard(tx, { id }))) return refused({ code: "unknown-check-standard", found: id });
    const taken = nameTaken(
      [fields.name, ...fields.otherNames],
      (await listCheckStandards(tx)).filter((s) => s.id !== id),
    );
    if (taken)
      return refused({ code: "standard-name-taken", where: { field: "name" }, found: taken.name, allowed: taken.by });
    const saved = await saveCheckStandard(tx, fields, id);
    const of = { record: "check-standard", recordId: saved.id, detail: { name: saved.name } };
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: id ? "edit-check-standard" : "add-check-standard",
      ...of,
    });
    return done(saved);
  });
}

function nameTaken(names: string[], others: CheckStandard[]): { name: string; by: string } | null {
  const wanted = new Map(names.map((name) => [name.toLowerCase(), name]));
  for (const other of others)
    for (const name of [other.name, ...other.otherNames]) {
      const own = wanted.get(name.toLowerCase());
      if (own) return { name: own, by: other.name };
    }
  return null;
}

/** Takes a check standard out of use, or back into it. Its readings stay; a retired one is not recognised in new files. */
export async function retireCheckStandardWorkflow(
  context: Context,
  id: string,
  retired: boolean,
): Promise<Outcome<CheckStandard>> {
  const permitted = requirePermission(context.person, "manage-instruments");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const standard = await findCheckStandard(tx, { id });
    if (!standard) return refused({ code: "unknown-check-standard", found: id });
    await setRetired(tx, id, retired ? context.clock() : null);
    const of = { record: "check-standard", recordId: id, detail: { retired } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "retire-check-standard", ...of });
    return done(standard);
  });
}
