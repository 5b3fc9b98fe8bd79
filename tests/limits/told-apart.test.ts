import { expect, it } from "vitest";
import { listLimits } from "@/lib/limits/list-limits.ts";

// A strip and its list of verdicts name a limit by place, title and number: two of one name would look like one said twice.
it("limits of a coating that hold beside one another are told apart by their titles", () => {
  const names = listLimits()
    .filter((limit) => limit.quantity.startsWith("coating"))
    .flatMap((limit) =>
      limit.substances.map((s) => `${s}: ${limit.jurisdiction}, ${limit.title}, ${limit.value} ${limit.unit}`),
    );
  expect(names.length).toBeGreaterThan(5);
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
});
