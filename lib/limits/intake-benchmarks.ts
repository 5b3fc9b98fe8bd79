import type { IntakeBenchmark } from "../amounts/types.ts";
import { allLimits } from "./tables/all-limits.ts";

/**
 * Published daily benchmarks for what a person takes in of an element, µg a day, in the order of the data: yardsticks for arithmetic,
 * never limits on an object. Numbers, dates and checks are the limits' own.
 *
 * @example intakeBenchmarks("Pb").map((one) => one.value).includes(2.2) // true
 */
export const intakeBenchmarks = (element: string): IntakeBenchmark[] =>
  allLimits.flatMap((limit) =>
    limit.quantity === "intake" && limit.value !== null && limit.substances.includes(element)
      ? [
          {
            limitId: limit.id,
            title: limit.title,
            jurisdiction: limit.jurisdiction,
            value: limit.value,
            from: limit.from,
            until: limit.until,
            checked: limit.checked,
          },
        ]
      : [],
  );
