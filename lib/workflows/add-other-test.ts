import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import { certificateProblem } from "../files/certificate-file.ts";
import { keepPrivate } from "../files/private-files.ts";
import type { Context } from "../platform/context.ts";
import { readTestFigure, testResult } from "../publication/other-test.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { parseTypedNumber } from "../quantity/written-quantity.ts";
import { elements } from "../readings/elements.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { itemIdOfComponent, itemIdOfSpecimen } from "../store/items.ts";
import {
  addOtherTest,
  findOtherTest,
  keepTestCertificate,
  otherTestKinds,
  setTestRemoved,
} from "../store/other-tests.ts";

const text = (max: number) => z.string().trim().max(max);

/** A test as a person writes it down from the laboratory's report: figures as texts. */
export const otherTestInput = z.object({
  componentId: z.string().min(1).nullable().default(null),
  kind: z.enum(otherTestKinds),
  element: text(3).min(1),
  valueText: text(60).min(1),
  limitText: text(60).default(""),
  unit: text(40).min(1),
  uText: text(60).default(""),
  /** What the stated uncertainty covers: standard uncertainties. */
  uCovers: z.union([z.literal(1), z.literal(2), z.literal(3)]).default(2),
  sampleAreaCm2: z.number().positive().finite().nullable().default(null),
  blankText: text(200).nullable().default(null),
  laboratory: text(200).min(1),
  method: text(200).min(1),
  reportedOn: z.iso.date().nullable().default(null),
  note: text(1000).default(""),
});

/**
 * Writes down a wipe, a leachate or a laboratory's result on an object. What the report says is kept as written; a "<" stays a "<".
 *
 * Refused: no such object or part, no element, a figure that cannot be read, a unit of another kind of test, a wipe by mass without its
 * area, a leachate or laboratory result without the part it was made on, a report of tomorrow.
 */
export async function addOtherTestWorkflow(
  context: Context,
  specimenId: string,
  input: z.input<typeof otherTestInput>,
): Promise<Outcome<string>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const { limitText, uText, uCovers, ...said } = otherTestInput.parse(input);
  const symbol = elements.find((each) => each.symbol.toLowerCase() === said.element.toLowerCase())?.symbol;
  if (!symbol) return refused({ code: "element-unknown", where: { field: "element" }, found: said.element });
  const figure = readTestFigure(said.valueText, limitText);
  if (!figure.ok) return figure;
  const stated = uText === "" ? null : parseTypedNumber(uText.replace(/^\s*±\s*/, ""));
  if (stated && !(stated.ok && stated.value.value > 0))
    return refused({ code: "test-uncertainty-unreadable", where: { field: "uText" }, found: uText });
  const today = context.clock().toISOString().slice(0, 10);
  if (said.reportedOn !== null && said.reportedOn > today)
    return refused({ code: "test-in-future", where: { field: "reportedOn" }, found: said.reportedOn });
  if (said.kind !== "wipe" && said.componentId === null)
    return refused({ code: "test-without-part", where: { field: "componentId" } });
  const fields = { ...said, element: symbol, ...figure.value, u: stated?.ok ? stated.value.value / uCovers : null };
  const result = testResult({ ...fields, id: "", specimenId, certificateName: null });
  if (!result.ok) return result;
  return inTransaction(context.db, async (tx) => {
    const itemId = await itemIdOfSpecimen(tx, specimenId);
    if (!itemId) return refused({ code: "unknown-specimen", found: specimenId });
    if (fields.componentId !== null && (await itemIdOfComponent(tx, fields.componentId)) !== itemId)
      return refused({ code: "unknown-part", found: fields.componentId });
    const file = { certificateKey: null, certificateName: null };
    const recordId = await addOtherTest(tx, specimenId, { ...fields, ...file, createdById: permitted.value.id });
    const detail = { kind: fields.kind, element: symbol };
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: "add-other-test",
      record: "other-test",
      recordId,
      itemId,
      detail,
    });
    return done(recordId);
  });
}

/** Takes a test away, or puts it back: its record and certificate stay. */
export async function removeOtherTestWorkflow(
  context: Context,
  id: string,
  removed: boolean,
): Promise<Outcome<string>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    const test = await findOtherTest(tx, id);
    if (!test) return refused({ code: "unknown-test", found: id });
    await setTestRemoved(tx, id, removed ? context.clock() : null);
    const of = { record: "other-test", recordId: id, itemId: await itemIdOfSpecimen(tx, test.specimenId) };
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: removed ? "remove-other-test" : "put-other-test-back",
      ...of,
    });
    return done(test.specimenId);
  });
}

/** Keeps the laboratory's certificate of a test as it came, for people of the bench; its name, not the file, is published. */
export async function keepTestCertificateWorkflow(
  context: Context,
  dataDir: string,
  input: { id: string; name: string; bytes: Uint8Array },
): Promise<Outcome<string>> {
  const permitted = requirePermission(context.person, "edit-item");
  if (!permitted.ok) return permitted;
  const problem = certificateProblem(input.name, input.bytes);
  if (problem) return refused(problem);
  if (!(await findOtherTest(context.db, input.id))) return refused({ code: "unknown-test", found: input.id });
  const key = await keepPrivate(dataDir, input.bytes);
  return inTransaction(context.db, async (tx) => {
    await keepTestCertificate(tx, input.id, { key, name: input.name.slice(0, 200) });
    const of = { record: "other-test", recordId: input.id, detail: { file: input.name.slice(0, 200) } };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "keep-test-certificate", ...of });
    return done(key);
  });
}
