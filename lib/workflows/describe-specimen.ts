import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import { makingProblem } from "../limits/iso-day.ts";
import type { Context } from "../platform/context.ts";
import { materials } from "../quantity/item-words.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import {
  addComponent,
  addSpecimen,
  type ComponentRecord,
  findItem,
  itemIdOfComponent,
  itemIdOfSpecimen,
  moveComponent,
  moveSpecimen,
  updateComponent,
  updateSpecimen,
} from "../store/items.ts";

const text = (max: number) => z.string().trim().max(max);
const positive = z.number().positive().finite().nullable().default(null);

export const specimenInput = z.object({
  label: text(120).min(1),
  howGot: text(400).min(1),
  whoPaid: text(200).min(1),
  gotOn: z.iso.date().nullable().default(null),
  dateCode: text(120).nullable().default(null),
  /** ISO year, month or day. */
  madeOn: text(10).nullable().default(null),
  condition: text(400).nullable().default(null),
});
export const componentInput = z.object({
  name: text(120).min(1),
  material: z.enum(materials),
  form: z.enum(["bulk", "coating"]),
  accessible: z.boolean().default(true),
  thicknessMm: positive,
  smallestDimensionMm: positive,
  areaCm2: positive,
  massG: positive,
});

/** Adds one physical unit of an item: what was in the tester's hands and how it was got. */
export async function addSpecimenWorkflow(
  context: Context,
  itemId: string,
  input: z.input<typeof specimenInput>,
): Promise<Outcome<string>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const fields = specimenInput.parse(input);
  const flaw = makingProblem({ ...fields, gotOn: fields.gotOn ?? context.clock().toISOString().slice(0, 10) });
  if (flaw !== null) return refused(flaw);
  return inTransaction(context.db, async (tx) => {
    if (!(await findItem(tx, itemId))) return refused({ code: "unknown-item", found: itemId });
    const recordId = await addSpecimen(tx, itemId, fields);
    const detail = { object: fields.label };
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: "add-specimen",
      record: "specimen",
      recordId,
      itemId,
      detail,
    });
    return done(recordId);
  });
}

/** Adds one material part of a specimen. */
export async function addComponentWorkflow(
  context: Context,
  specimenId: string,
  input: z.input<typeof componentInput>,
): Promise<Outcome<ComponentRecord>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const fields = componentInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    const itemId = await itemIdOfSpecimen(tx, specimenId);
    if (!itemId) return refused({ code: "unknown-specimen", found: specimenId });
    const part = await addComponent(tx, specimenId, fields);
    const of = { record: "component", recordId: part.id, itemId };
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: "add-component",
      ...of,
      detail: { part: part.name },
    });
    return done(part);
  });
}

/** Changes what is said of an object. A published page keeps its words until a new revision. */
export async function editSpecimenWorkflow(
  context: Context,
  specimenId: string,
  input: z.input<typeof specimenInput>,
): Promise<Outcome<string>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const fields = specimenInput.parse(input);
  const flaw = makingProblem({ ...fields, gotOn: fields.gotOn ?? context.clock().toISOString().slice(0, 10) });
  if (flaw !== null) return refused(flaw);
  return inTransaction(context.db, async (tx) => {
    const itemId = await itemIdOfSpecimen(tx, specimenId);
    if (!itemId) return refused({ code: "unknown-specimen", found: specimenId });
    await updateSpecimen(tx, specimenId, fields);
    const of = { record: "specimen", recordId: specimenId, itemId };
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: "edit-specimen",
      ...of,
      detail: { object: fields.label },
    });
    return done(fields.label);
  });
}

/** Changes what is said of a part; its readings and spots stay on it. */
export async function editComponentWorkflow(
  context: Context,
  componentId: string,
  input: z.input<typeof componentInput>,
): Promise<Outcome<ComponentRecord>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const fields = componentInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    const itemId = await itemIdOfComponent(tx, componentId);
    if (!itemId) return refused({ code: "unknown-part", found: componentId });
    const of = { record: "component", recordId: componentId, itemId };
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: "edit-component",
      ...of,
      detail: { part: fields.name },
    });
    return done(await updateComponent(tx, componentId, fields));
  });
}

/** Moves an object among the objects of its item, or a part among the parts of its object, one place up or down. */
export async function moveWorkflow(
  context: Context,
  what: { specimenId: string } | { componentId: string },
  by: "up" | "down",
): Promise<Outcome<null>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const moved =
      "specimenId" in what
        ? await moveSpecimen(tx, what.specimenId, by)
        : await moveComponent(tx, what.componentId, by);
    if (moved) {
      const of =
        "specimenId" in what
          ? { record: "specimen", recordId: what.specimenId, itemId: await itemIdOfSpecimen(tx, what.specimenId) }
          : { record: "component", recordId: what.componentId, itemId: await itemIdOfComponent(tx, what.componentId) };
      await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "move-part", ...of, detail: { by } });
      return done(null);
    }
    return "specimenId" in what
      ? refused({ code: "unknown-specimen", found: what.specimenId })
      : refused({ code: "unknown-part", found: what.componentId });
  });
}
