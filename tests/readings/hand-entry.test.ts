import { describe, expect, it } from "vitest";
import {
  elementsIn,
  type HandRow,
  type HandSettings,
  handColumns,
  handFile,
  readHandEntry,
} from "@/lib/readings/hand-entry.ts";
import { readRows } from "@/lib/readings/read-rows.ts";
import { readTable } from "@/lib/readings/read-table.ts";

// Figures invented for the test.
const settings: HandSettings = {
  date: "2026-10-03",
  timeZone: "Europe/Lisbon",
  unit: "ppm",
  quantity: "bulk-mass-fraction",
  k: 2,
  decimal: "point",
};
const columns = handColumns(["Pb", "Cd"]);
const now = Date.UTC(2026, 10, 24);
const read = (rows: HandRow[], changed: Partial<HandSettings> = {}) =>
  readHandEntry(rows, columns, { ...settings, ...changed }, now);
const readings = (rows: HandRow[], changed: Partial<HandSettings> = {}) => {
  const entry = read(rows, changed);
  if (!entry.ok) throw new Error(JSON.stringify(entry.problems));
  const table = readTable(entry.value.text);
  if (!table.ok) throw new Error(JSON.stringify(table.problems));
  const done = readRows(table.value, entry.value.mapping, { now });
  if (!done.ok) throw new Error(JSON.stringify(done.problems));
  return done.value.readings;
};
const mug: HandRow = {
  sample: "mug",
  spot: "a",
  seconds: "40",
  "Pb value": "412",
  "Pb error": "36",
  "Cd value": "<12",
};

describe("a sheet written by hand", () => {
  it("becomes a file whose header says what its columns are", () => {
    const { text, lines } = handFile([{}, mug], columns, settings);
    expect(text).toBe(
      "Sample\tSpot\tDate\tSeconds\tPb (ppm)\tPb error (2σ)\tCd (ppm)\nmug\ta\t2026-10-03\t40\t412\t36\t<12\n",
    );
    expect(lines).toEqual([2]);
  });

  it("is read back as it was typed: numbers, errors with k, non-detects", () => {
    const [reading] = readings([mug]);
    expect(reading).toMatchObject({ sample: "mug", spot: "a", secondsCounted: 40, takenAtText: "2026-10-03" });
    expect(reading?.results).toMatchObject([
      {
        element: "Pb",
        quantity: "bulk-mass-fraction",
        unit: "ppm",
        value: { text: "412" },
        error: { value: 36 },
        k: 2,
      },
      { element: "Cd", belowDetection: true, detectionLimit: { value: 12 } },
    ]);
  });

  it("takes decimal commas, a coating's loading, and a limit column", () => {
    const row = { sample: "train", "Pb value": "1,25", "Pb error": "0,2", "Cd value": "ND", "Cd limit": "0,3" };
    const [reading] = readings([row], { decimal: "comma", unit: "µg/cm²" });
    expect(reading?.results).toMatchObject([
      { quantity: "coating-areal", value: { value: 1.25, decimals: 2 } },
      { quantity: "coating-areal", belowDetection: true, detectionLimit: { value: 0.3 } },
    ]);
  });

  it("names line and column of what cannot be taken, and takes nothing", () => {
    const outcome = read([mug, {}, { ...mug, "Pb value": "4l2" }, { ...mug, "Pb error": "0" }]);
    expect(outcome).toMatchObject({
      ok: false,
      problems: [{ code: "not-a-number", where: { row: 3, column: "Pb (ppm)" }, found: "4l2" }, { where: { row: 4 } }],
    });
  });

  it("never takes a comma for a point, nor a bare zero for a number", () => {
    expect(read([{ ...mug, "Pb value": "1,234" }]).ok).toBe(false);
    expect(read([{ sample: "mug", "Pb value": "0" }])).toMatchObject({
      ok: false,
      problems: [{ code: "limit-missing", where: { row: 1 } }],
    });
    expect(readings([{ sample: "mug", "Pb value": "0", "Pb limit": "9" }])[0]?.results).toMatchObject([
      { belowDetection: true, detectionLimit: { value: 9 } },
    ]);
  });

  it("asks what errors cover only where there are errors", () => {
    expect(read([{ sample: "mug", "Pb value": "412" }], { k: null }).ok).toBe(true);
    expect(read([mug], { k: null })).toMatchObject({ ok: false, problems: [{ code: "ask-k" }] });
  });

  it("refuses an empty sheet, a day to come and a zone that is none", () => {
    expect(read([{}, { sample: "  " }])).toMatchObject({ ok: false, problems: [{ code: "hand-empty" }] });
    expect(read([mug], { date: "2027-01-01" })).toMatchObject({ ok: false, problems: [{ code: "date-in-future" }] });
    expect(read([mug], { timeZone: "Nowhere/Else" })).toMatchObject({
      ok: false,
      problems: [{ code: "time-zone-unknown" }],
    });
  });

  it("keeps quotation marks and tabs in names from moving the columns", () => {
    const [reading] = readings([{ ...mug, sample: 'mug 3" wide\tred' }]);
    expect(reading?.sample).toBe('mug 3" wide red');
  });

  it("reads a line of element symbols", () => {
    expect(elementsIn("Pb, Cd;Pb lead xx")).toEqual({ elements: ["Pb", "Cd"], unknown: ["xx"] });
  });
});

describe("sheets of other shapes", () => {
  it("with a number that tells the shots apart, without errors or limits", () => {
    const keys = (show: Parameters<typeof handColumns>[1]) => handColumns(["Pb"], show).map((column) => column.key);
    expect(keys({ error: false, limit: false, number: true })).toEqual([
      "sample",
      "spot",
      "number",
      "seconds",
      "Pb value",
    ]);
    expect(keys({ error: true, limit: false })).toEqual(["sample", "spot", "seconds", "Pb value", "Pb error"]);
  });
  it("without a day, a zone or a k", () => {
    const [reading] = readings([{ sample: "mug", "Pb value": "412" }], { date: null, timeZone: null, k: null });
    expect(reading).toMatchObject({ sample: "mug", takenAt: null, takenOn: null, results: [{ element: "Pb" }] });
  });
  it("a line in which nothing was measured is named by its line alone", () => {
    const entry = read([mug, { sample: "bib" }]);
    expect(entry.ok ? [] : entry.problems.map((p) => [p.code, p.where])).toEqual([["nothing-measured", { row: 2 }]]);
  });
  it("a line that reads as the header of another table is named by its line", () => {
    const entry = read([mug, { sample: "Sample", spot: "Spot", "Pb value": "Cd (ppm)" }, mug], { date: null });
    expect(entry.ok ? [] : entry.problems.map((p) => [p.code, p.where])).toEqual([["two-tables", { row: 2 }]]);
  });
});
