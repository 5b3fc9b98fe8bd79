import { describe, expect, it } from "vitest";
import { pastedCells, pastedTable } from "@/lib/readings/pasted-grid.ts";

describe("pastedCells", () => {
  it.each([
    ["one cell", "12", [["12"]]],
    [
      "rows with a line end behind the last",
      "mug\t12\r\nbib\t3\r\n",
      [
        ["mug", "12"],
        ["bib", "3"],
      ],
    ],
    [
      "a blank row in the middle and one at the end",
      "a\t1\n\t\nb\t2\n\n",
      [
        ["a", "1"],
        ["", ""],
        ["b", "2"],
        ["", ""],
      ],
    ],
    ["a quoted cell with a line end and a tab", '"mug,\nred\tblue"\t12\n', [["mug,\nred\tblue", "12"]]],
    ["doubled quotation marks", '"a ""b"""\t1', [['a "b"', "1"]]],
    [
      "an inch sign that opens no quotation",
      '5" bowl\t1\n"6 bowl\t2',
      [
        ['5" bowl', "1"],
        ['"6 bowl', "2"],
      ],
    ],
    [
      "rows of different width",
      "a\nb\tc\td\n",
      [
        ["a", "", ""],
        ["b", "c", "d"],
      ],
    ],
    ["nothing", "", []],
  ])("%s", (_, text, cells) => {
    expect(pastedCells(text)).toEqual(cells);
  });
});

it("pastedTable reads pasted text with its own header as a file would be", () => {
  const table = pastedTable("Sample\tPb (ppm)\r\nmug, red\t12,5\r\n");
  expect(table).toMatchObject({
    value: {
      delimiter: "\t",
      columns: ["Sample", "Pb (ppm)"],
      rows: [{ kind: "header" }, { kind: "data", cells: ["mug, red", "12,5"] }],
    },
  });
  expect(pastedTable("Pb (ppm)\n12\n13\n")).toMatchObject({ value: { columns: ["Pb (ppm)"] } });
  expect(pastedTable(" \n")).toMatchObject({ problems: [{ code: "file-blank" }] });
});
