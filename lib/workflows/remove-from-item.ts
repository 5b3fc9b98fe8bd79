import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { type Db, inTransaction } from "../store/database.ts";
import { itemIdOfComponent, itemIdOfSpecimen } from "../store/items.ts";
import { testsOfSpecimen } from "../store/other-tests.ts";
import {
  publishedWith,
  putBack,
  type Removed,
  removedSchema,
  takeOutParts,
  takeOutSpecimen,
} from "../store/removed.ts";

/**
 * Takes a part away. Its readings are set free and wait among the unassigned ones. Answers with all that is needed to put it back.
 * Refused once the part stands in a published revision.
 */
export async function removePartWorkflow(context: Context, componentId: string): Promise<Outcome<Removed>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const itemId = await itemIdOfComponent(tx, componentId);
    if (!itemId) return refused({ code: "unknown-part", found: componentId });
    const problem = await standing(tx, itemId, componentId);
    if (problem) return refused(problem);
    const of = { record: "component", recordId: componentId, itemId };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "remove-component", ...of });
    return done(await takeOutParts(tx, [componentId]));
  });
}

/** Takes an object away with its parts, on the same terms; its wipes and laboratory results have to be taken away first. */
export async function removeObjectWorkflow(context: Context, specimenId: string): Promise<Outcome<Removed>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const itemId = await itemIdOfSpecimen(tx, specimenId);
    if (!itemId) return refused({ code: "unknown-specimen", found: specimenId });
    const problem = await standing(tx, itemId, specimenId);
    if (problem) return refused(problem);
    const tests = await testsOfSpecimen(tx, specimenId);
    if (tests.length > 0) return refused({ code: "object-has-tests", found: String(tests.length) });
    const of = { record: "specimen", recordId: specimenId, itemId };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "remove-specimen", ...of });
    return done(await takeOutSpecimen(tx, specimenId));
  });
}

async function standing(tx: Db, itemId: string, id: string): Promise<Problem | null> {
  const revision = await publishedWith(tx, itemId, id);
  return revision === null ? null : { code: "stands-in-publication", found: String(revision) };
}

/** Puts back what was taken away last: the undo. Refused where its item or object is gone meanwhile, or it is back already. */
export async function putBackWorkflow(context: Context, removed: Removed): Promise<Outcome<null>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const what = removedSchema.parse(removed);
  return inTransaction(context.db, async (tx) => {
    const back = new Set(what.specimens.map((s) => s.id));
    for (const part of what.components) {
      if (await itemIdOfComponent(tx, part.id)) return refused({ code: "is-back-already", found: part.name });
      if (!back.has(part.specimenId) && !(await itemIdOfSpecimen(tx, part.specimenId)))
        return refused({ code: "unknown-specimen", found: part.specimenId });
    }
    for (const one of what.specimens)
      if (await itemIdOfSpecimen(tx, one.id)) return refused({ code: "is-back-already", found: one.label });
    await putBack(tx, what);
    const [object, part] = [what.specimens[0], what.components[0]];
    const itemId = object ? await itemIdOfSpecimen(tx, object.id) : part ? await itemIdOfComponent(tx, part.id) : null;
    const of = { record: object ? "specimen" : "component", recordId: object?.id ?? part?.id ?? "", itemId };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "put-back", ...of });
    return done(null);
  });
}
