import { odsFile, xlsxFile } from "./workbook-files.ts";

/**
 * Files that nobody should have to meet, invented; each must be answered with a clear sentence or read with every row
 * accounted for. Written by make-files.ts into files/hostile/.
 */
export type HostileFile = { name: string; bytes: Uint8Array; about: string };

const utf8 = (text: string): Uint8Array => Buffer.from(text, "utf8");
const head = "Shot,Clock,Part,Spot,Pb (ppm),Pb error (1σ)";
const row = (n: number, part: string, value: string, error = "4.0"): string =>
  `${n},2026-09-12 09:4${n % 10}:00,${part},a,${value},${error}`;
const rows = [row(1, "plate", "112.0"), row(2, "plate", "108.5"), row(3, "cup", "<9.1", "")];
const table = (...lines: string[]): string => `${[head, ...lines].join("\n")}\n`;

const shots = {
  name: "Readings",
  rows: [
    ["Part", "Pb (ppm)", "Pb error (1σ)"],
    ["plate", 112, 4],
  ],
};
const overAll = {
  xml: '<table:table-cell table:number-columns-repeated="16384" office:value-type="float" office:value="1"><text:p>1</text:p></table:table-cell>',
};

export const hostileFiles: HostileFile[] = [
  { name: "empty.csv", bytes: utf8(""), about: "no byte at all" },
  { name: "only-spaces.csv", bytes: utf8("  \n \n\n"), about: "white space only" },
  { name: "header-only.csv", bytes: utf8(`${head}\n`), about: "a header and no row" },
  {
    name: "truncated.csv",
    bytes: utf8(table(...rows, '4,2026-09-12 09:44:00,"saucer, blu')).subarray(0, -1),
    about: "cut off inside a quoted cell",
  },
  {
    name: "cut-inside-a-letter.csv",
    bytes: utf8(table(...rows, "4,2026-09-12 09:44:00,saucé")).subarray(0, -2),
    about: "cut off inside a UTF-8 character",
  },
  {
    name: "utf16-without-mark.csv",
    bytes: Buffer.from(table(...rows), "utf16le"),
    about: "UTF-16 without its mark",
  },
  {
    name: "mixed-separators.csv",
    bytes: utf8(
      table(...rows, "4;2026-09-12 09:44:00;saucer;a;77,5;4,0", "5\t2026-09-12 09:45:00\tsaucer\ta\t77.5\t4.0"),
    ),
    about: "commas, then semicolons, then tabs",
  },
  {
    name: "both-decimal-marks.csv",
    bytes: utf8(
      `${head.replaceAll(",", ";")}\n1;2026-09-12 09:41:00;plate;a;112,5;4.0\n2;2026-09-12 09:42:00;plate;a;108.5;4,0\n`,
    ),
    about: "decimal comma and decimal point in one file",
  },
  {
    name: "formulas.csv",
    bytes: utf8(
      table(
        row(1, '"=HYPERLINK(""http://example.org"",""plate"")"', "112.0"),
        row(2, "+cmd|' /C calc'!A0", "=1+1"),
        row(3, "@SUM(1)", "-8"),
      ),
    ),
    about: "cells that a spreadsheet would run",
  },
  {
    name: "bidi-controls.csv",
    bytes: utf8(
      table(
        row(1, "pl\u202eeta\u202c", "112.0"),
        row(2, "cu\u200bp", "1\u200f08.5"),
        row(3, "\u2066dish\u2069", "9.0"),
      ),
    ),
    about: "letters that turn the text around or hide in it",
  },
  {
    name: "monstrous-numbers.csv",
    bytes: utf8(
      table(
        row(1, "plate", "1e400"),
        row(2, "plate", "1e-400"),
        row(3, "cup", "NaN"),
        row(4, "cup", "Infinity"),
        row(5, "cup", "9".repeat(400)),
      ),
    ),
    about: "numbers no machine holds",
  },
  {
    name: "nul-bytes.csv",
    bytes: utf8(table(row(1, "pla\0te", "112.0"), rows[1]!)),
    about: "NUL bytes inside the text",
  },
  {
    name: "two-tables.csv",
    bytes: utf8(`${table(...rows)}\nName,Street,Town\nO. Farrowby,1 Invented Row,Nowhere\n`),
    about: "a second, different table below",
  },
  {
    name: "year-1900.csv",
    bytes: utf8(table("1,1900-01-01 00:00:00,plate,a,112.0,4.0", "2,2199-01-01 00:00:00,plate,a,112.0,4.0", rows[1]!)),
    about: "a clock that was never set, and one far ahead",
  },
  {
    name: "one-unit-missing.csv",
    bytes: utf8(
      "Shot,Part,Spot,Pb (ppm),Pb error (1σ),Cd,Cd error (1σ)\n1,plate,a,112.0,4.0,55.0,3.0\n2,plate,b,108.0,4.0,57.0,3.0\n",
    ),
    about: "lead has a unit, cadmium has none",
  },
  {
    name: "picture-renamed.csv",
    bytes: Buffer.from("89504e470d0a1a0a0000000d4948445200000001000000010806000000", "hex"),
    about: "the beginning of a PNG picture under another name",
  },
  {
    name: "locked.ods",
    bytes: odsFile([shots], { manifest: '<manifest:encryption-data manifest:checksum="invented"/>' }),
    about: "a workbook locked with a password",
  },
  { name: "broken.xlsx", bytes: xlsxFile([shots]).subarray(0, 1200), about: "a workbook cut off in the middle" },
  {
    name: "bomb.xlsx",
    bytes: xlsxFile([shots], {
      more: Array.from({ length: 11 }, (_, n) => ({ name: `xl/media/${n}.bin`, data: new Uint8Array(10_000_000) })),
    }),
    about: "a small workbook that unpacks to 110 MB",
  },
  {
    name: "bomb-that-lies.xlsx",
    bytes: xlsxFile([shots], { more: [{ name: "xl/media/0.bin", data: new Uint8Array(10_000_000), claim: 100 }] }),
    about: "a workbook with a part that says it is smaller than it is",
  },
  {
    name: "one-cell-repeated.ods",
    bytes: odsFile([{ name: "Readings", rows: [...shots.rows, ...Array.from({ length: 200 }, () => [overAll])] }]),
    about: "a few bytes that repeat one cell over a whole sheet",
  },
  {
    name: "formula-never-worked-out.xlsx",
    bytes: xlsxFile([{ name: "Readings", rows: [...shots.rows, ["cup", { xml: '<c r="REF"><f>1+2</f></c>' }, 4]] }]),
    about: "a workbook with a formula that no program has worked out yet",
  },
];
