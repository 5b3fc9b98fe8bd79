import { type AmountsState, parseAmounts } from "./amounts-form.ts";
import { contentOfResult, type ReportedContent } from "./content-of-result.ts";
import type { UncertainInput } from "./types.ts";

/** Six digits: more than any content is known to, and short enough to stand in an address. */
const written = (value: number): string => String(Number(value.toPrecision(6)));

/**
 * An input as `readQuantity` reads it back: "412 (376 to 448)", "10 to 14", "< 5", "12". A standard uncertainty is written
 * as its 95 % (1.96 u).
 *
 * @example quantityText({ value: 412, interval: [376, 448] }) // "412 (376 to 448)"
 */
export function quantityText(input: UncertainInput): string {
  if ("below" in input) return `< ${written(input.below)}`;
  if ("min" in input) {
    const shape = input.shape === "rectangular" ? "" : ` ${input.shape}`;
    return `${written(input.min)} to ${written(input.max)}${shape}`;
  }
  if ("interval" in input)
    return `${written(input.value)} (${written(input.interval[0])} to ${written(input.interval[1])})`;
  return input.u === 0 ? written(input.value) : `${written(input.value)} ± ${written(input.u * 1.959963984540054)}`;
}

/**
 * The calculator's state for a published part and one of its results: its weight times its content, or its area times its
 * areal loading, in the units of the snapshot. Null where the part's weight (or area) is not known, where there is nothing to
 * go by, or where the result is of another kind. `loading` (µg/ft²) is filled in for the reader to change.
 *
 * @example stateOfPart({ massG: 350, areaCm2: null }, lead, { loading: 5 })?.content // "412 (376 to 448)"
 */
export function stateOfPart(
  part: { massG: number | null; areaCm2: number | null },
  result: ReportedContent & { element: string },
  { loading }: { loading?: number } = {},
): AmountsState | null {
  const content = contentOfResult(result);
  if (!content.ok) return null;
  const common = { element: result.element, ...(loading === undefined ? {} : { loading: written(loading) }) };
  if (result.quantity === "coating-areal")
    return part.areaCm2 === null
      ? null
      : parseAmounts({
          ...common,
          from: "coat",
          area: written(part.areaCm2),
          coatLoading: quantityText(content.value),
        });
  return part.massG === null
    ? null
    : parseAmounts({
        ...common,
        from: "weight",
        weight: written(part.massG),
        content: quantityText(content.value),
        contentUnit: "mg/kg",
      });
}
