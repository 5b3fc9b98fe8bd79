import { describe, expect, it } from "vitest";
import { type NumberStyle, readCell } from "@/lib/readings/read-cell.ts";

const point: NumberStyle = { decimal: "point", thousands: false };
const comma: NumberStyle = { decimal: "comma", thousands: false };

const inShort = (cell: string, style: NumberStyle = point): string => {
  const read = readCell(cell, style);
  if (read.is === "trouble") return `trouble ${read.code}`;
  if (read.is === "below") return `below ${read.limit?.value ?? "?"}${read.unit ? ` ${read.unit.unit}` : ""}`;
  if (read.is !== "number") return read.is;
  return `${read.number.value}${read.error ? ` ± ${read.error.value}` : ""}${read.unit ? ` ${read.unit.unit}` : ""}`;
};

describe("non-detects in every common spelling", () => {
  it.each([
    ...["<12", "< 12", "<12.0", "≤12", "ND<12", "ND (12)", "n.d. (12)", "<LOD (12)", "< LOD: 12", "<LOD 12", "<12 LOD"],
    "LOD = 12",
    "(<12)",
  ])("%s is below 12", (cell) => {
    expect(inShort(cell)).toBe("below 12");
  });
  it.each([
    ...[
      "<LOD",
      "< LOD",
      "LOD",
      "<DL",
      "<MDL",
      "<LD",
      "<NWG",
      "ND",
      "nd",
      "N.D.",
      "n.d.",
      "n. d.",
      "N/D",
      "BDL",
      "n.n.",
    ],
    ...[
      "Not detected",
      "not-detected",
      "non-detect",
      "nicht nachgewiesen",
      "non détecté",
      "no detectado",
      "undetected",
    ],
    ...["<", "below detection limit", "Below LOD", "< n.d."],
  ])("%s is below a limit stated elsewhere", (cell) => {
    expect(inShort(cell)).toBe("below ?");
  });
  it.each([
    ["< 12 ppm", "below 12 ppm"],
    ["<0.5%", "below 0.5 %"],
    ["< 0.002 mg/cm2", "below 0.002 mg/cm²"],
  ])("%s keeps its unit", (cell, expected) => {
    expect(inShort(cell)).toBe(expected);
  });
  it("reads the limit by the file's decimal mark", () => {
    expect(inShort("<12,5", comma)).toBe("below 12.5");
  });
});

describe("numbers", () => {
  it("keep text and decimals", () => {
    expect(readCell(" 12.50 ", point)).toMatchObject({ number: { text: "12.50", value: 12.5, decimals: 2 } });
    expect(readCell("0,250", comma)).toMatchObject({ number: { text: "0,250", value: 0.25, decimals: 3 } });
  });
  it.each([
    ["-5", "-5"], // a small negative is legitimate as written
    ["+12", "12"],
    ["1.2e3", "1200"],
    ["1 234.5", "1234.5"],
    ["1,234.5", "1234.5"],
    ["12 ± 3", "12 ± 3"],
    ["12+/-3 ppm", "12 ± 3 ppm"],
    ["0.5 wt%", "0.5 %"],
    ["0", "0"],
  ])("%s is %s", (cell, expected) => {
    expect(inShort(cell)).toBe(expected);
  });
  it.each([
    ["1,234", "trouble number-ambiguous"],
    ["12,5", "trouble number-ambiguous"],
    ["1e400", "trouble number-too-large"],
    ["9".repeat(400), "trouble not-a-number"],
    ["1e-400", "trouble number-too-small"],
    ["Infinity", "trouble not-a-number"],
    ["12*", "trouble not-a-number"],
    ["12 furlongs", "trouble not-a-number"],
    [">9000", "trouble above-range"],
    ["<0", "trouble limit-not-positive"],
    ["<-5", "trouble limit-not-positive"],
    ["=1+1", "trouble formula"],
    ["+cmd|' /C calc'!A0", "trouble formula"],
    ["@SUM(A1)", "trouble formula"],
    ["1\u202e2", "trouble direction-control"],
    ["1\u00072", "trouble control-character"],
    ["1\ufffd", "trouble broken-character"],
    ["0x1F", "trouble not-a-number"],
    ["1.2.3", "trouble number-ambiguous"],
  ])("%s: %s", (cell, expected) => {
    expect(inShort(cell)).toBe(expected);
  });
  it("refuse a decimal mark where the file's is not known, and take whole numbers", () => {
    const unknown: NumberStyle = { decimal: null, thousands: false };
    expect([inShort("12.5", unknown), inShort("12", unknown)]).toEqual(["trouble decimal-mark-unknown", "12"]);
  });
  it("take thousands separators where the file is said to have them", () => {
    expect(inShort("1,234", { decimal: "point", thousands: true })).toBe("1234");
    expect(inShort("1.234", { decimal: "comma", thousands: true })).toBe("1234");
    expect(inShort("1 234,5", { decimal: "comma", thousands: true })).toBe("1234.5");
  });
});

describe("cells without a figure", () => {
  it.each([
    ["", "blank"],
    ["  ", "blank"],
    ["not measured", "blank"],
    ["nicht gemessen", "blank"],
    ["-", "dash"],
    ["—", "dash"],
    ["n/a", "notAvailable"],
    ["NA", "notAvailable"],
    ["NaN", "notAvailable"],
  ])("%s is %s, never zero", (cell, expected) => {
    expect(inShort(cell)).toBe(expected);
  });
});

it("takes no longer for hostile cells than for others", () => {
  const started = performance.now();
  for (const part of ["1", "1.", "< ", "1 ", "±", "nd", "(", "1,"]) inShort(part.repeat(200_000));
  expect(performance.now() - started).toBeLessThan(2000);
});
