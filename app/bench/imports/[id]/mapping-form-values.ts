import { formText } from "@/lib/platform/form-values.ts";
import { type Outcome, refused } from "@/lib/quantity/problem.ts";
import { answerQuestions, answersSchema } from "@/lib/readings/answer-questions.ts";
import { type ColumnUse, columnUses, mappingFromUses } from "@/lib/readings/column-uses.ts";
import type { Mapping } from "@/lib/readings/mapping.ts";
import type { Table } from "@/lib/readings/table.ts";

/** The mapping that a posted form says: its column choices over what was known, then its answers. */
export function mappingOfForm(data: FormData, table: Table, base: Mapping): Outcome<Mapping> {
  const uses = table.columns.map((_, at): ColumnUse => {
    const use = columnUses.find((each) => each === formText(data, `use-${at}`)) ?? "none";
    return { use, element: formText(data, `element-${at}`) || null, unit: formText(data, `unit-${at}`) || null };
  });
  const mapping = mappingFromUses(table, base, uses);
  if (!mapping.ok) return mapping;
  const answers = answersSchema.safeParse(answersOf(data));
  if (!answers.success)
    return refused({ code: "invalid-form", where: { field: answers.error.issues[0]?.path.join(".") ?? "" } });
  return answerQuestions(mapping.value, answers.data);
}

function answersOf(data: FormData): Record<string, unknown> {
  const answers: Record<string, unknown> = {};
  for (const name of [
    "decimal",
    "thousands",
    "timeZone",
    "dateOrder",
    "zero",
    "dash",
    "notAvailable",
    "noLimit",
    "quantity",
    "unit",
  ]) {
    const text = formText(data, name);
    if (text) answers[name] = text;
  }
  const k = formText(data, "k");
  if (k) answers["k"] = Number(k);
  const byMode: Record<string, string> = {};
  for (let at = 0; data.has(`mode-${at}`); at += 1) {
    const quantity = formText(data, `mode-quantity-${at}`);
    if (quantity) byMode[formText(data, `mode-${at}`)] = quantity;
  }
  if (Object.keys(byMode).length > 0) answers["quantityByMode"] = byMode;
  return answers;
}
