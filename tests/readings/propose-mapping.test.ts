import { describe, expect, it } from "vitest";
import { mappingFaults } from "@/lib/readings/column-index.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { readTable } from "@/lib/readings/read-table.ts";
import { must } from "./read-text.ts";

const propose = (text: string) => proposeMapping(must(readTable(text)));
const elementsOf = (text: string) =>
  propose(text).mapping.elements.map((e) => [e.oxide ?? e.element, e.value, e.error, e.limit, e.unit, e.k]);

describe("the wide shape", () => {
  it("pairs values with errors and limits by name", () => {
    expect(elementsOf("Sample,Pb ppm,Cd ppm,Pb LOD,Cd 2σ,Pb 2σ\nmug,1,2,3,4,5\n")).toEqual([
      ["Pb", "Pb ppm", "Pb 2σ", "Pb LOD", "ppm", 2],
      ["Cd", "Cd ppm", "Cd 2σ", null, "ppm", 2],
    ]);
  });
  it("pairs bare error columns with the value before them", () => {
    expect(elementsOf("Sample,Pb,±,LOD,Cd,±\n,ppm,ppm,ppm,%,%\nmug,1,2,3,4,5\n")).toEqual([
      ["Pb", "Pb", "±", "LOD", "ppm", null],
      ["Cd", "Cd", "± (2)", null, "%", null],
    ]);
  });
  it("gives two columns of one element in two kinds their own errors", () => {
    expect(elementsOf("Sample,Pb ppm,Pb mg/cm2,Pb ± ppm,Pb ± mg/cm2\nmug,1,2,3,4\n")).toEqual([
      ["Pb", "Pb ppm", "Pb ± ppm", null, "ppm", null],
      ["Pb", "Pb mg/cm2", "Pb ± mg/cm2", null, "mg/cm²", null],
    ]);
  });
  it("takes the units row, and a header that only a unit makes an element", () => {
    expect(elementsOf("Sample,Y,S\n,ppm,%\nmug,1,2\n").map((e) => e[0])).toEqual(["Y", "S"]);
  });
  it("finds the other columns in German", () => {
    const { roles, sample } = propose(
      "Messung Nr.;Datum;Uhrzeit;Messdauer;Modus;Probe;Messpunkt;Bemerkung;Seriennummer;Prüfer;Blei (mg/kg)\n1;03.05.2026;14:05;30;Glas;Becher;Rand;;7;X;12\n",
    ).mapping;
    expect([roles, sample]).toEqual([
      {
        ...{ number: "Messung Nr.", date: "Datum", time: "Uhrzeit", dateTime: null, zone: null, seconds: "Messdauer" },
        ...{ mode: "Modus", spot: "Messpunkt", note: "Bemerkung", serial: "Seriennummer", operator: "Prüfer" },
      },
      ["Probe"],
    ]);
  });
  it("tells a time of day from a duration by its cells", () => {
    const timeOf = (cell: string) => propose(`Time,Sample,Pb ppm\n${cell},mug,12\n`).mapping.roles;
    expect([timeOf("14:05").time, timeOf("2026-05-01 14:05").dateTime, timeOf("30").time]).toEqual([
      "Time",
      "Time",
      null,
    ]);
  });
});

it("the reading's own number goes before a mere index", () => {
  expect(propose("Index,Reading #,Sample,Pb ppm\n1,7,mug,12\n").mapping.roles.number).toBe("Reading #");
});

describe("what cannot be used is said", () => {
  it.each([
    ["a relative error", "Sample,Pb ppm,Pb RSD %\nmug,12,3\n", "relative-error", "Pb RSD %"],
    ["an error in another unit", "Sample,Pb ppm,Pb ± %\nmug,12,3\n", "error-unit-differs", "Pb ± %"],
    ["coordinates x and Y", "Sample,X,Y,Pb ppm\nmug,1,2,3\n", "needs-company", "Y"],
    ["an oxide beside its element", "Sample,PbO %,Pb ppm\nmug,1,2\n", "second-column-of-element", "PbO %"],
    ["an error without a value", "Sample,Cd ±,Pb ppm\nmug,1,2\n", "no-value-column", "Cd ±"],
  ])("%s", (_, text, code, column) => {
    const { notices, mapping } = propose(text);
    expect(notices).toEqual([{ code, column }]);
    expect(mapping.elements.map((e) => [e.element, e.error])).toEqual([["Pb", null]]);
  });
});

it("the long shape: a row for each element", () => {
  const { mapping } = propose(
    "Reading,Sample,Element,Result,Error 1σ,LOD,Unit\n1,mug,Pb,12,3,5,ppm\n1,mug,Hg,<LOD,,5,ppm\n",
  );
  expect([mapping.shape, mapping.elements, mapping.long]).toEqual([
    "long",
    [],
    {
      ...{ value: "Result", error: "Error 1σ", limit: "LOD", flag: null, unit: null, unitText: null },
      ...{ quantity: null, k: 1, element: "Element", unitColumn: "Unit" },
    },
  ]);
});

describe("mappingFaults", () => {
  const table = must(readTable("Sample,Pb ppm,±\nmug,1,2\n"));
  const { mapping } = proposeMapping(table);
  const [lead] = mapping.elements;
  it.each([
    ["a column the file lacks", { ...mapping, sample: ["Part"] }, "column-missing"],
    ["a column that serves twice", { ...mapping, elements: [{ ...lead!, limit: "±" }] }, "column-used-twice"],
    ["no element", { ...mapping, elements: [{ ...lead!, element: "Xx" }] }, "element-unknown"],
    ["no result column", { ...mapping, elements: [] }, "no-result-columns"],
  ])("name %s", (_, changed, code) => {
    expect(mappingFaults(table, changed)).toMatchObject([{ code }]);
  });
  it("are none for the proposal", () => {
    expect(mappingFaults(table, mapping)).toEqual([]);
  });
});
