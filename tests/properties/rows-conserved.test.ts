import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Answers, answerQuestions } from "@/lib/readings/answer-questions.ts";
import { decodeBytes } from "@/lib/readings/decode-bytes.ts";
import { settleAndAsk } from "@/lib/readings/open-questions.ts";
import { proposeMapping } from "@/lib/readings/propose-mapping.ts";
import { readRows } from "@/lib/readings/read-rows.ts";
import { readTable } from "@/lib/readings/read-table.ts";
import type { RowAccount } from "@/lib/readings/reading.ts";

/** Rows in file = accepted + set aside + blank + header and preamble, for files made of random rows and for random text. */
const answers: Answers = {
  k: 2,
  timeZone: "Europe/Lisbon",
  quantity: "bulk-mass-fraction",
  zero: "number",
  dash: "not-measured",
  notAvailable: "not-measured",
  thousands: "no",
  dateOrder: "day-first",
  unit: "ppm",
};

function accountOf(
  bytes: Uint8Array,
): { account: RowAccount; readings: number; asideRows: number[] } | { refused: string } {
  const decoded = decodeBytes(bytes);
  if (!decoded.ok) return { refused: decoded.problems[0]!.code };
  const table = readTable(decoded.value.text);
  if (!table.ok) return { refused: table.problems[0]!.code };
  const { mapping } = settleAndAsk(table.value, proposeMapping(table.value).mapping);
  const answered = answerQuestions(mapping, {
    ...answers,
    ...(mapping.decimal === null ? { decimal: "point" } : {}),
  });
  if (!answered.ok) return { refused: answered.problems[0]!.code };
  const read = readRows(table.value, answered.value);
  if (!read.ok) return { refused: read.problems[0]!.code };
  const { account, readings, setAside } = read.value;
  return { account, readings: readings.length, asideRows: setAside.map((row) => row.row) };
}

const sum = (account: RowAccount) => account.accepted + account.setAside + account.blank + account.header;

type Kind = "good" | "aside" | "blank" | "header";
type Row = { kind: Kind; cells: string[] };
const header = ["Reading No", "Sample", "Spot", "Pb (ppm)", "± 2σ", "Cd (ppm)"];
const number = fc.integer({ min: 1, max: 99_999 }).map((n) => (n / 10).toFixed(1));
const nonDetect = fc.constantFrom("<LOD", "ND", "n.d.", "< 12.5", "<3 ppm");
const name = fc.constantFrom("mug", 'bowl 5" wide', "bib, blue", "toy;\nred", "Max", "Total", "Teller groß", "-", "");
const good = fc
  .tuple(
    fc.nat(9999),
    name,
    name,
    fc.oneof(number, nonDetect),
    number,
    fc.oneof(number, fc.constantFrom("", "-", "n/a", "<3")),
  )
  .map(([n, ...cells]): Row => ({ kind: "good", cells: [String(n), ...cells] }));
const spoilt = fc.constantFrom("twelve", "=1+1", "1e400", "\u202e12", "12 furlongs", ">900", "1,2,3", "<0", "12*");
const aside = fc.oneof(
  fc.tuple(good, spoilt).map(([row, cell]): Row => ({ kind: "aside", cells: row.cells.with(3, cell) })),
  fc
    .tuple(good, fc.constantFrom("-1", "0.0", "x"))
    .map(([row, cell]): Row => ({ kind: "aside", cells: [...row.cells.with(3, "5.5").with(4, cell)] })),
  good.map((row): Row => ({ kind: "aside", cells: row.cells.slice(0, 4) })),
  good.map((row): Row => ({ kind: "aside", cells: [...row.cells, "9"] })),
  good.map((row): Row => ({ kind: "aside", cells: row.cells.with(3, "").with(5, "") })),
  fc
    .constantFrom("Mean", "Std. Dev.", "Mittelwert")
    .map((word): Row => ({ kind: "aside", cells: [word, "", "", "5.0", "1.0", ""] })),
);
const blank = fc.constantFrom<Row>(
  { kind: "blank", cells: [""] },
  { kind: "blank", cells: ["", "", "", "", "", ""] },
  { kind: "blank", cells: [" "] },
);
const again = fc.constant<Row>({ kind: "header", cells: header });
const preamble = fc.constantFrom<Row>(
  { kind: "header", cells: ["Bench 3"] },
  { kind: "header", cells: ["Made by", "nobody"] },
  { kind: "blank", cells: [""] },
);
const rows = fc.array(
  fc.oneof({ weight: 6, arbitrary: good }, { weight: 2, arbitrary: aside }, blank, { weight: 1, arbitrary: again }),
  { minLength: 1, maxLength: 40 },
);

