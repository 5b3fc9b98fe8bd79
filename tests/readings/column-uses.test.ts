import { describe, expect, it } from "vitest";
import { type ColumnUse, mappingFromUses, usesOf } from "@/lib/readings/column-uses.ts";
import type { Mapping } from "@/lib/readings/mapping.ts";

// Columns of an invented table.
const use = (one: ColumnUse["use"], element: string | null = null, unit: string | null = null): ColumnUse => ({
  use: one,
  element,
  unit,
});
const empty = {
  version: 1,
  sheet: null,
  shape: "wide",
  roles: {},
  sample: [],
  unitColumn: null,
  elements: [],
  longLimits: {},
  long: null,
} as unknown as Mapping;
const mapped = (columns: string[], uses: ColumnUse[], base = empty) => mappingFromUses({ columns }, base, uses);
const trouble = (columns: string[], uses: ColumnUse[]) => {
  const read = mapped(columns, uses);
  return read.ok
    ? []
    : read.problems.map(({ code, where }) => [code, where && "column" in where ? where.column : null]);
};

describe("what a person says of each column", () => {
  const wide = {
    columns: ["Name", "Pb", "Pb err", "Pb LOD", "Pb flag", "PbO", "Note"],
    uses: [
      use("sample"),
      use("value", "Pb", "ppm"),
      use("error", "Pb"),
      use("limit", "lead"),
      use("flag", "Pb"),
      use("value", "PbO", "%"),
      use("none"),
    ],
  };
  it("makes a wide mapping, and reads back from it", () => {
    const read = mapped(wide.columns, wide.uses);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.value).toMatchObject({ shape: "wide", sample: ["Name"], long: null });
    expect(read.value.elements).toMatchObject([
      { element: "Pb", oxide: null, value: "Pb", error: "Pb err", limit: "Pb LOD", flag: "Pb flag", unitText: "ppm" },
      { element: "Pb", oxide: "PbO", value: "PbO", error: null, limit: null, flag: null, unitText: "%" },
    ]);
    const back = usesOf({ columns: wide.columns }, read.value);
    expect(back.map((one) => one.use)).toEqual(wide.uses.map((one) => one.use));
    expect(back.map((one) => one.element)).toEqual([null, "Pb", "Pb", "Pb", "Pb", "PbO", null]);
    expect(mapped(wide.columns, back, read.value)).toEqual(read);
  });
  it("keeps what was known of a figure whose column and unit stay, and forgets a unit taken away", () => {
    const read = mapped(wide.columns, wide.uses);
    if (!read.ok) throw new Error("refused");
    const known = {
      ...read.value,
      elements: read.value.elements.map((one) => ({
        ...one,
        k: 2 as const,
        quantity: "bulk-mass-fraction" as const,
        defaultLimit: "5",
      })),
    };
    const again = mapped(wide.columns, usesOf({ columns: wide.columns }, known), known);
    expect(again).toMatchObject({
      ok: true,
      value: { elements: [{ k: 2, quantity: "bulk-mass-fraction", defaultLimit: "5" }, { k: 2 }] },
    });
    const other = mapped(["Pb"], [use("value", "Pb", "%")], known);
    expect(other).toMatchObject({ ok: true, value: { elements: [{ unit: "%", quantity: "bulk-mass-fraction" }] } });
    const area = mapped(["Pb"], [use("value", "Pb", "mg/cm²")], known);
    expect(area.ok && area.value.elements[0]?.quantity).not.toBe("bulk-mass-fraction");
    const without = mapped(["Pb"], [use("value", "Pb")], known);
    expect(without).toMatchObject({
      ok: true,
      value: { elements: [{ unit: null, unitText: null, quantity: "bulk-mass-fraction" }] },
    });
  });
  it("makes a long mapping, and reads back from it", () => {
    const columns = ["Name", "El", "Conc", "Err", "Unit"];
    const uses = [use("sample"), use("element"), use("value"), use("error"), use("unit")];
    const read = mapped(columns, uses);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.value).toMatchObject({
      shape: "long",
      elements: [],
      unitColumn: null,
      long: { element: "El", value: "Conc", error: "Err", unitColumn: "Unit", limit: null, flag: null },
    });
    expect(usesOf({ columns }, read.value).map((one) => one.use)).toEqual(uses.map((one) => one.use));
  });
  it("a unit column of a wide table and a column beyond those spoken of are kept apart", () => {
    const read = mapped(["Pb", "Unit", "More"], [use("value", "Pb"), use("unit")]);
    if (!read.ok) throw new Error("refused");
    expect(read.value.unitColumn).toBe("Unit");
    expect(usesOf({ columns: ["Pb", "Unit", "More"] }, read.value).map((one) => one.use)).toEqual([
      "value",
      "unit",
      "none",
    ]);
  });
  it("is refused with the column that cannot be", () => {
    expect(trouble(["A"], [use("value")])).toEqual([["column-needs-element", "A"]]);
    expect(trouble(["A"], [use("value", "Qq")])).toEqual([["element-unknown", "A"]]);
    expect(trouble(["A"], [use("value", "Pb", "furlong")])).toEqual([["unit-unknown", "A"]]);
    expect(trouble(["A", "B"], [use("value", "Pb"), use("value", "Pb")])).toEqual([["column-used-twice", "B"]]);
    expect(trouble(["A", "B", "C"], [use("value", "Pb"), use("error", "Pb"), use("error", "Pb")])).toEqual([
      ["column-used-twice", "C"],
    ]);
    expect(trouble(["A", "B"], [use("value", "Pb"), use("limit", "Cd")])).toEqual([["figure-without-value", "B"]]);
    expect(trouble(["A", "B"], [use("value", "Pb"), use("flag")])).toEqual([["figure-without-value", "B"]]);
    expect(trouble(["A"], [use("element")])).toEqual([["no-result-columns", null]]);
    expect(trouble(["A", "B", "C"], [use("element"), use("value"), use("value")])).toEqual([
      ["column-used-twice", "C"],
    ]);
  });
});
