import { fieldName } from "./form-fields.ts";

/** The particulars of an act in one line: "kind: correction; reason: one shot missed the glaze". */
export const detailText = (detail: Record<string, string | number | boolean | null>): string =>
  Object.entries(detail)
    .filter(([, value]) => value !== null && value !== "")
    .map(([field, value]) => `${fieldName(field)}: ${typeof value === "boolean" ? (value ? "yes" : "no") : value}`)
    .join("; ");