const style = fc.record({
  delimiter: fc.constantFrom(",", ";", "\t"),
  newline: fc.constantFrom("\n", "\r\n", "\r"),
  ending: fc.boolean(),
  quoteAll: fc.boolean(),
  encoding: fc.constantFrom("utf8", "utf8-mark", "utf16"),
});

const written = (row: Row, delimiter: string, quoteAll: boolean): string =>
  row.cells
    .map((cell) => (/["\n,;\t]/.test(cell) || (quoteAll && cell !== "") ? `"${cell.replaceAll('"', '""')}"` : cell))
    .join(delimiter);

describe("every row is accounted for", () => {
  it("in files made of known rows", () => {
    fc.assert(
      fc.property(fc.array(preamble, { maxLength: 3 }), rows, good, style, (above, body, surely, how) => {
        const first: Row = { ...surely, cells: surely.cells.with(3, "12.5") }; // shows the decimal mark
        const all: Row[] = [...above, { kind: "header", cells: header }, first, ...body];
        // A line of one cell that is empty is a blank line; the last one needs its line end to be there at all.
        const ending = how.ending || all.at(-1)!.kind === "blank" ? how.newline : "";
        const text = all.map((row) => written(row, how.delimiter, how.quoteAll)).join(how.newline) + ending;
        const bytes =
          how.encoding === "utf16"
            ? Buffer.from(`\ufeff${text}`, "utf16le")
            : Buffer.from(how.encoding === "utf8" ? text : `\ufeff${text}`);
        const count = (kind: Kind) => all.filter((row) => row.kind === kind).length;
        const read = accountOf(bytes);
        expect(read).toMatchObject({
          account: { total: all.length, setAside: expect.any(Number), blank: count("blank"), header: count("header") },
        });
        if ("refused" in read) return;
        expect(sum(read.account)).toBe(read.account.total);
        expect(read.account.accepted + read.account.setAside).toBe(count("good") + count("aside"));
        expect(read.account.setAside).toBeGreaterThanOrEqual(count("aside"));
        expect(read.readings).toBe(read.account.accepted);
        expect(new Set(read.asideRows).size).toBe(read.account.setAside);
      }),
      { numRuns: 300 },
    );
  });

  it("in random text, or the file is refused with a code; nothing throws", () => {
    const scrap = fc.constantFrom(
      "Sample",
      "Pb (ppm)",
      "±",
      "Element",
      "Result",
      ",",
      ";",
      "\t",
      "\n",
      '"',
      "12.5",
      "<LOD",
      "ND",
      "mug",
      "\r\n",
      "",
      "0",
      "-",
      "%",
      "Date",
      "2026-05-01",
      "é",
      "\u202e",
      "=1",
      "Mean",
    );
    const text = fc.oneof(
      fc.array(scrap, { maxLength: 120 }).map((parts) => `Sample,Pb (ppm),Cd (ppm)\n${parts.join("")}`),
      fc.array(scrap, { maxLength: 120 }).map((parts) => parts.join("")),
      fc.string({ unit: "binary", maxLength: 300 }),
    );
    let read = 0;
    fc.assert(
      fc.property(text, (content) => {
        const outcome = accountOf(Buffer.from(content));
        if ("refused" in outcome) {
          expect(outcome.refused).toMatch(/^[a-z-]+$/);
          return;
        }
        read += 1;
        expect(sum(outcome.account)).toBe(outcome.account.total);
        expect(outcome.account.setAside).toBe(outcome.asideRows.length);
      }),
      { numRuns: 1500 },
    );
    expect(read).toBeGreaterThan(100);
  });

  it("in random bytes nothing throws", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        expect(accountOf(bytes)).toBeDefined();
      }),
      { numRuns: 500 },
    );
  });
});
