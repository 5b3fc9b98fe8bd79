import { describe, expect, it } from "vitest";
import {
  blankRows,
  countFilled,
  landingOf,
  landPaste,
  moveFrom,
  pasteAt,
  withCell,
} from "@/app/bench/by-hand/sheet.ts";
import { handColumns } from "@/lib/readings/hand-entry.ts";
import { pastedCells } from "@/lib/readings/pasted-grid.ts";

const columns = handColumns(["Pb"]); // sample, spot, seconds, value, error, limit

describe("the sheet for readings by hand", () => {
  it("keeps one blank row to go on with", () => {
    const rows = withCell(blankRows(2), 1, "sample", "mug");
    expect(rows).toEqual([{}, { sample: "mug" }, {}]);
    expect(withCell(rows, 0, "sample", "cup")).toHaveLength(3);
    expect(countFilled(rows, columns)).toBe(1);
  });

  it("moves down and up by Enter and arrows, and nowhere beyond the edge", () => {
    const at = { row: 1, column: 3 };
    expect(moveFrom(at, "Enter", false, 3)).toEqual({ row: 2, column: 3 });
    expect(moveFrom(at, "Enter", true, 3)).toEqual({ row: 0, column: 3 });
    expect(moveFrom(at, "ArrowUp", false, 3)).toEqual({ row: 0, column: 3 });
    expect(moveFrom({ row: 2, column: 0 }, "ArrowDown", false, 3)).toBeNull();
    expect(moveFrom({ row: 0, column: 0 }, "ArrowUp", false, 3)).toBeNull();
    expect(moveFrom({ row: 2, column: 0 }, "Enter", false, 3)).toEqual({ row: 3, column: 0 });
    expect(moveFrom(at, "ArrowLeft", false, 3)).toBeNull();
    expect(moveFrom(at, "a", false, 3)).toBeNull();
  });

  it("tells what a paste would do before it does it", () => {
    const rows = [{ sample: "mug", "Pb value": "3" }, {}];
    const paste = pasteAt(pastedCells("a\t40\t412\nb\t40\t405\n"), { row: 0, column: 1 }, columns);
    expect(paste.looksHeaded).toBe(false);
    const landing = landingOf(paste, rows, columns, false);
    expect(landing).toMatchObject({ lines: [1, 2], rows: 2, leftOut: 0, replaced: 1 });
    expect(landing.columns.map((c) => c.key)).toEqual(["spot", "seconds", "Pb value"]);
    expect(rows[0]).toEqual({ sample: "mug", "Pb value": "3" });
    expect(landPaste(paste, rows, columns, false)).toEqual([
      { sample: "mug", spot: "a", seconds: "40", "Pb value": "412" },
      { spot: "b", seconds: "40", "Pb value": "405" },
      {},
    ]);
  });

  it("counts what has no place, and leaves a heading out when told to", () => {
    const paste = pasteAt(pastedCells("Lead\tError\tLimit\tNote\n412\t36\t\tx\n"), { row: 1, column: 3 }, columns);
    expect(paste.looksHeaded).toBe(true);
    expect(landingOf(paste, blankRows(1), columns, true)).toMatchObject({ lines: [2, 2], rows: 1, leftOut: 1 });
    expect(landPaste(paste, blankRows(1), columns, true)).toEqual([
      {},
      { "Pb value": "412", "Pb error": "36", "Pb limit": "" },
      {},
    ]);
  });
});
