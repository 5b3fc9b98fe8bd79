import { asWritten } from "@/lib/wording/bench.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import type { Draft } from "./load-draft.ts";

/** Everything a remark can be about, by the text it is stored under, with the words a person knows it by. */
export function remarkPlaces({ record, snapshot }: Draft): Map<string, string> {
  const parts = snapshot.specimens.flatMap((s) => s.parts);
  const names = new Map(record.item.specimens.flatMap((s) => s.components.map((c) => [c.id, c.name] as const)));
  return new Map<string, string>([
    ["item", "The item as a whole"],
    ...[...names].map(([id, name]): [string, string] => [`component:${id}`, `Part: ${name}`]),
    ...parts.flatMap((part) =>
      part.results.map((result): [string, string] => [
        `value:${part.id}:${result.element}`,
        `${elementTitle(result.element)} in ${part.name}`,
      ]),
    ),
    ...record.readings.map((reading): [string, string] => [
      `reading:${reading.id}`,
      `Row ${reading.row} of ${reading.fileName}, on ${names.get(reading.componentId ?? "") ?? "no part"}`,
    ]),
  ]);
}

/** A row's results as its file wrote them: "Pb 412 ± 36 ppm; Cd < 12 ppm". */
export const rowText = (reading: Draft["record"]["readings"][number]): string =>
  reading.results.map((one) => `${one.element} ${asWritten(one)} ${one.unitText || one.unit}`).join("; ");
